import { looseAnswers } from '../../intake/draft/looseAnswers.ts';
import { openPlan, type OpenPlan } from '../../intake/plan/openPlan.ts';
import { readOrderSheet, type OrderSheet } from '../../intake/plan/readOrderSheet.ts';
import { withWarmUps } from '../../intake/plan/withWarmUps.ts';
import type { ShotFileOptions } from '../../intake/shots/shotFile.ts';
import { composedNames } from '../../site/composedNames.ts';
import { openContentFolder } from '../../site/contentFiles.ts';
import { readShared } from '../../site/sharedFiles.ts';

/** An open plan with its order sheet, where it has one. */
export interface PlanAtHand {
  readonly plan: OpenPlan;
  readonly sheet: OrderSheet | null;
  /** The sheet as it is to be saved, where warm-up swings were put into it. */
  readonly newSheet: string | null;
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
    const text = folder.text(file);
    const plan = text === null ? null : openPlan(slug, text, shared);
    if (plan === null) return [];
    const { orderSheet, options } = looseAnswers(file, plan.text);
    const bytes = orderSheet === null ? null : composedNames(folder).bytes(`reports/${slug}/${orderSheet}`);
    const sheetFile = `reports/${slug}/${orderSheet ?? ''}`;
    const longer =
      bytes === null || warmUps === 0
        ? null
        : withWarmUps(sheetFile, new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes), warmUps);
    const sheet = bytes === null ? null : (longer?.sheet ?? readOrderSheet(sheetFile, bytes));
    return [{ plan, sheet, newSheet: longer?.text ?? null, sheetName: orderSheet, options }];
  });
}
