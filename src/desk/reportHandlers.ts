import type { Context } from 'hono';
import type { Tree } from '../intake/authored/tree.ts';
import { fieldsOf } from './answerGroups.ts';
import type { Answered, Answering } from './deskSetting.ts';
import { placedProblems } from './placedProblems.ts';
import { plansAtDesk } from './plansAtDesk.ts';
import { reportAtDesk, type ReportAtDesk } from './reportAtDesk.ts';
import { titleOf } from './reportFrame.ts';
import { reportPage } from './reportPage.ts';
import { groupsOf, saveReport, type SavedReport } from './saveReport.ts';
import { seenTexts } from './seenTexts.ts';
import { suggestionsOf } from './suggestions.ts';
import type { Told } from './told.ts';

type Handler = (context: Context, slug: string) => Answered;

/** The page of one report, and what its form does. */
export function reportHandlers(answer: Answering): { readonly read: Handler; readonly write: Handler } {
  const { contentDir, places, keys, work, show, sent, notOurs, noReport } = answer;
  const seen = seenTexts();

  const page = (
    context: Context,
    report: ReportAtDesk,
    told: readonly Told[],
    kept: Pick<SavedReport, 'changed' | 'narrative'> = { changed: [], narrative: null },
  ): Answered => {
    seen.remember(report.hash, report.text);
    const groups = groupsOf(report);
    const main = reportPage({
      report,
      groups,
      form: {
        problems: placedProblems(report, fieldsOf(groups)),
        suggestions: suggestionsOf(contentDir, report.slug),
        shop: shopAnswersOf(report),
        typed: new Map(kept.changed.map(({ field, typed }) => [field.name, typed])),
      },
      narrative: kept.narrative,
      told,
      plan: plansAtDesk(contentDir).find(({ slug }) => slug === report.slug) ?? null,
      places,
      formToken: keys.form,
    });
    return show(context, titleOf(report), main, { wide: true });
  };

  return {
    read: (context, slug) => {
      const report = reportAtDesk(contentDir, slug);
      if (report === null) return noReport(context);
      const news = arrivals.filter(({ word }) => context.req.query(word) !== undefined);
      return page(
        context,
        report,
        news.map(({ told }) => told),
      );
    },
    write: async (context, slug) => {
      const form = await sent(context);
      if (form === null) return notOurs(context);
      const report = reportAtDesk(contentDir, slug);
      if (report === null) return noReport(context);
      const shown = seen.recall(form.texts['seen']?.[0] ?? '');
      const saved = saveReport({ root: contentDir, report, shown, submitted: form.texts, work });
      const after = saved.written ? reportAtDesk(contentDir, slug) : report;
      const told = saved.toCorrect ? [saved.told, toCorrect(places.part(slug, 'after'))] : [saved.told];
      return after === null ? noReport(context) : page(context, after, told, saved);
    },
  };
}

/** What is told to who has just been sent here, by a word in the address. */
const arrivals: readonly { readonly word: string; readonly told: Told }[] = [
  {
    word: 'new',
    told: {
      kind: 'done',
      sentence:
        'A draft was made of your files. What the session says stands below; answer what is still asked, and save.',
    },
  },
  {
    word: 'planned',
    told: { kind: 'done', sentence: 'The plan is on record. What to do next stands below.' },
  },
  {
    word: 'joined',
    told: {
      kind: 'done',
      sentence:
        'This is the session of the planned test. What it says is filled in; answer what is still asked, and save.',
    },
  },
];

/** What readers may have seen is not mended in silence. */
const toCorrect = (after: string): Told => ({
  kind: 'done',
  sentence: 'You changed a published report. If readers have seen it as it was,',
  way: { to: `${after}#correct`, words: 'say what was corrected.' },
});

const shopAnswersOf = ({ shared }: ReportAtDesk): Tree => shared.typed?.shop ?? null;
