import { dirname, join, resolve } from 'node:path';
import { planFit, type UnsureFit } from '../../intake/plan/planFit.ts';
import { readShotFile } from '../../intake/shots/readShotFile.ts';
import { openPlans, type PlanAtHand } from './openPlans.ts';
import type { NamedBytes } from './readSession.ts';

/** The planned test to which session files belong, if any. */
export type PlanChoice =
  | { readonly kind: 'none' }
  | { readonly kind: 'plan'; readonly planned: PlanAtHand }
  | { readonly kind: 'unsure'; readonly plans: readonly MaybePlanned[] };

/** A planned test to which files may belong, and what keeps that from being sure. */
export interface MaybePlanned extends Omit<UnsureFit, 'kind'> {
  readonly slug: string;
}

interface Wanted {
  readonly contentDir: string;
  readonly paths: readonly string[];
  /** The report that was named for the files; null where none was. */
  readonly slug: string | null;
  readonly warmUps?: number;
}

/**
 * The plan that was named, or beside which the files lie already; else the one that they fit. Files that may belong to
 * a plan, or to several, are for the fitter to place.
 */
export function choosePlan(
  { contentDir, paths, slug, warmUps = 0 }: Wanted,
  files: readonly NamedBytes[],
): PlanChoice {
  const plans = openPlans(contentDir, warmUps);
  const beside = (planned: PlanAtHand): boolean =>
    paths.every((path) => resolve(dirname(path)) === resolve(join(contentDir, 'reports', planned.plan.slug)));
  const named = plans.find((planned) => (slug === null ? beside(planned) : planned.plan.slug === slug));
  if (named !== undefined) return { kind: 'plan', planned: named };
  if (slug !== null) return { kind: 'none' };
  const fits = plans.map((planned) => ({
    planned,
    fit: planFit(
      planned.plan,
      planned.sheet,
      files.map(({ name, bytes }) => readShotFile(name, bytes, planned.options)),
    ),
  }));
  const sure = fits.filter(({ fit }) => fit.kind === 'fits');
  const [first] = sure;
  if (first !== undefined && sure.length === 1) return { kind: 'plan', planned: first.planned };
  const open = sure.length > 1 ? sure : fits.filter(({ fit }) => fit.kind === 'unsure');
  if (open.length === 0) return { kind: 'none' };
  return {
    kind: 'unsure',
    plans: open.map(({ planned: { plan }, fit }) => ({
      slug: plan.slug,
      ...(fit.kind === 'unsure'
        ? { why: fit.why, warmUps: fit.warmUps }
        : { why: 'the file fits it, and another one as well', warmUps: null }),
    })),
  };
}
