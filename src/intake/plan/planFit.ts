import { clubName, inHitOrder } from '../placedRows.ts';
import { understand } from '../draft/understood.ts';
import { contenderMatcher, foldedName } from '../contenderNames.ts';
import type { ShotFile } from '../shots/shotFile.ts';
import { countedBySheet } from './countedBySheet.ts';
import type { OpenPlan } from './openPlan.ts';
import type { OrderSheet } from './readOrderSheet.ts';

/** What keeps files from being surely those of a planned test. */
export interface UnsureFit {
  readonly kind: 'unsure';
  readonly why: string;
  /** How many warm-up swings at the beginning would account for it; null where none would. */
  readonly warmUps: number | null;
}

/** Whether session files are those of a planned test. */
type PlanFit = { readonly kind: 'fits' } | UnsureFit | { readonly kind: 'other' };

/**
 * Files that name what was hit belong to a plan with the same contenders; files that do not, to one whose order sheet
 * lists just these shots.
 */
export function planFit(plan: OpenPlan, sheet: OrderSheet | null, files: readonly ShotFile[]): PlanFit {
  const rows = inHitOrder(files).filter(({ row }) => !row.warmUp);
  if (plan.contenders.length === 0 || rows.length === 0) return { kind: 'other' };
  if (understand(files).days.some((day) => day < plan.date)) return { kind: 'other' };
  const contenderOf = contenderMatcher(plan.contenders);
  const names = new Map(
    rows.map(({ row, file }) => [foldedName(clubName(row, file)), clubName(row, file)] as const),
  );
  const strangers = [...names.values()].filter((name) => contenderOf(name) === null);
  if (strangers.length === names.size && names.size > 1) return { kind: 'other' };
  if (strangers.length === names.size) {
    if (sheet !== null && countedBySheet(files, sheet, contenderOf, plan.inHitOrder).fits)
      return { kind: 'fits' };
    const shots = `${rows.length} ${rows.length === 1 ? 'shot' : 'shots'}`;
    if (sheet === null)
      return unsure('the file does not say what was hit, and the report has no order sheet');
    const more = rows.length - sheet.entries.length;
    return unsure(
      `the file does not say what was hit and has ${shots}; the order sheet lists ${sheet.entries.length}`,
      more < 1 || more > mostWarmUps ? null : more,
    );
  }
  if (strangers.length > 0)
    return unsure(`the file also names ${strangers.join(', ')}, which the plan does not`);
  const hit = new Set([...names.values()].map(contenderOf));
  const absent = plan.contenders.filter(({ id }) => !hit.has(id));
  return absent.length === 0
    ? { kind: 'fits' }
    : unsure(`the file has no shots with ${absent.map(({ label }) => label).join(', ')}`);
}

const unsure = (why: string, warmUps: number | null = null): PlanFit => ({ kind: 'unsure', why, warmUps });

/** A monitor that records no club counts the warm-up, too; nobody warms up for longer. */
const mostWarmUps = 40;
