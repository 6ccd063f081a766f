import { decodeText } from '../../intake/authored/decodeText.ts';
import { looseAnswers } from '../../intake/draft/looseAnswers.ts';
import { openPlan, type OpenPlan } from '../../intake/plan/openPlan.ts';
import { readOrderSheet, type OrderSheet } from '../../intake/plan/readOrderSheet.ts';
import { withWarmUps } from '../../intake/plan/withWarmUps.ts';
import type { ShotFileOptions } from '../../intake/shots/shotFile.ts';
import { composedNames } from '../../site/composedNames.ts';
import type { Problem } from '../../problems/problem.ts';
import { openContentFolder } from '../../site/contentFiles.ts';
import { readShared } from '../../site/sharedFiles.ts';

/** A text that is to be saved in the place of the one that was read. */
export interface NewText {
  /** Name beside `report.md`. */
  readonly name: string;
  readonly before: Uint8Array;
  readonly text: string;
  /** What it was saved as; it is saved as UTF-8 in any case. */
  readonly encoding: 'UTF-8' | 'UTF-16' | 'Windows-1252';
}

/** An open plan with its order sheet, where it has one. */
export interface PlanAtHand {
  readonly plan: OpenPlan;
  /** `report.md` as it is. */
  readonly report: NewText;
  /** Why `report.md`, or the sheet where it gets warm-up swings, cannot be rewritten without losing letters. */
  readonly problems: readonly Problem[];
  readonly sheet: OrderSheet | null;
  /** The sheet as it is to be saved, where warm-up swings were put into it. */
  readonly newSheet: NewText | null;
  /** Name of the sheet beside the report, as the report has it. */
  readonly sheetName: string | null;
  /** What the report says of the files to come. */
  readonly options: ShotFileOptions;
}

/**
 * The planned tests of a content folder that still lack their session.
 *
 * @param warmUps swings that the monitor counted before the first shot of the test
 */
export function openPlans(contentDir: string, warmUps: number): readonly PlanAtHand[] {
  const folder = openContentFolder(contentDir);
  const { shared } = readShared(folder);
  return folder.folders('reports').flatMap((slug): PlanAtHand[] => {
    const file = `reports/${slug}/report.md`;
    const { content: before } = folder.bytes(file);
    if (before === null) return [];
    const { text, encoding, problems } = decodeText(file, before);
    // Even a text with broken letters shows whether a session belongs to it.
    const plan = openPlan(slug, text ?? new TextDecoder().decode(before), shared);
    if (plan === null) return [];
    const { orderSheet, options } = looseAnswers(file, plan.text);
    const bytes =
      orderSheet === null ? null : composedNames(folder).bytes(`reports/${slug}/${orderSheet}`).content;
    const longer =
      bytes === null || orderSheet === null || warmUps === 0
        ? null
        : longerSheet(`reports/${slug}/`, orderSheet, bytes, warmUps);
    const sheet =
      bytes === null ? null : (longer?.sheet ?? readOrderSheet(`reports/${slug}/${orderSheet ?? ''}`, bytes));
    return [
      {
        plan,
        report: { name: 'report.md', before, text: plan.text, encoding },
        problems: [...problems, ...(longer?.problems ?? [])].filter(({ severity }) => severity === 'error'),
        sheet,
        newSheet: longer?.newSheet ?? null,
        sheetName: orderSheet,
        options,
      },
    ];
  });
}

/** Whether just so many warm-up swings stand in it already, as after a draft that was killed half way. */
function hasWarmUps({ entries }: OrderSheet, warmUps: number): boolean {
  const first = entries.findIndex(({ contender }) => contender !== null);
  return first === warmUps && entries.slice(0, first).every(({ shot }, index) => shot === index + 1);
}

const mark = '\ufeff';

/** The sheet with its warm-up swings; none where only a person can put them in. */
function longerSheet(
  folder: string,
  name: string,
  before: Uint8Array,
  warmUps: number,
): Pick<PlanAtHand, 'newSheet' | 'problems'> & { readonly sheet: OrderSheet } {
  const { text, encoding, problems } = decodeText(folder + name, before);
  const sheet = readOrderSheet(folder + name, before);
  if (text === null) return { sheet, newSheet: null, problems };
  const longer = hasWarmUps(sheet, warmUps) ? { sheet, text } : withWarmUps(folder + name, text, warmUps);
  if (longer === null) return { sheet, newSheet: null, problems };
  // By the mark a spreadsheet knows UTF-8; where it stood, or where another encoding did, it is needed.
  const marked = encoding !== 'UTF-8' || (before[0] === 0xef && before[1] === 0xbb && before[2] === 0xbf);
  return {
    sheet: longer.sheet,
    problems,
    newSheet: { name, before, text: `${marked ? mark : ''}${longer.text}`, encoding },
  };
}
