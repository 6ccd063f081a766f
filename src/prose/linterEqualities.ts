import { primaryMetrics } from './answers.ts';
import { sayPair } from './english/pairInWords.ts';
import { named } from './linterNames.ts';
import { isDenied, isSupposed } from './linterWords.ts';
import { pairAnswer } from './pairAnswer.ts';
import type { Telling } from './telling.ts';

/** Two contenders called alike where the shots have not shown it: "cannot tell" is not "equal". */
interface UnshownEquality {
  readonly word: string;
  readonly at: number;
  /** What the shots say of the two. */
  readonly says: string;
  /** The reference that prints it in a narrative. */
  readonly reference: string;
}

const alike =
  /\bno (?:real |measurable |true )?(?:difference|gap)\b|\b(?:are|were) (?:just |exactly )?(?:equal|identical|level|the same)\b(?! (?:length|weight|loft|price|shaft|colou?r|size|age|make|grip))|\b(?:just )?as (?:long|far|fast|straight|good) as\b/i;

/** Whether a sentence calls two contenders it names alike, though a primary answer about them is another. */
export function unshownEquality(sentence: string, telling: Telling): UnshownEquality | null {
  const found = alike.exec(sentence);
  if (found === null || isDenied(sentence, found.index) || isSupposed(sentence, found.index)) return null;
  const ids = new Set(named(sentence, telling).map(({ id }) => id));
  for (const metric of primaryMetrics(telling.findings)) {
    const pair = metric.pairs.find(({ a, b }) => ids.has(a) && ids.has(b));
    const shown = pair?.credit === 'contender' && (pair.verdict === 'level' || pair.verdict === 'small');
    if (pair !== undefined && !shown) {
      return {
        word: found[0],
        at: found.index,
        says: sayPair(pairAnswer(pair, metric, telling.findings.design), telling),
        reference: ['answer', metric.id, pair.a, pair.b].join(' '),
      };
    }
  }
  return null;
}
