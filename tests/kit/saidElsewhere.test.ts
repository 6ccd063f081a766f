import { describe, expect, test } from 'vitest';
import { answersAlone } from '../../src/kit/answersAlone.ts';
import { cardWords } from '../../src/kit/cardWords.ts';
import { emailParts } from '../../src/kit/emailParts.ts';
import { reportItems } from '../../src/kit/feed.ts';
import type { Report } from '../../src/kit/report.ts';
import {
  mostScriptWords,
  scriptSentences,
  spokenScripts,
  wordsOf,
  type ScriptLength,
} from '../../src/kit/spokenScript.ts';
import { answerOf, primaryMetrics } from '../../src/prose/answers.ts';
import { cautionsFor } from '../../src/prose/cautions.ts';
import { sayAnswer, sayAnswerAlone } from '../../src/prose/english/answers.ts';
import { toldInBrief } from '../../src/prose/english/answersInBrief.ts';
import { toldCounted } from '../../src/prose/english/countedAnswers.ts';
import { sayCaution } from '../../src/prose/english/cautions.ts';
import { findingInRow, findingOf } from '../../src/prose/english/findingInRow.ts';
import { interestOpening } from '../../src/prose/english/kit/interestInCaption.ts';
import { sayCautionInBrief, sayWhatDecides } from '../../src/prose/english/kit/cautionsInBrief.ts';
import { numberAloud, readAloud } from '../../src/prose/english/kit/spokenMarks.ts';
import { answerInABreath, pairsInABreath } from '../../src/prose/english/kit/spokenWords.ts';
import { toldAnswers } from '../../src/prose/english/toldAnswer.ts';
import { escapeXml } from '../../src/prose/escapeXml.ts';
import { interestSentences } from '../../src/prose/interest.ts';
import { pairAnswers } from '../../src/prose/pairAnswer.ts';
import type { MetricId } from '../../src/trade/metrics.ts';
import { sentence } from '../../src/prose/words.ts';
import { oddOnes, reports } from './content.ts';

const absolute = (path: string): string => `https://example.test${path}`;
const standing = [...reports, ...oddOnes].filter(({ source }) => source.front.status !== 'withdrawn');
const lengths: readonly ScriptLength[] = ['short', 'long'];

/** Every sentence that a statement of a measure's answer may be rendered as, where it is not a chart's. */
function answersOf({ findings, telling }: Report, id: MetricId): readonly string[] {
  const metric = findings.metrics.find((one) => one.id === id);
  if (metric === undefined) throw new Error(id);
  const block = answerOf(metric, findings);
  const forms = ['bare', 'unsized', 'sized'] as const;
  return [
    ...sayAnswer(block, telling),
    ...sayAnswerAlone(block, telling),
    ...forms.flatMap((form) => [
      answerInABreath(block, telling, form),
      sentence(toldInBrief(block, telling, form)),
    ]),
    sentence(toldCounted(pairAnswers(metric, findings.design))),
    pairsInABreath(id, pairAnswers(metric, findings.design)),
  ];
}

/** Every way in which a caution about a main measure is told. */
function cautionsIn({ findings, telling }: Report): readonly string[] {
  return primaryMetrics(findings)
    .flatMap((metric) => cautionsFor(metric, findings))
    .flatMap((caution) => [
      sayCaution(caution, telling),
      sayCautionInBrief(caution, telling),
      ...sayWhatDecides(caution),
    ]);
}

describe.each(standing.map((report) => [report.source.slug, report] as const))('%s', (_slug, report) => {
  const { findings, telling, source } = report;
  const page = interestSentences(source).join(' ');

  test('the page tells each main measure by its own statements', () => {
    for (const { metric, answer, cautions } of toldAnswers(telling)) {
      for (const text of answer) expect(answersOf(report, metric)).toContain(text);
      for (const text of cautions) expect(cautionsIn(report)).toContain(text);
    }
  });

  test('the mail tells answers and interest as the page does', () => {
    const mail = emailParts(report, absolute);
    const measures = primaryMetrics(findings);
    expect(mail.answers).toHaveLength(measures.length);
    for (const [index, { words, cautions }] of mail.answers.entries()) {
      const metric = measures[index];
      if (metric === undefined) throw new Error('an answer of no measure');
      const whole = sayAnswer(answerOf(metric, findings), telling).join(' ');
      expect([whole, findingOf(metric, telling), ...answersOf(report, metric.id)]).toContain(words);
      for (const caution of cautions) expect(cautionsIn(report)).toContain(caution);
    }
    expect(mail.interest.words).toBe(page);
  });

  test('the entry of the feed has every answer that stands alone, and the whole interest', () => {
    const [item] = reportItems([report], absolute);
    for (const answer of answersAlone(report)) expect(item?.description).toContain(escapeXml(answer));
    expect(item?.description).toContain(escapeXml(page));
  });

  test('the card of a shared link tells the main measure', () => {
    const [main] = primaryMetrics(findings);
    const { findings: told, caution, interest } = cardWords(report);
    if (main !== undefined)
      for (const finding of told)
        expect([...answersOf(report, main.id), findingInRow(telling)]).toContain(finding);
    if (caution !== null) expect(cautionsIn(report)).toContain(caution.whole);
    expect(interest.whole).toBe(`${interestOpening(source.shop?.name ?? 'The publisher')} ${page}`);
  });

  test.each(lengths)(
    'the %s script has the answers, the caution that decides, the interest and the stamp',
    (length) => {
      const told = scriptSentences(report)[length];
      for (const { kind, about, text } of told) {
        if (kind === 'answer') {
          expect(about.of).toBe('metric');
          if (about.of === 'metric') expect(answersOf(report, about.metric)).toContain(text);
        }
        if (kind === 'caution') expect(cautionsIn(report)).toContain(text);
      }
      const measured = told.flatMap(({ kind, about }) =>
        kind === 'answer' && about.of === 'metric' ? [about.metric] : [],
      );
      const wanted = primaryMetrics(findings).map(({ id }) => id);
      expect([...new Set(measured)]).toEqual(length === 'short' ? wanted.slice(0, 1) : wanted);
      expect(told.some(({ kind }) => kind === 'interest')).toBe(page !== '');
      expect(told[0]?.text.startsWith('These shots are made up.') ?? false).toBe(source.front.inventedData);
    },
  );

  test.each(lengths)('the %s script is spoken in its time, and has no mark or figure in it', (length) => {
    const spoken = spokenScripts(report)[length];
    expect(wordsOf(spoken), spoken).toBeLessThanOrEqual(mostScriptWords(length));
    expect(spoken).not.toMatch(/[\d%°()<>&;“”"=+]|\b(yd|mph|rpm)\b/);
  });
});

test.each([
  ['0.02', 'zero point zero two'],
  ['13', 'thirteen'],
  ['47', 'forty-seven'],
  ['172.4', 'one hundred and seventy-two point four'],
  ['7,500', 'seven thousand five hundred'],
  ['2,009', 'two thousand and nine'],
])('%s is read %s', (printed, aloud) => {
  expect(numberAloud(printed)).toBe(aloud);
});

test('marks are read, and what is said stays', () => {
  expect(readAloud('Long past Short, by 8 to 15 yd; likely (12 shots), 5% and 9°.')).toBe(
    'Long past Short, by eight to fifteen yards. Likely, twelve shots, five percent and nine degrees.',
  );
  expect(readAloud('faster by 2 m/s and 1,200 rpm, handicap 6-10')).toBe(
    'Faster by two metres a second and one thousand two hundred revolutions a minute, handicap six to ten',
  );
});
