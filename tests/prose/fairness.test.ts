import { describe, expect, test } from 'vitest';
import type { FairnessId } from '../../src/findings/findings.ts';
import {
  fairnessCountWords,
  fairnessFound,
  fairnessStateWords,
  fairnessTitle,
} from '../../src/prose/english/fairness.ts';
import { fairnessCount, fairnessOf, isRecordedInPart } from '../../src/prose/fairness.ts';
import { around, csvOf, reportOf, threeHeads } from '../findings/reportOf.ts';

type Invented = Parameters<typeof reportOf>[0];

const lineOf = (id: FairnessId, invented: Invented): string => {
  const report = reportOf(invented);
  const made = fairnessOf(report).find(({ fact }) => fact.check === id);
  if (made === undefined) return 'absent';
  const { telling } = report;
  return `${fairnessTitle(id, telling)}: ${fairnessStateWords[made.state]}. ${fairnessFound(made.fact, telling)}`;
};

const front = (answers: Readonly<Record<string, string>>): Invented => ({ front: answers });
/** Visits of some shots each, readings as they come. */
function inVisits(visits: readonly string[], shots: number): string {
  const rows = visits.flatMap((head, visit) =>
    Array.from({ length: shots }, (_, hit) => [
      head,
      visit * shots + hit + 1,
      (around(230)[(5 * visit + 7 * hit) % 12] ?? 0).toFixed(1),
    ]),
  );
  return [['Club', 'Shot', 'Carry (yd)'], ...rows, []].map((row) => row.join(',')).join('\n');
}

const built = (alder: string, birch: string, cedar: string): string =>
  `{alder: {label: Alder, supplied_by: us, sold_here: new, build: ${alder}}, birch: {label: Birch, supplied_by: us, sold_here: new, build: ${birch}}, ` +
  `cedar: {label: Cedar, supplied_by: us, sold_here: new, build: ${cedar}}}`;

test('how many checks came out in which way, first', () => {
  expect(fairnessCountWords(fairnessCount(fairnessOf(reportOf({}))))).toBe(
    'Fair-test checks: 3 yes, 2 no, 10 not recorded',
  );
  const stated = { yes: 6, stated: 2, no: 3, 'not-recorded': 0 };
  expect(fairnessCountWords(stated)).toBe('Fair-test checks: 6 yes; 2 stated, not verified; 3 no');
});

describe('how fair a test was, in words', () => {
  const table: readonly (readonly [FairnessId, Invented, string])[] = [
    ['one-thing-varied', {}, 'Only the head changed: not recorded. We wrote down nothing else about them.'],
    [
      'one-thing-varied',
      front({ held: '{shaft: S, length: 45 in}' }),
      'Only the head changed: stated, not verified. We wrote down two other things, and they were the same for all.',
    ],
    [
      'one-thing-varied',
      front({ held: '{shaft: S}' }),
      'Only the head changed: stated, not verified. We wrote down one other thing, and it was the same for all.',
    ],
    [
      'one-thing-varied',
      front({
        contenders: built(
          '{head: H1, loft_measured: 9.5°}',
          '{head: H2, loft_measured: 10.2°}',
          '{head: H3, condition: used}',
        ),
      }),
      'Only the head changed: no. The measured loft (Alder 9.5°; Birch 10.2°) differed as well. We wrote down the condition for Cedar only.',
    ],
    [
      'order',
      {},
      'Hit in a fair order: yes. The heads were hit in rounds, one of each, in the same order every time.',
    ],
    [
      'order',
      { order: 'one after another' },
      'Hit in a fair order: no. The heads were hit one after another.',
    ],
    [
      'order',
      front({ rows: 'not-in-hit-order' }),
      'Hit in a fair order: not recorded. We do not know the order of the shots.',
    ],
    [
      'order',
      { csv: inVisits(['alder', 'birch', 'cedar', 'birch', 'alder', 'cedar'], 6) },
      'Hit in a fair order: no. The heads were hit in spells of a few shots, going back and forth, too few spells for each.',
    ],
    [
      'order',
      {
        csv: inVisits(
          ['alder', 'birch', 'alder', 'birch', 'alder', 'cedar', 'birch', 'alder', 'cedar', 'birch', 'cedar'],
          3,
        ),
      },
      'Hit in a fair order: no. The heads were hit in spells of a few shots, going back and forth, some mostly later than others.',
    ],
    ['warm-up', {}, 'Warmed up first: not recorded. We wrote down nothing about a warm-up.'],
    [
      'warm-up',
      front({ plan: '{warm_up: ten balls with another club}' }),
      'Warmed up first: stated, not verified. We say: "ten balls with another club".',
    ],
    [
      'enough-shots',
      {},
      'Enough shots: no. In carry, a test of this size would find a true difference of 7 yards four times in five; 5 yards would matter.',
    ],
    [
      'enough-shots',
      {
        shots: {
          ...threeHeads,
          'Ball Speed (mph)': { alder: around(150), birch: around(150), cedar: around(150) },
        },
        front: { primary: '[carry, ball_speed]' },
      },
      'Enough shots: no. In carry, a test of this size would find a true difference of 8 yards four times in five; 5 yards would matter. ' +
        'In ball speed, a test of this size would find a true difference of 8 mph four times in five; 2 mph would matter.',
    ],
    ['plan-first', {}, 'Planned before hitting: not recorded. We give no date for a plan.'],
    [
      'plan-first',
      front({ plan: '{date: 2026-04-01}' }),
      'Planned before hitting: stated, not verified. The shop says 1 April 2026; no dated record exists.',
    ],
    [
      'plan-first',
      front({ plan: '{date: 2026-04-11}' }),
      'Planned before hitting: no. The plan is dated 11 April 2026, not before the session.',
    ],
    ['exclusion-rule', {}, 'Rule for leaving out shots made first: not recorded. We wrote down no rule.'],
    [
      'exclusion-rule',
      front({ plan: '{date: 2026-04-01, exclusion_rule: misreads only}' }),
      'Rule for leaving out shots made first: stated, not verified. The shop says that its rule came first: "misreads only".',
    ],
    [
      'exclusion-rule',
      front({ plan: '{exclusion_rule: misreads only}' }),
      'Rule for leaving out shots made first: not recorded. The rule is "misreads only", and we give no date for it.',
    ],
    [
      'exclusion-rule',
      front({ plan: '{date: 2026-04-12, exclusion_rule: misreads only}' }),
      'Rule for leaving out shots made first: no. The rule is no older than the session.',
    ],
    ['exclusions-even', {}, 'Left out evenly: yes. We left none out.'],
    [
      'exclusions-even',
      front({
        exclusions:
          '[{contender: alder, shot: 1, rule: misread, reason: no spin}, {contender: alder, shot: 4, rule: misread, reason: no spin}]',
      }),
      'Left out evenly: no. We left out two of Alder, none of Birch and none of Cedar.',
    ],
    ['same-ball', {}, 'One kind of ball: not recorded. We wrote down nothing about the ball.'],
    [
      'same-ball',
      front({ conditions: '{ball: practice balls}' }),
      'One kind of ball: not recorded. We describe a ball, and do not say whether all were hit with that kind.',
    ],
    [
      'same-ball',
      front({ held: '{ball: one new model}' }),
      'One kind of ball: stated, not verified. The shop says that one kind of ball was used for all.',
    ],
    ['same-ball', front({ varied: 'ball' }), 'absent'],
    [
      'conditions',
      front({ conditions: '{place: indoors, surface: mat}' }),
      'Conditions written down: not recorded. We did not write down temperature or altitude.',
    ],
    [
      'reading-measured',
      front({ conditions: '{monitor: {columns: {carry: modelled}}}' }),
      'Measured, not calculated: no. Carry was calculated, not measured.',
    ],
    [
      'reading-measured',
      {},
      'Measured, not calculated: not recorded. Nobody wrote down whether carry was measured.',
    ],
    [
      'hitter-blind',
      front({ hitters: '{one: {role: customer, consent: yes, saw_numbers: yes}}' }),
      'Golfer did not see the numbers: no. The golfer could see the numbers.',
    ],
    [
      'hitters',
      {},
      'Six golfers or more: no. One golfer hit. It takes six to say anything about golfers like them.',
    ],
    [
      'interests',
      {},
      'Interests answered: not recorded. We answer who sells, lent and paid, but not how the golfer is linked to the shop.',
    ],
    [
      'device-accuracy',
      {},
      'Monitor accurate enough: not recorded. No accuracy is stated for what we judged.',
    ],
    [
      'device-accuracy',
      front({ conditions: '{monitor: {stated_accuracy: {carry: 2 yd}}}' }),
      'Monitor accurate enough: stated, not verified. Carry is stated to be accurate to ±2 yards; 5 yards would matter.',
    ],
    [
      'device-accuracy',
      front({ conditions: '{monitor: {stated_accuracy: {carry: 6 yd}}}' }),
      'Monitor accurate enough: no. Carry is stated to be accurate to ±6 yards; 5 yards would matter. That is too close to the difference we found.',
    ],
    [
      'device-accuracy',
      {
        shots: {
          ...threeHeads,
          'Ball Speed (mph)': { alder: around(150), birch: around(150), cedar: around(150) },
        },
        front: {
          primary: '[carry, ball_speed]',
          conditions: '{monitor: {stated_accuracy: {carry: 6 yd}}}',
        },
      },
      'Monitor accurate enough: no. Carry is stated to be accurate to ±6 yards; 5 yards would matter. That is too close to the difference we found. No accuracy is stated for ball speed.',
    ],
    ['shot-numbers', {}, 'No shots missing: yes. Shot numbers run without a break.'],
    [
      'shot-numbers',
      { csv: csvOf(threeHeads ?? {}).replace(/^birch,5,.*\n/m, '') },
      'No shots missing: no. Some shot numbers are missing.',
    ],
  ];

  test.each(table)('%s %#', (id, invented, words) => {
    expect(lineOf(id, invented)).toBe(words);
  });

  test('as many left out, and still not even-handed, as the answer changes', () => {
    const shots = {
      'Carry (yd)': {
        alder: [...around(236, 0.5).slice(0, 11), 180],
        birch: around(230, 0.5),
        cedar: around(230, 0.5),
      },
    };
    const exclusions = '[{contender: alder, shot: 34, rule: misread, reason: no spin}]';
    expect(lineOf('exclusions-even', { shots, front: { exclusions } })).toBe(
      'Left out evenly: no. We left out one of Alder, none of Birch and none of Cedar; an answer changes when they are counted.',
    );
  });
});

describe('a check of which something is recorded', () => {
  const inPart = (id: FairnessId, invented: Invented): boolean => {
    const made = fairnessOf(reportOf(invented)).find(({ fact }) => fact.check === id);
    return made !== undefined && isRecordedInPart(made.fact);
  };

  test.each([
    ['interests', {}, true],
    ['conditions', {}, false],
    ['conditions', front({ conditions: '{place: indoors}' }), true],
    ['conditions', front({ conditions: '{wind: none}' }), true],
    ['one-thing-varied', {}, false],
    ['one-thing-varied', front({ held: '{shaft: S}' }), true],
    ['same-ball', {}, false],
    ['same-ball', front({ conditions: '{ball: {model: two-piece}}' }), true],
    ['device-accuracy', {}, false],
    ['warm-up', {}, false],
  ] as const)('%s %j: %s', (id, invented, says) => {
    expect(inPart(id, invented)).toBe(says);
  });
});
