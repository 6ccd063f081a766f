import type { NotJudged } from './findings.ts';
import type { HitterSamples } from './hitterFindings.ts';
import { fewestHittersAsUnit, fewestShotsJudged } from './thresholds.ts';

/** Why a pair has no interval, and which of the two it is about; of a pair that has none. */
export function whyNotJudged(a: string, b: string, byHitter: readonly HitterSamples[]): NotJudged {
  const shots = (id: string, { samples }: HitterSamples): number =>
    samples.find(({ contender }) => contender === id)?.values.length ?? 0;
  const all = (id: string): number => byHitter.reduce((sum, own) => sum + shots(id, own), 0);
  const both = [a, b];
  const about = (
    because: NotJudged['because'],
    contenders: readonly string[],
    fewest: number | null = null,
  ): NotJudged => ({ because, contenders, fewest });

  const silent = both.filter((id) => all(id) === 0);
  if (silent.length > 0) return about('no-reading', silent);
  if (byHitter.length >= fewestHittersAsUnit) {
    const golfers = byHitter.filter((own) => both.every((id) => shots(id, own) > 0)).length;
    return golfers < fewestHittersAsUnit
      ? about('too-few-golfers', both, golfers)
      : about('golfers-not-comparable', both);
  }
  const short = both.filter((id) => all(id) < fewestShotsJudged);
  if (short.length > 0) return about('too-few-shots', short, Math.min(...short.map(all)));
  const fewestOf = (id: string): number => Math.min(...byHitter.map((own) => shots(id, own)));
  const thin = both.filter((id) => fewestOf(id) < fewestShotsJudged);
  if (thin.length > 0) return about('golfer-too-few-shots', thin, Math.min(...thin.map(fewestOf)));
  const readings = new Set(
    byHitter
      .flatMap(({ samples }) => samples)
      .flatMap(({ contender, values }) => (both.includes(contender) ? values : [])),
  );
  return about(readings.size > 1 ? 'each-alike' : 'all-alike', both);
}
