import { changedMeanwhile } from './changedMeanwhile.ts';
import { visible } from '../problems/visible.ts';
import { readYaml } from '../intake/authored/yamlText.ts';
import { splitReport } from '../intake/authored/frontMatter.ts';
import type { AnswerEdit } from '../intake/edits/answerEdit.ts';
import { editReport } from '../intake/edits/editAnswers.ts';
import { withNarrative } from '../intake/edits/reportParts.ts';
import { warningEdits } from './answeredWarnings.ts';
import { answerGroups, fieldsOf, type AnswerGroup } from './answerGroups.ts';
import type { DeskWork } from './deskWork.ts';
import { errorsOf, reportAtDesk, type ReportAtDesk } from './reportAtDesk.ts';
import { statusOf } from './reportStatus.ts';
import { spreadOut } from './sameForAll.ts';
import type { Told } from './told.ts';
import {
  changedAnswers,
  editsOf,
  sameAnswers,
  submittedNarrative,
  type ChangedAnswer,
  type Submitted,
} from './submittedAnswers.ts';

/** What became of a form; where nothing was written, what was typed in it goes back to the person. */
export interface SavedReport {
  readonly told: Told;
  readonly written: boolean;
  readonly changed: readonly ChangedAnswer[];
  /** The narrative that was typed, where it is not that of the file. */
  readonly narrative: string | null;
  /** Whether readers may have seen what says something else by now. */
  readonly toCorrect: boolean;
}

interface SaveRequest {
  readonly root: string;
  /** The report as it lies on the disk. */
  readonly report: ReportAtDesk;
  /** The file as it was when the form was made; null where nobody knows any more. */
  readonly shown: string | null;
  readonly submitted: Submitted;
  readonly work: DeskWork;
}

/** The questions of a report, as its form asks them. */
export function groupsOf(report: ReportAtDesk, text: string = report.text): readonly AnswerGroup[] {
  const { yaml } = splitReport(report.file, text);
  const tree = yaml === null ? null : readYaml(report.file, yaml).tree;
  if (tree === null) return [];
  const ofSession = [tree['session']].flat();
  return answerGroups(tree, {
    measured: report.understood.columns.map(({ metric }) => metric),
    sheets: report.files.filter((name) => /\.csv$/i.test(name) && !ofSession.includes(name)),
    missing: report.missing,
    sheetsOfContenders: report.shared.contenders,
  });
}

/**
 * Writes the answers and the narrative of a form into the file of its report, and publishes it where that was asked for
 * and nothing stands in the way. Where the file is not as the form was made of it, nothing is written.
 */
export function saveReport({ root, report, shown, submitted, work }: SaveRequest): SavedReport {
  const base = shown ?? report.text;
  const fields = fieldsOf(groupsOf(report, base));
  const changed = spreadOut(changedAnswers(fields, submitted), fields);
  const narrative = changedNarrative(base, report.file, submitted);
  const kept = (told: Told): SavedReport => ({ told, written: false, changed, narrative, toCorrect: false });
  const warnings = warningEdits(report, submitted);
  if (submitted['seen']?.[0] !== report.hash) {
    const { open, gone } = againstFile(report, changed);
    if (
      warnings === null &&
      open.length + gone.length === 0 &&
      (narrative ?? report.body.text) === report.body.text
    )
      return done(unchanged);
    return kept({ kind: 'refused', sentence: [fileChanged, ...gone.map(noLongerAsked)].join(' ') });
  }
  if (warnings !== null && 'refused' in warnings)
    return kept({ kind: 'refused', sentence: `Nothing was written. ${warnings.refused}` });
  const answers = editReport(report.text, [...editsOf(changed), ...(warnings?.edits ?? [])]);
  if ('refused' in answers)
    return kept({ kind: 'refused', sentence: `Nothing was written. ${answers.refused}` });
  const text = narrative === null ? answers.text : withNarrative(answers.text, narrative);
  if (text === null)
    return kept({ kind: 'refused', sentence: 'Nothing was written: the file has no answers.' });
  const publishes = submitted['do']?.includes('publish') === true;
  const told: Told = warnings === null ? saved : { kind: 'done', sentence: warnings.sentence };
  const publication = publishes ? published(root, report, text, work.today()) : { text, told };
  if (publication.text === report.text) return done(publishes ? publication.told : unchanged);
  const outcome = work.save(report.file, publication.text, report.hash);
  const changesPage = changed.length > 0 || narrative !== null;
  if (outcome.kind === 'written')
    return { ...done(publication.told), toCorrect: changesPage && statusOf(report) === 'published' };
  return kept({
    kind: 'refused',
    sentence:
      outcome.kind === 'refused'
        ? outcome.why
        : 'The file was changed at this very moment by another program. Nothing was written; save again.',
  });
}

const fileChanged = changedMeanwhile(
  'What you typed stands in the form, and beside it what the file says. Save again to put yours in its place.',
);

const noLongerAsked = ({ field: { label }, typed }: ChangedAnswer): string =>
  visible(`No longer asked: ${label}. You typed: ${typed.join(', ') || 'nothing'}.`);

/** Of the answers of a form those that the file does not have by now, and those that it has no place for any more. */
function againstFile(
  report: ReportAtDesk,
  changed: readonly ChangedAnswer[],
): { readonly open: readonly ChangedAnswer[]; readonly gone: readonly ChangedAnswer[] } {
  const present = new Map(fieldsOf(groupsOf(report)).map((field) => [field.name, field]));
  return {
    open: changed.filter(({ field, typed }) => {
      const now = present.get(field.name);
      return now !== undefined && !sameAnswers(typed, now.typed);
    }),
    gone: changed.filter(({ field }) => !present.has(field.name)),
  };
}

const done = (told: Told): SavedReport => ({
  told,
  written: true,
  changed: [],
  narrative: null,
  toCorrect: false,
});

const saved: Told = { kind: 'done', sentence: 'Saved.' };
const unchanged: Told = { kind: 'done', sentence: 'Nothing was changed.' };

/** The text with what publishes it, where nothing stands in the way; else as it is, with what does. */
function published(
  root: string,
  report: ReportAtDesk,
  text: string,
  today: string,
): { readonly text: string; readonly told: Told } {
  const edited = editReport(text, publication(report, today));
  const then = 'refused' in edited ? null : reportAtDesk(root, report.slug, edited.text);
  const errors = then === null ? [] : errorsOf(then);
  if ('text' in edited && then !== null && errors.length === 0)
    return {
      text: edited.text,
      told: { kind: 'done', sentence: 'Published: it goes into your site with the next build.' },
    };
  return {
    text,
    told: {
      kind: 'refused',
      sentence: 'Your answers are kept, but it cannot be published yet. This stands in the way:',
      problems: errors,
    },
  };
}

function changedNarrative(base: string, file: string, submitted: Submitted): string | null {
  const typed = submittedNarrative(submitted);
  const { body } = splitReport(file, base);
  if (typed === null || typed === body.text) return null;
  // A text file ends with the end of a line.
  return typed === '' || typed.endsWith('\n') ? typed : `${typed}\n`;
}

/** The answers by which a report is published; the day of an earlier publication stays. */
function publication({ tree }: ReportAtDesk, today: string): readonly AnswerEdit[] {
  const published = tree?.['published'];
  const hasDay = typeof published === 'string' && published.trim() !== '';
  return [
    { path: ['status'], to: 'published' },
    ...(hasDay ? [] : [{ path: ['published'], to: today, after: 'date' }]),
  ];
}
