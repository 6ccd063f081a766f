import type { MetricFindings } from '../findings/findings.ts';
import { metrics, type MetricId } from '../trade/metrics.ts';
import type { UnitId } from '../trade/units.ts';
import { units } from '../trade/units.ts';
import { named } from './linterNames.ts';
import { writtenNumbers } from './linterNumbers.ts';
import { isDenied, isPartial, isSupposed } from './linterWords.ts';
import type { Telling } from './telling.ts';

/** What a sentence states a number to be: an average, or how far two are apart in a metric. */
export interface StatedFigure {
  readonly text: string;
  readonly at: number;
  readonly value: number;
  readonly unit: UnitId;
  /** Half the step it is written in, in its unit. */
  readonly slack: number;
  readonly of: 'mean' | 'apart';
  readonly metric: MetricFindings;
  /** Contenders that it may be about, by id: those named beside it, else all. */
  readonly ids: readonly string[];
}

/** How prose names a metric. Common practice, no source. */
const metricWords: readonly (readonly [id: MetricId, words: RegExp])[] = [
  ['ball_speed', /\bball speeds?\b/gi],
  ['club_speed', /\b(?:club|club ?head|head|swing) speeds?\b/gi],
  ['smash', /\bsmash(?: factors?)?\b/gi],
  ['back_spin', /\bback ?spin\b/gi],
  ['side_spin', /\bside ?spin\b/gi],
  ['spin_rate', /(?<!\b(?:back|side) ?)\b(?:spin|spun|spins)(?: rates?)?\b/gi],
  ['launch_angle', /\blaunch(?:ed|es)?(?: angles?)?\b(?! direction)/gi],
  ['descent_angle', /\b(?:descent|landing) angles?\b|\bcame down\b/gi],
  ['attack_angle', /\battack angles?\b|\bangles? of attack\b/gi],
  ['apex', /\bapex\b|\bpeak height\b/gi],
  ['total', /\btotal(?: distance)?\b/gi],
  ['carry', /\bcarr(?:y|ies|ied)\b/gi],
];

const average =
  /\baverag(?:e|es|ed|ing)\b|\bmeans?\b(?= (?:carry|total|ball|club|spin|was|of))|\btypical(?:ly)?\b/i;
/** What a number is when it is no average: one shot, a spread, a limit, another day. */
const otherwise =
  /\b(?:longest|shortest|best|worst|highest|lowest|fastest|slowest|spread|deviation|scatter|likely|between|within|range|median|middle|at least|at most|up to|least|most|one shot|single|last (?:year|time|week|month)|expected|planned|error|accura\w+)\b/i;
const apartAfter =
  /^\s*(?:or so )?(?:on average )?(?:farther|further|longer|shorter|more|less|fewer|faster|slower|quicker|higher|lower|past|ahead|behind|clear of|apart|better|in front|of (?:extra )?(?:carry|distance|ball speed) on)/i;
/** "It has 5 yards on Birch"; only a capital makes out a name, so "on average" is none. */
const apartFromName = /^\s*(?:or so )?(?:on average )?on (?:top of )?(?:the )?(?=\p{Lu})/u;
const apartBefore =
  /\b(?:gap|difference|advantage|lead|gain(?:s|ed)?|gained|adds?|added|picks? up|picked up|los(?:es|t)|outdr(?:ove|ives)|extra)\b[^.,;:]{0,40}$/i;

/** The numbers of a sentence of which it is plain what they are numbers of. */
export function statedFigures(sentence: string, telling: Telling): readonly StatedFigure[] {
  if (otherwise.test(sentence)) return [];
  const numbers = [
    ...writtenNumbers(sentence).filter(({ ofAPlace }) => !ofAPlace),
    ...smashFactors(sentence),
  ].toSorted((x, y) => x.at - y.at);
  const ends = numbers.map(({ at, text }) => at + text.length);
  return numbers.flatMap((number, index): StatedFigure[] => {
    const before = sentence.slice(0, number.at);
    const after = sentence.slice(ends[index]);
    const apart = apartAfter.test(after) || apartFromName.test(after) || apartBefore.test(before);
    if (apart && atLarge.test(before) && inGeneral.test(after) && named(sentence, telling).length === 0)
      return [];
    const isMean = number.unit === '1' || average.test(sentence);
    const metric = metricMeant(number.unit, before, after, telling);
    if (metric === null || (!apart && !isMean) || isOpen(sentence, number.at)) return [];
    const from = apart ? 0 : (ends[index - 1] ?? 0);
    const to = apart ? sentence.length : (numbers[index + 1]?.at ?? sentence.length);
    return [{ ...number, of: apart ? 'apart' : 'mean', metric, ids: idsBeside(sentence, from, to, telling) }];
  });
}

/** "A gap of 5 yards is half a club": about gaps at large, and not the one between those that were hit. */
const atLarge = /\ban? (?:gap|difference|advantage|lead|gain) of [^.,;:]{0,12}$/i;

const inGeneral = /^\s*(?:is|are|means?|matters?|makes?|would|may|can)\b/i;

const isOpen = (sentence: string, at: number): boolean =>
  isDenied(sentence, at) || isSupposed(sentence, at) || isPartial(sentence, at);

/** The reference for a number of which only the unit and somebody named beside it are plain; null where not even they. */
export function referenceNear(
  sentence: string,
  { at, text, unit }: Pick<StatedFigure, 'at' | 'text' | 'unit'>,
  telling: Telling,
): readonly string[] | null {
  const [before, after] = [sentence.slice(0, at), sentence.slice(at + text.length)];
  const metric = metricMeant(unit, before, after, telling);
  const id = named(before, telling).at(-1)?.id ?? named(after, telling)[0]?.id;
  return metric === null || id === undefined ? null : ['mean', metric.id, id];
}

/** Who is named beside a number; else in the sentence; else all. */
function idsBeside(sentence: string, from: number, to: number, telling: Telling): readonly string[] {
  const all = named(sentence, telling);
  const beside = all.filter(({ at }) => at >= from && at < to);
  const ids = [...new Set((beside.length > 0 ? beside : all).map(({ id }) => id))];
  return ids.length > 0 ? ids : telling.findings.contenders.map(({ id }) => id);
}

/** The metric whose word stands nearest before a number, else after it, else the main one that has such a unit. */
function metricMeant(
  unit: UnitId,
  before: string,
  after: string,
  { findings }: Telling,
): MetricFindings | null {
  const own = findings.metrics.filter(({ id }) => units[unit].dimensions.includes(metrics[id].dimension));
  const words = (text: string): readonly { readonly id: MetricId; readonly at: number }[] =>
    metricWords
      .flatMap(([id, pattern]) => [...text.matchAll(pattern)].map(({ index }) => ({ id, at: index })))
      .toSorted((x, y) => x.at - y.at);
  const ofUnit = (id: MetricId): boolean => units[unit].dimensions.includes(metrics[id].dimension);
  const word =
    words(before).findLast(({ id }) => ofUnit(id)) ?? words(after).find(({ id }) => ofUnit(id)) ?? null;
  if (word !== null) return own.find(({ id }) => id === word.id) ?? null;
  const [main, ...others] = own.filter(({ role }) => role === 'primary');
  if (main !== undefined) return others.length === 0 ? main : null;
  return own.length === 1 ? (own[0] ?? null) : null;
}

const smash = /\bsmash(?: factors?)?\b[^.;:]{0,40}?(?<![\p{L}\p{N}.,])(\d\.\d{1,3})(?![\p{L}\p{N}%])/giu;
/** A ratio has no unit, and is known by the name of its metric. */
function smashFactors(
  sentence: string,
): readonly Pick<StatedFigure, 'text' | 'at' | 'value' | 'unit' | 'slack'>[] {
  return [...sentence.matchAll(smash)].map((found) => {
    const [whole, text = ''] = found;
    const decimals = text.split('.')[1]?.length ?? 0;
    return {
      text,
      at: found.index + whole.length - text.length,
      value: Number(text),
      unit: '1',
      slack: 10 ** -decimals / 2,
    };
  });
}
