import type { DrawnFigure } from '../charts/figure.ts';
import { answerSentences, forWhomShort, primaryMetrics } from '../prose/answer.ts';
import { countWord } from '../prose/words.ts';
import type { MetricFindings } from '../findings/findings.ts';
import type { Report } from './report.ts';

/** The primary metric that a figure of gaps is about; null for any other figure. */
export function gapsMetric({ findings, figures }: Report, { id }: DrawnFigure): MetricFindings | null {
  const apart = figures.filter((figure) => isApart(figure.id));
  const place = apart.findIndex((figure) => figure.id === id);
  return primaryMetrics(findings)[place] ?? null;
}

function isApart(id: string): boolean {
  return id === 'apart' || id.startsWith('apart-');
}

/** "For one golfer", as it opens a headline that stands by itself. */
export function forWhomAlone({ findings }: Report): string {
  return forWhomShort(findings)
    .replace('this golfer', 'one golfer')
    .replace('like these', `like these ${countWord(findings.design.hitters)}`);
}

/**
 * What stands over a chart that leaves its page, sentence by sentence: the answer over a chart of gaps, for any other
 * what it is of. Never stronger than the page, and it says first for how many golfers it holds.
 */
export function headline(report: Report, figure: DrawnFigure): readonly string[] {
  const metric = gapsMetric(report, figure);
  if (metric === null) return [`${forWhomAlone(report)}: ${lowerFirst(subjectOf(figure), report)}.`];
  const [first = '', ...others] = answerSentences(metric, report.telling);
  const whom = forWhomShort(report.findings);
  const opened = first.startsWith(whom)
    ? `${forWhomAlone(report)}${first.slice(whom.length)}`
    : `${forWhomAlone(report)}: ${lowerFirst(first, report)}`;
  return [opened, ...others];
}

/** What a figure is of, out of the name of its image: "carry of every shot with each ball". */
export function subjectOf({ question, svg }: DrawnFigure): string {
  const name = unescapeXml(/<title[^>]*>([^<]*)<\/title>/.exec(svg.wide)?.[1] ?? question);
  const rest = name.startsWith(question) ? name.slice(question.length).replace(/^[:\s]+/, '') : name;
  return rest === '' ? question : rest;
}

function unescapeXml(text: string): string {
  return text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&');
}

// Names of what was compared keep their capital.
function lowerFirst(text: string, { findings, telling }: Report): string {
  const names = findings.contenders.flatMap(({ id, label }) => [telling.nameOf(id), label]);
  return names.some((name) => text.startsWith(name)) ? text : text.charAt(0).toLowerCase() + text.slice(1);
}
