import { describe, expect, test } from 'vitest';
import type { StatusId } from '../../src/findings/findings.ts';
import { answerOf } from '../../src/prose/answers.ts';
import { sayAnswer } from '../../src/prose/english/answers.ts';
import { pairAnswers } from '../../src/prose/pairAnswer.ts';
import { printingOf } from '../../src/prose/printSteps.ts';
import type { AnswerBlock, AnswerStatement, PairAnswer } from '../../src/prose/statement.ts';
import type { StraighterStatement } from '../../src/prose/straighter.ts';
import type { Telling } from '../../src/prose/telling.ts';
import { toCanonical } from '../../src/trade/units.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { reportOf } from '../findings/reportOf.ts';
import { golfersFinding } from '../../src/prose/english/charts/hitters.ts';
import { launchFinding } from '../../src/prose/english/charts/launch.ts';
import { leftOutFinding } from '../../src/prose/english/charts/withAndWithout.ts';
import { luckFinding } from '../../src/prose/english/charts/luck.ts';
import { meetingsFinding } from '../../src/prose/english/charts/meetings.ts';
import { orderFinding } from '../../src/prose/english/charts/order.ts';
import { sayAnswerFinding } from '../../src/prose/english/charts/apart.ts';
import { shotsFinding } from '../../src/prose/english/charts/shots.ts';
import { spreadFinding } from '../../src/prose/english/charts/spread.ts';
import { straighterFinding } from '../../src/prose/english/charts/landing.ts';
import { swingFinding } from '../../src/prose/english/charts/delivery.ts';
import { yardsFinding } from '../../src/prose/english/charts/yards.ts';

const { findings, telling } = reportOf({});
const [carry] = findings.metrics;
if (carry === undefined) throw new Error('no metric');
const [made] = pairAnswers(carry, findings.design);
if (made === undefined) throw new Error('no pair');

const yards = (value: number): number => toCanonical(value, 'yd');

const answer = (status: StatusId, rest: Partial<PairAnswer> = {}): PairAnswer => ({
  ...made,
  status,
  ahead: 'alder',
  behind: 'cedar',
  by: 'more',
  difference: { estimate: yards(12), ci: [yards(7), yards(17)] },
  because: null,
  firstLook: false,
  withinMatters: false,
  spellsAlike: false,
  ...rest,
});

const block = (...statements: readonly AnswerStatement[]): AnswerBlock => ({
  kind: 'answer',
  about: { of: 'metric', metric: 'carry' },
  calculatedBy: null,
  statements,
});

const one = (status: StatusId, rest: Partial<PairAnswer> = {}): AnswerStatement => ({
  kind: 'one',
  answer: answer(status, rest),
});

const across = { estimate: yards(3), ci: [yards(-3), yards(10)] as const };

describe('the finding of the lead chart', () => {
  test.each<readonly [string, AnswerStatement, string]>([
    ['clear', one('clear'), 'Alder carried farther than Cedar, likely by 7 to 17 yards'],
    [
      'clear on a first look',
      one('clear', { firstLook: true }),
      'On a first look Alder carried farther than Cedar, likely by 7 to 17 yards',
    ],
    [
      'size uncertain',
      one('size-uncertain', { difference: { estimate: yards(8), ci: [yards(2), yards(14)] } }),
      'Alder carried farther than Cedar, likely by 2 to 14 yards',
    ],
    [
      'almost nothing',
      one('size-uncertain', { difference: { estimate: yards(5), ci: [yards(0.1), yards(10)] } }),
      'Alder carried farther than Cedar, likely by up to 10 yards',
    ],
    [
      'small',
      one('small', { difference: { estimate: yards(2), ci: [yards(1), yards(3)] } }),
      'Alder carried about 2 yards farther than Cedar, too little to matter',
    ],
    [
      'level',
      one('level', { difference: across }),
      'Alder and Cedar carried alike: any difference is likely under 5 yards',
    ],
    [
      'cannot tell',
      one('cannot-tell', { difference: across }),
      'We cannot tell whether Alder or Cedar carried farther: anything from 10 yards for Alder to 3 for Cedar',
    ],
    [
      'none seen, credit open',
      one('cannot-tell', { difference: across, because: 'order-unknown' }),
      'We saw no difference in carry between Alder and Cedar, though an order that is not known could hide one',
    ],
    [
      'cause unclear',
      one('cause-unclear', { because: 'order-unknown' }),
      'Alder went farther than Cedar, but the order of the shots is not known, so we cannot say that it was the head',
    ],
    [
      'not confirmed',
      one('not-confirmed', { unconfirmed: { by: 2, of: 3 } }),
      'Alder may carry farther than Cedar; two of our three checks do not confirm it',
    ],
    [
      'not judged',
      one('not-judged', {
        difference: null,
        notJudged: { because: 'too-few-shots', contenders: ['cedar'], fewest: 4 },
      }),
      'We did not judge Cedar: four shots are too few',
    ],
  ])('%s', (_, statement, words) => {
    expect(sayAnswerFinding(block(statement), telling)).toBe(words);
  });

  test('one ahead of both others is told once', () => {
    const both: AnswerStatement = {
      kind: 'ahead-of',
      about: { of: 'metric', metric: 'carry' },
      shared: 'ahead',
      all: true,
      answers: [answer('clear'), answer('clear', { behind: 'birch' })],
    };
    const alike = one('cannot-tell', { ahead: 'birch', behind: 'cedar', difference: across });
    expect(sayAnswerFinding(block(both, alike), telling)).toBe(
      'Alder carried farther than both others, likely by 7 to 17 yards',
    );
  });

  test('whoever may be as good as the one ahead stands in the same breath', () => {
    const equal = one('cannot-tell', { ahead: 'alder', behind: 'birch', difference: across });
    expect(sayAnswerFinding(block(one('clear'), equal), telling)).toBe(
      'Alder carried farther than Cedar, likely by 7 to 17 yards; ' +
        'we cannot tell whether Alder or Birch carried farther: anything from 10 yards for Alder to 3 for Birch',
    );
    const place: AnswerStatement = {
      kind: 'cannot-place',
      about: { of: 'metric', metric: 'carry' },
      id: 'birch',
      others: ['alder', 'cedar'],
      all: true,
      withinMatters: false,
      matters: yards(5),
    };
    expect(sayAnswerFinding(block(one('clear'), place), telling)).toContain(
      '; we cannot tell whether Birch carried farther or less far than either',
    );
  });

  test('who calculated the carry is said where the answer says it', () => {
    expect(sayAnswerFinding({ ...block(one('clear')), calculatedBy: 'monitor' }, telling)).toBe(
      "By the monitor's own calculation, Alder carried farther than Cedar, likely by 7 to 17 yards",
    );
  });

  test('a leader among four is the one that the answer names', () => {
    const lead: AnswerStatement = {
      kind: 'leaders',
      about: { of: 'metric', metric: 'carry' },
      by: 'more',
      leaders: ['alder', 'birch'],
      unplaced: ['cedar'],
      close: null,
      firstLook: false,
    };
    expect(sayAnswerFinding(block(lead), telling)).toBe(
      'Alder and Birch carried farthest; we cannot tell them apart, nor Cedar from any other',
    );
  });
});

describe('the demo reports', () => {
  const { reports } = loadSite('content');

  test('every drawn chart states a finding: one clause, without a full stop, in none of the words of its question', () => {
    for (const { figures, source } of reports)
      for (const figure of figures) {
        if (figure.kind !== 'drawn') continue;
        expect(figure.finding, `${source.slug} ${figure.id}`).toMatch(/^[\p{Lu}\d].{9,}[^.?!\s]$/u);
        expect(figure.finding).not.toBe(figure.question);
      }
  });

  test('of several golfers the lead chart says so before anything else, as the answer does', () => {
    for (const { findings: own, telling: told, figures } of reports) {
      const lead = figures.find(({ id }) => id === 'apart');
      if (lead?.kind !== 'drawn') continue;
      const several = own.design.hitters > 1;
      expect(/^(For golfers like these|On average over these \w+ golfers), /.test(lead.finding)).toBe(
        several,
      );
      const [primary] = own.metrics.filter(({ role }) => role === 'primary');
      if (primary === undefined) throw new Error('no main measure');
      const [first = ''] = sayAnswer(answerOf(primary, own), told);
      if (several) expect(first.slice(0, 12)).toBe(lead.finding.slice(0, 12));
    }
  });
});

test('all the shots: how many, of how many golfers, and how many do not count', () => {
  const several: Telling = {
    ...telling,
    findings: { ...findings, design: { ...findings.design, hitters: 8 } },
  };
  expect(shotsFinding({ drawn: 36, recorded: 36, leftOut: 0 }, 'carry', telling)).toBe('All 36 shots');
  expect(shotsFinding({ drawn: 144, recorded: 144, leftOut: 0 }, 'carry', several)).toBe(
    'All 144 shots of eight golfers',
  );
  expect(shotsFinding({ drawn: 34, recorded: 36, leftOut: 2 }, 'carry', telling)).toBe(
    '34 of 36 shots, two of them left out of the averages',
  );
  const main = findings.metrics.find(({ role }) => role === 'primary');
  const both = { ...findings, metrics: [...findings.metrics, ...(main === undefined ? [] : [main])] };
  expect(shotsFinding({ drawn: 36, recorded: 36, leftOut: 0 }, 'smash', { ...telling, findings: both })).toBe(
    'All 36 shots: smash factor',
  );
});

describe('where they landed', () => {
  const { explored } = findings;
  const straighter = (rest: Partial<StraighterStatement>): StraighterStatement => ({
    kind: 'straighter',
    notJudged: null,
    clear: [],
    explored,
    ...rest,
  });

  test.each<readonly [StraighterStatement, string]>([
    [straighter({}), 'Accuracy: no clear difference'],
    [straighter({ notJudged: 'no-side' }), 'Accuracy was not measured'],
    [straighter({ notJudged: 'too-few-shots' }), 'Accuracy was not judged'],
    [straighter({ notJudged: 'aim-off-line' }), 'Accuracy was not judged'],
  ])('%#', (statement, words) => {
    expect(straighterFinding(statement, telling)).toBe(words);
  });

  test('who finished nearer the line, and that nobody set out to test it', () => {
    const { reports } = loadSite('content');
    const report = reports.find(({ source }) => source.slug === 'inch-off-the-driver');
    const landing = report?.figures.find(({ id }) => id === 'landing');
    expect(landing?.kind === 'drawn' && landing.finding).toBe(
      'Short finished nearer the line than Long, likely by up to 16 yards, seen but not tested for',
    );
  });
});

test.each([
  [
    { kind: 'swing-differed', measures: ['club_speed', 'club_path'] },
    'Club speed and club path differed by enough to matter',
  ],
  [{ kind: 'swing-same', measures: ['club_speed'] }, 'The swing was the same, as far as we could measure it'],
  [{ kind: 'swing-cannot-tell' }, 'We cannot tell whether the swing was the same'],
  [{ kind: 'swing-too-few' }, 'There are too few readings of the swing to compare it'],
] as const)('the swing: %j', (summary, words) => {
  expect(swingFinding(summary)).toBe(words);
});

test('shots in order: a trend is said of the one whose it is', () => {
  expect(orderFinding('carry', [], telling)).toBe('Too few shots to see a trend in carry');
  expect(orderFinding('carry', [{ id: 'alder', went: 'unclear' }], telling)).toBe(
    'No clear trend in carry with any head',
  );
  expect(
    orderFinding(
      'carry',
      [
        { id: 'alder', went: 'fell' },
        { id: 'birch', went: 'unclear' },
        { id: 'cedar', went: 'rose' },
      ],
      telling,
    ),
  ).toBe('Carry rose with Cedar and fell with Alder during the test');
});

test('where the yards come from: the largest part that is sure, or none', () => {
  const printing = printingOf(carry, telling);
  const part = (told: boolean, value: number) =>
    ({ id: 'ball-speed', told, value: yards(value), range: [0, yards(20)] }) as const;
  const said = (parts: Parameters<typeof yardsFinding>[0]['parts'], calculated = false) =>
    yardsFinding({ parts, gap: yards(12), ahead: 'Alder', behind: 'Cedar' }, calculated, printing, telling);
  expect(said([part(true, 8), part(false, 3)])).toBe('By the model about 8 of 12 yards come from ball speed');
  expect(said([part(false, 8)], true)).toBe(
    'By a model, of a carry that was calculated too, no part of the difference can be named',
  );
  expect(said([part(true, 20)])).toBe(
    'By the model ball speed alone would put Alder about 20 yards ahead of Cedar',
  );
  expect(said([part(true, -6)])).toBe(
    'By the model ball speed alone would put Cedar about 6 yards ahead of Alder',
  );
});

test.each([
  [0, 36, 'None of 36 shots lies where the model carries farthest'],
  [1, 36, 'One of 36 shots lies where the model carries farthest'],
  [12, 36, '12 of 36 shots lie where the model carries farthest'],
])('launch and spin: %i of %i', (inside, shots, words) => {
  expect(launchFinding(inside, shots)).toBe(words);
});

describe('golfer by golfer', () => {
  const count = { ahead: 7, of: 8 };
  const start = 'On average Alder carried farther than Cedar for seven of eight golfers';
  test.each<readonly [StatusId, string]>([
    ['clear', start],
    ['size-uncertain', start],
    ['small', `${start}, over all of them by too little to matter`],
    ['level', `${start}; over all of them there is no difference that matters`],
    ['cannot-tell', `${start}; over all of them we cannot tell`],
    ['cause-unclear', `${start}, but we cannot say that it was the head`],
    ['not-confirmed', `${start}, but our checks do not confirm it`],
    ['not-judged', `${start}; over all of them we did not judge it`],
  ])('%s', (status, words) => {
    expect(golfersFinding(count, answer(status), telling)).toBe(words);
  });

  test('all of them, and both', () => {
    expect(golfersFinding({ ahead: 8, of: 8 }, answer('clear'), telling)).toContain('for all eight golfers');
    expect(golfersFinding({ ahead: 2, of: 2 }, answer('clear'), telling)).toContain('for both golfers');
  });
});

test('report by report', () => {
  expect(meetingsFinding({ ahead: 3, of: 4 }, ['Alder', 'Cedar'], 'carry', 'more')).toBe(
    'On average Alder carried farther than Cedar in three of four reports',
  );
  expect(meetingsFinding({ ahead: 2, of: 2 }, ['Alder', 'Cedar'], 'spin_rate', 'less')).toBe(
    'On average Alder spun less than Cedar in both reports',
  );
});

test('chance alone: the pair and its answer beside what chance makes', () => {
  expect(
    luckFinding(
      { seen: '12', upTo: '4' },
      answer('clear', { firstLook: true }),
      printingOf(carry, telling),
      telling,
    ),
  ).toBe(
    'Alder and Cedar came 12 yards apart in carry (clear difference, first look); chance alone passes 4 in one test of 20',
  );
  expect(
    luckFinding({ seen: '5', upTo: '4' }, answer('cannot-tell'), printingOf(carry, telling), telling),
  ).toContain('(cannot tell)');
});

test('consistency', () => {
  const spread = (differing: Parameters<typeof spreadFinding>[0][number]['differing']) =>
    ({ kind: 'spread', metric: 'carry', differing, explored: findings.explored }) as const;
  expect(spreadFinding([spread(null)], telling)).toBe('Consistency was not judged');
  expect(spreadFinding([spread([]), spread(null)], telling)).toBe('No clear difference in consistency');
  expect(spreadFinding([spread([{ steadier: 'alder', other: 'cedar' }])], telling)).toBe(
    'Alder was more consistent than Cedar in carry, seen but not tested for',
  );
});

test('with and without', () => {
  expect(leftOutFinding(carry, [])).toBe('With every shot counted the answer in carry stays the same');
  expect(leftOutFinding(carry, ['Alder and Cedar'])).toBe(
    'With every shot counted the answer in carry changes for Alder and Cedar',
  );
});
