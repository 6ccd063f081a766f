import type { MetricFindings } from '../findings/findings.ts';
import type { Session } from '../intake/session.ts';
import { comparativeOf } from '../prose/comparatives.ts';
import { mattersText, pairSentence } from '../prose/pairSentence.ts';
import { toReader, unitFor, unitWord } from '../prose/readerUnits.ts';
import type { Telling } from '../prose/telling.ts';
import { counted } from '../prose/words.ts';
import { contenderName } from './contenderName.ts';
import type { Figure } from './figure.ts';
import { gapRow } from './gapRow.ts';
import { withAndWithoutChart } from './withAndWithout.ts';

const id = 'with-and-without';
const question = 'Did leaving shots out change it?';

/** *With and without*: every pair with all shots and without those left out. */
export function withAndWithoutFigure(metric: MetricFindings, session: Session, telling: Telling): Figure {
  const leftOut = session.shots.filter(({ excluded }) => excluded !== null).length;
  const pairs = metric.pairs.flatMap((pair) => {
    const { withLeftOut } = pair;
    if (withLeftOut === null) return [];
    const all = gapRow(`All ${session.shots.length} shots`, withLeftOut, pair, metric, telling);
    const kept = gapRow(`Without the ${leftOut} left out`, pair, pair, metric, telling);
    const same = withLeftOut.verdict === pair.verdict;
    const sentence = pairSentence(pair, metric, telling);
    return [
      {
        a: contenderName(pair.a, telling),
        b: contenderName(pair.b, telling),
        sentence: same
          ? `${sentence} Either way.`
          : `${sentence} With every shot counted the answer changes.`,
        all,
        kept,
      },
    ];
  });
  if (leftOut === 0 || pairs.length === 0)
    return { kind: 'absent', id, question, why: 'Not drawn: no shot was left out.' };
  const unit = unitFor(metric.id, telling.system);
  const matters = toReader(metric.matters, metric.id, telling.system);
  return withAndWithoutChart({
    id,
    question,
    subject: 'Each gap with all shots and without those left out',
    finding:
      `${counted(leftOut, 'shot')} left out. Bar: every gap that would fit; the upper one with every shot counted, the lower one without them.`.replace(
        /^./,
        (first) => first.toUpperCase(),
      ),
    description: pairs
      .map(({ sentence, all, kept }) => `${sentence} All shots: ${all.words} Without: ${kept.words}`)
      .join(' '),
    table: {
      caption: 'Gaps with and without the shots left out',
      head: ['Pair', 'All shots', 'Without those left out', 'Answer'],
      rows: pairs.map(({ a, b, all, kept, sentence }) => [
        `${a.label} and ${b.label}`,
        all.words,
        kept.words,
        sentence,
      ]),
    },
    pairs,
    leftOut,
    matters,
    axis: `${unitWord(unit)} ${comparativeOf(metric.id).more}`.trim(),
    legend: `Under ${mattersText({ matters, unit })}: too small to matter`,
  });
}
