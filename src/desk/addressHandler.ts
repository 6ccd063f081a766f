import type { Context } from 'hono';
import { changedMeanwhile } from './changedMeanwhile.ts';
import { plainId } from '../intake/authored/plainId.ts';
import { readWith } from '../intake/authored/readWith.ts';
import type { AnswerEdit } from '../intake/edits/answerEdit.ts';
import { editReport } from '../intake/edits/editAnswers.ts';
import { aliasesOf, newAddress } from './addressSection.ts';
import type { Answered, Answering } from './deskSetting.ts';
import { placeOfNext, withoutEntry } from './entriesIn.ts';
import { html } from './markup.ts';
import { nameInAddress } from './nameInAddress.ts';
import { reportAtDesk, type ReportAtDesk } from './reportAtDesk.ts';
import { statusOf } from './reportStatus.ts';
import { controlName } from './submittedAnswers.ts';

/** What gives a report another address; the older one stays one of its own. */
export function addressHandler(answer: Answering): (context: Context, slug: string) => Answered {
  const { contentDir, places, work, show, sent, notOurs, noReport } = answer;
  return async (context, slug) => {
    const form = await sent(context);
    if (form === null) return notOurs(context);
    const report = reportAtDesk(contentDir, slug);
    if (report === null) return noReport(context);
    const refused = (sentence: string): Answered =>
      show(
        context,
        'Not done',
        html`<h1>Not done</h1>
          <p>${sentence}</p>
          <p><a href="${places.part(slug, 'after')}#addresses">Back to the report</a></p>`,
      );
    if (form.texts['seen']?.[0] !== report.hash) return refused(fileChanged);
    const to = readWith(plainId, nameInAddress(form.texts[controlName(newAddress)]?.[0] ?? ''));
    if ('troubles' in to)
      return refused(
        'Nothing was written: an address has small letters, digits and single hyphens, 40 at most.',
      );
    const owner = ownerOf(to.value, report);
    if (owner !== null) return refused(`Nothing was written: that is ${owner}.`);
    const edited = editReport(report.text, editsFor(report, to.value));
    if ('refused' in edited) return refused(`Nothing was written. ${edited.refused}`);
    const replacing = report.others().filter(({ source }) => source?.front.supersededBy === slug);
    const saved = work.rename({ slug, to: to.value, text: edited.text, seen: report.hash });
    if (saved.kind === 'refused') return refused(saved.why);
    if (saved.kind === 'changed') return refused(fileChanged);
    // Those that it replaces lead their readers to its present name.
    for (const other of replacing) {
      const own = reportAtDesk(contentDir, other.slug);
      const text = own === null ? null : editReport(own.text, [{ path: ['superseded_by'], to: to.value }]);
      if (own !== null && text !== null && 'text' in text) work.save(own.file, text.text, own.hash);
    }
    return context.redirect(`${places.part(to.value, 'after')}?done=renamed`, 303);
  };
}

const fileChanged = changedMeanwhile('Go back, load the page anew, and type the address again.');

/** Whose address it is already; many hosts take capitals and small letters for one. */
function ownerOf(name: string, report: ReportAtDesk): string | null {
  const isSame = (other: string): boolean => other.toLowerCase() === name;
  if (isSame(report.slug)) return 'the address that it has';
  for (const { slug, source } of report.others()) {
    if (isSame(slug)) return `the address of ${slug}`;
    if (source?.front.aliases.some(isSame) === true) return `an older address of ${slug}`;
  }
  return null;
}

/** An address that nobody has seen, and under which nothing is on record, need not lead anywhere. */
function editsFor(report: ReportAtDesk, to: string): readonly AnswerEdit[] {
  const { slug, tree } = report;
  const at = aliasesOf(report).findIndex((alias) => alias.toLowerCase() === to);
  const isUnknown = statusOf(report) === 'draft' && tree?.['plan'] === undefined;
  // A renaming that was broken off has written it already.
  const isKept = aliasesOf(report).some((alias) => alias.toLowerCase() === slug.toLowerCase());
  const keeping: AnswerEdit = { path: ['aliases', at < 0 ? placeOfNext(report, 'aliases') : at], to: slug };
  if (!isUnknown && !isKept) return [keeping];
  return at < 0 ? [] : [withoutEntry(report, 'aliases', at)];
}
