import { mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { DrawnFigure } from '../../src/charts/figure.ts';
import { answerOf } from '../../src/prose/answers.ts';
import { bearsOn, cautionsFor } from '../../src/prose/cautions.ts';
import { sayAnswerAlone } from '../../src/prose/english/answers.ts';
import {
  sayAnswerCounted,
  sayAnswerFirst,
  sayAnswerInBrief,
} from '../../src/prose/english/answersInBrief.ts';
import { sayCaution } from '../../src/prose/english/cautions.ts';
import { sayCautionInBrief, sayWhatDecides } from '../../src/prose/english/kit/cautionsInBrief.ts';
import { pairAnswers } from '../../src/prose/pairAnswer.ts';
import type { About, AnswerBlock } from '../../src/prose/statement.ts';
import { altSentences } from '../../src/kit/altText.ts';
import { captionSentences } from '../../src/kit/captions.ts';
import { caveats, stripSentences } from '../../src/kit/caveatStrip.ts';
import { metricsIn } from '../../src/kit/figureAnswer.ts';
import { headline, wholeHeadline } from '../../src/kit/headline.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import type { Report } from '../../src/kit/report.ts';
import type { Said } from '../../src/kit/said.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { metrics } from '../../src/trade/metrics.ts';
import { writeTriedContent } from '../specimen-pages/triedContent.ts';
import { oddOnes, reports } from './content.ts';

const caseReports = readdirSync(resolve('tests/cases'), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .flatMap(({ name }) => loadSite(resolve('tests/cases', name, 'content')).reports);
const triedFolder = mkdtempSync(join(tmpdir(), 'straightface-tried-'));
writeTriedContent(triedFolder);
const tried = loadSite(triedFolder).reports;
const all: readonly Report[] = [...reports, ...oddOnes, ...tried, ...caseReports];

/** Every surface on which a chart leaves its page, with what is said on it. */
const surfaces: Readonly<Record<string, (report: Report, figure: DrawnFigure) => readonly Said[]>> = {
  'short caption': (report, figure) => captionSentences(report, figure).short,
  'middle caption': (report, figure) => captionSentences(report, figure).middle,
  'long caption': (report, figure) => captionSentences(report, figure).long,
  headline: wholeHeadline,
  'headline of one line': (report, figure) =>
    headline(report, figure, (said) => said.reduce((sum, { text }) => sum + text.length, 0) < 90),
  strip: (report, figure) => stripSentences(report, figure, '1.0.0', () => true),
  frame: caveats,
  'alternative text': (report, figure) => altSentences(report, figure),
  'short alternative text': (report, figure) => altSentences(report, figure, 200),
};

/** All that may be said of a chart's own answer: each is a rendering of a made statement about its measure and pairs. */
function answersFor(report: Report, about: About): readonly string[] {
  if (about.of === 'report') return [];
  const { findings, telling } = report;
  const metric = findings.metrics.find(({ id }) => id === about.metric);
  if (metric === undefined) throw new Error(about.metric);
  const whole = answerOf(metric, findings);
  const pairs = pairAnswers(metric, findings.design);
  const own =
    about.of === 'metric' ? pairs : pairs.filter((one) => one.about.a === about.a && one.about.b === about.b);
  const blocks: readonly AnswerBlock[] =
    about.of === 'pair'
      ? [{ ...whole, statements: own.map((answer) => ({ kind: 'one', answer })) }]
      : [whole, { ...whole, statements: whole.statements.filter(({ kind }) => kind !== 'more') }];
  return blocks.flatMap((block) => [
    ...sayAnswerAlone(block, telling),
    sayAnswerCounted(block, own, telling),
    ...(['bare', 'unsized'] as const).flatMap((form) => sayAnswerFirst(block, own, telling, form) ?? []),
    ...(['bare', 'unsized', 'sized'] as const).map((form) => sayAnswerInBrief(block, telling, form)),
  ]);
}

/** The cautions that bear on what a chart is about, or on what it shows side by side. */
function cautionsOn(report: Report, figure: DrawnFigure): readonly string[] {
  return metricsIn(report.findings, figure)
    .flatMap((metric) => cautionsFor(metric, report.findings))
    .filter((caution) => figure.about.of === 'report' || bearsOn(caution, figure.about))
    .flatMap((caution) => [
      sayCaution(caution, report.telling),
      sayCautionInBrief(caution, report.telling),
      ...sayWhatDecides(caution),
    ]);
}

describe.each(all.map((report) => [report.source.slug, report] as const))('%s', (_slug, report) => {
  const figures = kitOf(report).offered.map(({ figure }) => figure);

  test.each(Object.entries(surfaces))('%s: answers and cautions are those of the chart', (_name, say) => {
    for (const figure of figures) {
      const answers = answersFor(report, figure.about);
      const cautions = cautionsOn(report, figure);
      for (const { kind, about, text } of say(report, figure)) {
        if (kind === 'answer') {
          expect(figure.about.of, text).not.toBe('report');
          expect('metric' in about && 'metric' in figure.about && about.metric === figure.about.metric).toBe(
            true,
          );
          expect(answers, figure.id).toContain(text);
        }
        if (kind === 'caution') expect(cautions, `${figure.id}: ${text}`).toContain(text);
      }
    }
  });

  test('whatever is about a measure gives its answer, naming the measure and, of one golfer, that it was one', () => {
    const { hitters } = report.findings.design;
    for (const figure of figures) {
      const { about } = figure;
      if (about.of === 'report') continue;
      for (const name of ['short caption', 'middle caption', 'long caption', 'headline'] as const) {
        const told = (surfaces[name] ?? wholeHeadline)(report, figure);
        const answers = told.filter(({ kind }) => kind === 'answer');
        expect(answers.length, `${figure.id}: ${name}`).toBeGreaterThan(0);
        const words = told.map(({ text }) => text).join(' ');
        if (hitters === 1) expect(words).toMatch(/\bone golfer\b/i);
      }
      const { short } = kitOf(report).offered.find((item) => item.figure === figure)?.captions ?? {
        short: '',
      };
      expect(short.toLowerCase()).toContain(metrics[about.metric].name.toLowerCase());
    }
  });

  test('every sentence of an interest is true of what the chart compares', () => {
    for (const figure of figures) {
      const told = surfaces['strip']?.(report, figure) ?? [];
      for (const { text } of told.filter(({ kind }) => kind === 'interest'))
        expect(text).not.toMatch(/\b(Others (paid|saw)|came from outside|It takes commission|states more)\b/);
    }
  });
});

test('the walk goes over all kinds of charts, answers and cautions', () => {
  const charts = new Set(all.flatMap((one) => kitOf(one).offered.map(({ figure }) => figure.chart)));
  // All but launch and spin: no shot of these reports lies where the model carries farthest.
  expect(charts.size).toBe(10);
  const kinds = new Set(
    all.flatMap((one) =>
      kitOf(one).offered.flatMap(({ figure }) => captionSentences(one, figure).long.map(({ kind }) => kind)),
    ),
  );
  for (const kind of ['answer', 'chart', 'caution', 'interest', 'who', 'stamp', 'credit', 'reading'] as const)
    expect(kinds).toContain(kind);
});
