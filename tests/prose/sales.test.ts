import { describe, expect, test } from 'vitest';
import { renderNarrative } from '../../src/prose/narrative.ts';
import { reportOf } from '../findings/reportOf.ts';
import { linted, salesReport } from './salesReport.ts';
import { honest, more, sales } from './salesSentences.ts';

const report = salesReport();
const kindsOf = (sentence: string): string[] => linted(sentence, report).map(({ kind }) => kind);
const silentOn = (sentences: readonly string[]): string[] =>
  sentences.filter((sentence) => kindsOf(sentence).length === 0);
const remarkedOn = (sentences: readonly string[]): string[] =>
  sentences.flatMap((sentence) => {
    const kinds = kindsOf(sentence);
    return kinds.length === 0 ? [] : [`${sentence} (${kinds.join(', ')})`];
  });

describe('sentences that sell', () => {
  test('are sixty-nine, beside sixty that do not', () => {
    expect(new Set([...sales.tuned, ...sales.heldOut]).size).toBe(69);
    expect(new Set([...honest.tuned, ...honest.heldOut]).size).toBe(60);
  });

  test('at least 60 of 69 are remarked on', () => {
    expect(silentOn([...sales.tuned, ...sales.heldOut]).length).toBeLessThanOrEqual(9);
  });

  test('of those held out nearly all are', () => {
    expect(silentOn(sales.heldOut).length).toBeLessThanOrEqual(2);
    expect(remarkedOn(honest.heldOut)).toEqual([
      'Higher loft usually means more spin, but loft was not what we tested. (comparative-unclaimed)',
    ]);
  });
});

test('at most 3 of 60 honest sentences are remarked on', () => {
  expect(remarkedOn([...honest.tuned, ...honest.heldOut]).length).toBeLessThanOrEqual(3);
});

describe('sentences in other words', () => {
  test('that sell are remarked on, nearly all of those that the linter was mended with', () => {
    expect(new Set([...more.sales, ...more.unseenSales]).size).toBe(100);
    expect(silentOn(more.sales)).toEqual(['Nothing else in the shop flies like Birch.']);
  });

  test('that nobody has thought of are found in about half of the cases', () => {
    expect(more.unseenSales.length - silentOn(more.unseenSales).length).toBeGreaterThanOrEqual(9);
  });

  test('that do not sell pass, but for a number that is recorded nowhere', () => {
    expect(new Set(more.honest).size).toBe(100);
    expect(remarkedOn(more.honest)).toEqual([
      'All four heads sat on the same shaft at 45 inches. (number-unmatched)',
    ]);
  });
});

describe('a number typed as an average or a difference', () => {
  const inWords = (sentence: string): string[] =>
    linted(sentence, report)
      .filter(({ kind }) => kind === 'number-differs')
      .map(({ line, column, expected, found, cure }) => `${line}:${column} ${expected} | ${found} | ${cure}`);
  const follows = 'it prints what the shots give, and follows them.';

  test.each([
    [
      'Alder averaged 250 yards.',
      `20:16 the average carry of Alder, 238 yards | "250 yards" in "Alder averaged 250 yards." | Write {{ mean carry alder }}: ${follows}`,
    ],
    [
      'Dogwood carried 10 yards past Cedar.',
      `20:17 the difference in carry between Dogwood and Cedar, about 14 yards, likely 8 to 20 | "10 yards" in "Dogwood carried 10 yards past Cedar." | Write {{ apart carry dogwood cedar }}: ${follows}`,
    ],
    [
      'Alder carried 250 yards on average.',
      `20:15 the average carry of Alder, 238 yards | "250 yards" in "Alder carried 250 yards on average." | Write {{ mean carry alder }}: ${follows}`,
    ],
    [
      'On average Dogwood has 10 yards on Cedar.',
      `20:24 the difference in carry between Dogwood and Cedar, about 14 yards, likely 8 to 20 | "10 yards" in "On average Dogwood has 10 yards on Cedar." | Write {{ apart carry dogwood cedar }}: ${follows}`,
    ],
    [
      'Smash factor with Birch was 1.52.',
      `20:29 the average smash factor of Birch, 1.48 | "1.52" in "Smash factor with Birch was 1.52." | Write {{ mean smash birch }}: ${follows}`,
    ],
    [
      'Alder averaged 237 yards and Cedar 237 yards.',
      `20:36 the average carry of Cedar, 226 yards | "237 yards" in "Alder averaged 237 yards and Cedar 237 yards." | Write {{ mean carry cedar }}: ${follows}`,
    ],
  ])('%s', (sentence, message) => {
    expect(inWords(sentence)).toEqual([message]);
  });

  test.each([
    'Alder averaged 237 yards and Cedar 225 yards.',
    'Alder and Cedar averaged 237 and 225 yards.',
    'Spin averaged 2,610 rpm with Alder and 2,650 rpm with Cedar.',
    'The longest with Alder was 245 yards.',
    'We had expected Alder to average 250 yards.',
    'The spread of Alder averaged 5 yards.',
    'Alder averaged 238 yards, as the page prints it.',
    'Alder averaged 216.7 m.',
    'Dogwood and Cedar were 14 yards apart on average.',
  ])('agrees or is something else: %s', (sentence) => {
    expect(inWords(sentence)).toEqual([]);
  });
});

describe('what is offered in the place of a sentence', () => {
  const offers = (sentence: string): string[] =>
    linted(sentence, report).flatMap(({ cure }) =>
      [...cure.matchAll(/\{\{ (.+?) \}\}/g)].map(([whole]) => whole),
    );

  test('is a reference that resolves and is not remarked on', () => {
    const offered = sales.tuned.flatMap(offers);
    expect(offered.length).toBeGreaterThan(20);
    const narrative = [...new Set(offered)].map((reference) => `${reference}.`).join('\n\n');
    expect(linted(narrative, report)).toEqual([]);
    const source = { file: 'report.md', text: narrative, firstLine: 1 };
    expect(renderNarrative(source, report.telling, {}, []).problems).toEqual([]);
  });

  test('is about what the sentence compares', () => {
    expect(linted('Dogwood is straighter.', report).map(({ cure }) => cure)).toEqual([
      'Ready to take in its place: "There is no clear difference in accuracy between Dogwood and Alder."',
    ]);
    expect(linted('Dogwood reduced spin.', report).map(({ cure }) => cure)).toEqual([
      expect.stringMatching(
        /^Ready to take in its place: \{\{ answer spin_rate dogwood \w+ \}\}, which prints "/,
      ),
    ]);
  });

  test('as a claim stands, and the sentence passes with it', () => {
    const said = 'Dogwood carried farther than Cedar.';
    const [problem] = linted(said, report);
    const entry = '- {say: "Dogwood carried farther than Cedar", metric: carry, more: dogwood, than: cedar}';
    expect(problem?.cure).toContain(`write under "claims": ${entry}.`);
    const claimed = salesReport({ claims: `\n  ${entry}` });
    expect(claimed.problems.filter(({ kind }) => kind.startsWith('claim'))).toEqual([]);
    expect(linted(said, claimed)).toEqual([]);
  });

  test('is about the first of several measures that the file has', () => {
    expect(linted('Dogwood flew higher than Cedar.', report).map(({ cure }) => cure)).toEqual([
      expect.stringContaining('{{ answer launch_angle dogwood cedar }}'),
    ]);
  });

  test('is nothing where no column tells of it', () => {
    expect(linted('Alder spins less than Birch.', reportOf({})).map(({ cure }) => cure)).toEqual([
      'Take it out: no column of the session file tells of it.',
    ]);
  });
});

test('a summary, which holds no references, is told the sentence itself', () => {
  const { problems } = salesReport({ summary: 'Buy Dogwood. Alder averaged 250 yards.' });
  expect(
    problems.flatMap(({ columnName, kind, cure }) => (columnName === 'summary' ? [`${kind}: ${cure}`] : [])),
  ).toEqual([
    'advice-given: Leave the choice to the reader. Ready to take in its place: "We cannot tell whether Dogwood or Alder carried farther: anything from 8 yards for Dogwood to 4 for Alder."',
    'number-differs: Write what the shots give, or leave the number out.',
  ]);
});
