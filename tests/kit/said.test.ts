import { mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { DrawnFigure } from '../../src/charts/figure.ts';
import { charts } from '../../src/charts/charts.ts';
import { answerOf, primaryMetrics } from '../../src/prose/answers.ts';
import { bearsOn, cautionsFor } from '../../src/prose/cautions.ts';
import { sayAnswerAlone } from '../../src/prose/english/answers.ts';
import { headOf } from '../../src/prose/english/answerHead.ts';
import {
  sayAnswerCounted,
  sayAnswerFirst,
  sayAnswerInBrief,
  sayLeadersAlone,
  toldInBrief,
} from '../../src/prose/english/answersInBrief.ts';
import { toldApartOf } from '../../src/prose/english/countedAnswers.ts';
import { comparisonOf } from '../../src/prose/english/comparisons.ts';
import { sayCaution } from '../../src/prose/english/cautions.ts';
import { sayCautionInBrief, sayWhatDecides } from '../../src/prose/english/kit/cautionsInBrief.ts';
import { interestOpening } from '../../src/prose/english/kit/interestInCaption.ts';
import { interestSentences } from '../../src/prose/interest.ts';
import { interestsOf } from '../../src/prose/interestStatements.ts';
import { pairAnswers } from '../../src/prose/pairAnswer.ts';
import type { About, AnswerBlock } from '../../src/prose/statement.ts';
import { altSentences } from '../../src/kit/altText.ts';
import { captionLimits, captionSentences } from '../../src/kit/captions.ts';
import { caveats, stripSentences } from '../../src/kit/caveatStrip.ts';
import { answerOfFigure, comparedIn, metricsIn } from '../../src/kit/figureAnswer.ts';
import { figureFound } from '../../src/kit/figureFound.ts';
import { headline, wholeHeadline } from '../../src/kit/headline.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import type { Report } from '../../src/kit/report.ts';
import { textOf, type Said } from '../../src/kit/said.ts';
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
  strip: (report, figure) => stripSentences(report, figure, () => true),
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
    `${headOf(block, telling)}: ${toldApartOf(own)}.`,
    sayAnswerInBrief(block, telling, 'bare', 'short'),
    ...(['short', 'whole'] as const).flatMap((form) => sayLeadersAlone(block, own, telling, form) ?? []),
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

  test('what a chart is said to have found is its own, and names nobody whom it does not compare', () => {
    for (const figure of figures) {
      const found = figureFound(report, figure);
      const own = found === null ? [] : [...found.forms, ...found.further];
      const others = report.findings.contenders
        .map(({ id }) => id)
        .filter((id) => !comparedIn(report, answerOfFigure(report, figure)).includes(id));
      for (const length of ['short', 'middle', 'long'] as const) {
        const told = captionSentences(report, figure)[length].filter(({ kind }) => kind === 'chart');
        for (const { about, text } of told) {
          expect(about).toEqual(figure.about);
          expect(own, figure.id).toContain(text);
          for (const id of others) expect(text).not.toContain(report.telling.nameOf(id));
        }
      }
    }
  });

  test('averages that are said are those of the table, and stand with the answer', () => {
    for (const figure of figures.filter(({ chart }) => chart === 'shots')) {
      const answer = answerOfFigure(report, figure);
      const form = figureFound(report, figure)?.forms.find((text) => text.startsWith('Average'));
      if (answer === null || form === undefined) continue;
      const [, ...rows] = [figure.table.head, ...figure.table.rows];
      for (const cells of rows.slice(0, answer.metric.byContender.length)) expect(form).toContain(cells[3]);
      expect(form).toContain(toldInBrief(answer.block, report.telling, 'bare'));
    }
  });

  test('a trend is said of those whose range holds none but one way', () => {
    for (const figure of figures.filter(({ chart }) => chart === 'order')) {
      const { metric } = answerOfFigure(report, figure) ?? {};
      const whole = figureFound(report, figure)?.forms.at(-1) ?? '';
      const rose = metric?.trends.filter(({ ci }) => ci[0] > 0) ?? [];
      const fell = metric?.trends.filter(({ ci }) => ci[1] < 0) ?? [];
      expect(whole.includes(' rose with '), whole).toBe(rose.length > 0);
      expect(whole.includes('fell with '), whole).toBe(fell.length > 0);
      for (const { id } of [...rose, ...fell])
        expect(whole).toContain(
          report.telling.nameOf(id).toLowerCase() === report.telling.the(id).replace('the ', '')
            ? report.telling.the(id)
            : report.telling.nameOf(id),
        );
    }
  });

  test('nothing about a measure leaves without it, and of one golfer says that it was one', () => {
    const { hitters } = report.findings.design;
    for (const figure of figures) {
      const { about } = figure;
      for (const name of [
        'short caption',
        'middle caption',
        'long caption',
        'headline',
        'headline of one line',
      ] as const) {
        const told = (surfaces[name] ?? wholeHeadline)(report, figure);
        const words = told.map(({ text }) => text).join(' ');
        if (hitters === 1) expect(words, `${figure.id}: ${name}`).toMatch(/\bone golfer\b/i);
        if (about.of === 'report') continue;
        const { verb, verbs, base } = comparisonOf(about.metric);
        const measure = [metrics[about.metric].name, verb, verbs, base];
        expect(
          measure.some((word) => words.toLowerCase().includes(word.toLowerCase())),
          `${figure.id}: ${name}: ${words}`,
        ).toBe(true);
      }
    }
  });

  test('no two charts of a report have one headline or one caption', () => {
    for (const name of [
      'short caption',
      'middle caption',
      'long caption',
      'headline',
      'headline of one line',
    ] as const) {
      const told = figures.map((figure) => textOf((surfaces[name] ?? wholeHeadline)(report, figure)));
      expect(
        told.filter((text, at) => told.indexOf(text) !== at),
        name,
      ).toEqual([]);
    }
  });

  test('captions keep their length, and none leaves without the money, gift or loan that bears on who is ahead', () => {
    for (const figure of figures) {
      const told = captionSentences(report, figure);
      for (const length of ['short', 'middle', 'long'] as const)
        expect(textOf(told[length]).length, textOf(told[length])).toBeLessThanOrEqual(captionLimits[length]);
      const [main] = primaryMetrics(report.findings);
      const answers =
        answerOfFigure(report, figure)?.answers ??
        (main === undefined ? [] : pairAnswers(main, report.findings.design));
      const ahead = answers
        .filter(({ status }) => ['clear', 'size-uncertain', 'small', 'cause-unclear'].includes(status))
        .map((one) => one.ahead);
      const bears = interestsOf(report.source.front).some(
        ({ kind, outside, contenders }) =>
          outside &&
          (kind === 'payment' || kind === 'gifts' || kind === 'supply') &&
          contenders.some((id) => ahead.includes(id)),
      );
      if (bears)
        for (const length of ['short', 'middle', 'long'] as const)
          expect(
            told[length].some(({ kind }) => kind === 'interest'),
            textOf(told[length]),
          ).toBe(true);
    }
  });

  test('the first picture has its interest word for word as the page, any other sentences of it', () => {
    const page = interestSentences(report.source);
    const opening = interestOpening(report.source.shop?.name ?? 'The publisher');
    const lead = report.figures.find(({ kind }) => kind === 'drawn')?.id;
    for (const figure of figures) {
      const told = (surfaces['strip']?.(report, figure) ?? []).filter(({ kind }) => kind === 'interest');
      if (figure.id === lead) expect(textOf(told)).toBe(`${opening} ${page.join(' ')}`);
      for (const [at, { text }] of told.entries())
        expect(page).toContain(at === 0 ? text.slice(opening.length + 1) : text);
    }
  });

  test('a strip begins with what marks the report and ends with where it stands', () => {
    const order: readonly string[] = ['stamp', 'sign', 'who', 'reading', 'caution', 'interest', 'credit'];
    for (const figure of figures) {
      const kinds = (surfaces['strip']?.(report, figure) ?? []).map(({ kind }) => order.indexOf(kind));
      expect(kinds).toEqual(kinds.toSorted((x, y) => x - y));
      expect(kinds.at(-1)).toBe(order.indexOf('credit'));
    }
  });
});

test('the walk goes over all kinds of charts, answers and cautions', () => {
  const offered = new Set(all.flatMap((one) => kitOf(one).offered.map(({ figure }) => figure.chart)));
  // No shot of these reports lies where the model carries farthest, and meetings are drawn on the page of a pair.
  const elsewhere = ['launch-and-spin', 'meetings'];
  const expected = Object.keys(charts).filter((chart) => !elsewhere.includes(chart));
  expect([...offered].sort()).toEqual(expected.sort());
  const kinds = new Set(
    all.flatMap((one) =>
      kitOf(one).offered.flatMap(({ figure }) => captionSentences(one, figure).long.map(({ kind }) => kind)),
    ),
  );
  for (const kind of ['answer', 'chart', 'caution', 'interest', 'who', 'stamp', 'credit', 'reading'] as const)
    expect(kinds).toContain(kind);
});
