import type { SwingFindings, SwingPair } from '../findings/findings.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import { printAt, printLimit, stepFor } from './numbers.ts';
import { toReader, unitFor, withUnit } from './readerUnits.ts';
import type { Telling } from './telling.ts';
import { capitalised, listed } from './words.ts';

/** The row of a measure and pair: "Club speed: the same, as far as it matters." */
export function swingSentence(id: MetricId, pair: SwingPair, telling: Telling): string {
  const name = capitalised(metrics[id].name);
  const names = `${telling.nameOf(pair.a)} and ${telling.nameOf(pair.b)}`;
  switch (pair.answer) {
    case 'same':
      return `${name}, ${names}: the same swing, as far as it matters.`;
    case 'different':
      return `${name}, ${names}: not the same swing.`;
    case 'cannot-tell':
      return `${name}, ${names}: cannot tell.`;
  }
}

/** What all measures together say about the swing. */
export function swingInShort(swing: SwingFindings, telling: Telling): string {
  const rows = swing.measures.flatMap(({ id, pairs }) => pairs.map((pair) => ({ id, pair })));
  if (rows.length === 0) return 'Too few readings of the swing to compare it.';
  const different = [
    ...new Set(rows.filter(({ pair }) => pair.answer === 'different').map(({ id }) => metrics[id].name)),
  ];
  if (different.length > 0) {
    return `It was not the same swing with every ${telling.noun}: ${listed(different)} differed by enough to matter. That may be the ${telling.noun}'s own doing; these shots cannot part the two.`;
  }
  if (rows.every(({ pair }) => pair.answer === 'same')) {
    return `The swing was the same as far as we could measure: ${listed(swing.measures.map(({ id }) => metrics[id].name))}.`;
  }
  return 'These shots cannot tell whether the swing was the same.';
}

/** The measures nobody read, which could have differed unseen. */
export function swingUnread(swing: SwingFindings): string {
  const all: readonly MetricId[] = ['club_speed', 'attack_angle', 'club_path', 'face_to_path'];
  const unread = all.filter((id) => swing.measures.every((measure) => measure.id !== id));
  return unread.length === 0 ? '' : `Not read: ${listed(unread.map((id) => metrics[id].name))}.`;
}

/**
 * "At equal club speed the gap would be about 8 yards; 2 to 14 would fit." Told from the contender with more; what is
 * below nothing is "the other way".
 */
export function equalSpeedSentence(
  equal: { readonly estimate: number; readonly ci: readonly [number, number] },
  flip: 1 | -1,
  metric: MetricId,
  telling: Telling,
): string {
  const unit = unitFor(metric, telling.system);
  const read = (value: number): number => toReader(value * flip, metric, telling.system);
  const [low, high] =
    flip === 1 ? [read(equal.ci[0]), read(equal.ci[1])] : [read(equal.ci[1]), read(equal.ci[0])];
  const step = stepFor(unit, (high - low) / 2);
  const limit = (value: number): string => printLimit(value, step, unit, [0]).replace('−', '');
  const otherWay = (printed: string): string => `${withUnit(printed, unit)} the other way`;
  const limitWords = (value: number): string => (value < 0 ? otherWay(limit(value)) : limit(value));
  const about = printAt(Math.abs(read(equal.estimate)), step);
  const size = read(equal.estimate) < 0 && about !== '0' ? otherWay(about) : withUnit(about, unit);
  // A ball waits where it lies and has no part in how fast the club comes.
  const ownDoing = /ball/i.test(telling.noun) ? '' : ` Club speed is partly the ${telling.noun}'s own doing.`;
  return `At equal club speed the gap would be about ${size}; ${limitWords(low)} to ${limitWords(high)} would fit.${ownDoing}`;
}
