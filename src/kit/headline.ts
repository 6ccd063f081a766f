import type { DrawnFigure } from '../charts/figure.ts';
import { answerSentences, forWhomShort, primaryMetrics } from '../prose/answer.ts';
import { openCause } from '../prose/pairSentence.ts';
import { capitalised, countWord } from '../prose/words.ts';
import { fewestShotsJudged } from '../findings/thresholds.ts';
import type { MetricFindings } from '../findings/findings.ts';
import type { Report } from './report.ts';
import { golfers } from './whoAndHow.ts';

/** The metric whose answer a figure of all its differences shows; null for any other figure. */
export function gapsMetric({ findings }: Report, { chart, about }: DrawnFigure): MetricFindings | null {
  if (chart !== 'apart' || about.of === 'report') return null;
  return findings.metrics.find(({ id }) => id === about.metric) ?? null;
}

/** "For one golfer", as it opens a headline that stands by itself. */
export function forWhomAlone({ findings }: Report): string {
  return forWhomShort(findings)
    .replace('this golfer', 'one golfer')
    .replace('like these', `like these ${countWord(findings.design.hitters)}`);
}

/**
 * What stands over a chart that leaves its page, sentence by sentence: the answer over a chart of gaps, for any other
 * what it is of, and what keeps its averages from being an answer. Never stronger than the page, and it says first of how
 * many golfers it speaks.
 */
export function headline(report: Report, figure: DrawnFigure): readonly string[] {
  const metric = gapsMetric(report, figure);
  if (metric === null) {
    const { hitters } = report.findings.design;
    const whom = hitters === 1 ? forWhomAlone(report) : golfers(report);
    const held = heldBack(report);
    return [`${whom}: ${lowerFirst(figure.subject, report)}.`, ...(held === null ? [] : [held])];
  }
  const [first = '', ...others] = answerSentences(metric, report.telling);
  const whom = forWhomShort(report.findings);
  const opened = first.startsWith(whom)
    ? `${forWhomAlone(report)}${first.slice(whom.length)}`
    : `${forWhomAlone(report)}: ${lowerFirst(first, report)}`;
  return awayFromPage([opened, ...others]);
}

/** In place of answers for which there is no room. */
export const othersElsewhere = 'For the others see the report.';

/** Sentences of an answer that leave the page: "Seven more pairs stand below" is true there only. */
export function awayFromPage(sentences: readonly string[]): readonly string[] {
  return sentences.map((words) => (/ stand below\.$/.test(words) ? othersElsewhere : words));
}

/** Why averages side by side are no answer, where nothing was judged or the order may be behind every gap. */
function heldBack({ findings, telling }: Report): string | null {
  const pairs = primaryMetrics(findings).flatMap((metric) => metric.pairs);
  const judged = pairs.filter(({ verdict }) => verdict !== 'not-judged');
  if (judged.length === 0) {
    const few = primaryMetrics(findings).every(({ byContender }) =>
      byContender.every(({ n }) => n < fewestShotsJudged),
    );
    return few ? 'Too few shots to be judged.' : 'Not judged; see the report.';
  }
  const [open] = judged.filter(({ credit }) => credit === 'open');
  if (open === undefined) return null;
  return judged.every(({ credit }) => credit === 'open')
    ? `${capitalised(openCause(open, telling))}, so the cause of any gap is open.`
    : 'Of some, the order leaves the cause of a gap open.';
}

// Names of what was compared keep their capital.
function lowerFirst(text: string, { findings, telling }: Report): string {
  const names = findings.contenders.flatMap(({ id, label }) => [telling.nameOf(id), label]);
  return names.some((name) => text.startsWith(name)) ? text : text.charAt(0).toLowerCase() + text.slice(1);
}
