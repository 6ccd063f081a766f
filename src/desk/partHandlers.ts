import type { Context } from 'hono';
import { changedMeanwhile } from './changedMeanwhile.ts';
import { editReport } from '../intake/edits/editAnswers.ts';
import type { Answered, Answering } from './deskSetting.ts';
import { hiddenFields } from './hiddenFields.ts';
import { reportAtDesk, type ReportAtDesk } from './reportAtDesk.ts';
import { reportFrame, titleOf } from './reportFrame.ts';
import type { ReportPart } from './reportPart.ts';
import { newestOther } from './suggestions.ts';
import type { Submitted } from './submittedAnswers.ts';
import type { Told } from './told.ts';

type Handler = (context: Context, slug: string) => Answered;

/** The page of one part of a report, and what its forms do. */
export function partHandlers(
  answer: Answering,
  part: ReportPart,
): { readonly read: Handler; readonly write: Handler } {
  const { contentDir, places, keys, work, show, sent, notOurs, noReport } = answer;

  const page = (
    context: Context,
    report: ReportAtDesk,
    told: readonly Told[],
    typed: Submitted | null = null,
  ): Answered => {
    const main = part.page({
      report,
      typed,
      action: places.part(report.slug, part.id),
      hidden: hiddenFields({ formToken: keys.form, seen: report.hash }),
      places,
      today: work.today(),
      lastAnswers: () => newestOther(contentDir, report.slug),
    });
    const { id, heading, besideLivePage } = part;
    return show(
      context,
      `${heading}: ${titleOf(report)}`,
      reportFrame({ report, part: id, told, besideLivePage, places, main }),
      { wide: besideLivePage },
    );
  };

  return {
    read: (context, slug) => {
      const report = reportAtDesk(contentDir, slug);
      if (report === null) return noReport(context);
      const sentence = doneSentence(part, context.req.query('done'));
      return page(context, report, sentence === null ? [] : [{ kind: 'done', sentence }]);
    },
    write: async (context, slug) => {
      const form = await sent(context);
      if (form === null) return notOurs(context);
      const report = reportAtDesk(contentDir, slug);
      if (report === null) return noReport(context);
      const refused = (sentence: string): Answered =>
        page(context, report, [{ kind: 'refused', sentence }], form.texts);
      if (form.texts['seen']?.[0] !== report.hash) return refused(fileChanged);
      const change = part.change(report, form.texts, work.today());
      if (change.kind === 'refused') return refused(change.sentence);
      if (change.kind === 'shown') return page(context, report, [], form.texts);
      const edited = editReport(report.text, change.edits);
      if ('refused' in edited) return refused(`Nothing was written. ${edited.refused}`);
      if (edited.text !== report.text) {
        const saved = work.save(report.file, edited.text, report.hash);
        if (saved.kind === 'refused') return refused(saved.why);
        if (saved.kind === 'changed') return refused(fileChanged);
      }
      // A page that is loaded again then sends nothing a second time.
      return context.redirect(`${places.part(slug, part.id)}?done=${change.done}`, 303);
    },
  };
}

const fileChanged = changedMeanwhile(
  'What you typed still stands here; look at what the file says by now, and save again.',
);

const doneSentence = ({ done }: ReportPart, word: string | undefined): string | null =>
  word !== undefined && Object.hasOwn(done, word) ? (done[word] ?? null) : null;
