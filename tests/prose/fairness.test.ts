import { describe, expect, test } from 'vitest';
import type { FairnessId } from '../../src/findings/findings.ts';
import { fairnessLines } from '../../src/prose/fairnessSentence.ts';
import { around, csvOf, reportOf, threeHeads } from '../findings/reportOf.ts';

type Invented = Parameters<typeof reportOf>[0];

const lineOf = (id: FairnessId, invented: Invented): string => {
  const line = fairnessLines(reportOf(invented)).find((own) => own.id === id);
  return line === undefined ? 'absent' : `${line.title}: ${line.state}. ${line.found}`;
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

describe('how fair a test was, in words', () => {
  const table: readonly (readonly [FairnessId, Invented, string])[] = [
    ['one-thing-varied', {}, 'Only the head changed: not recorded. Nothing else is written down.'],
    [
      'one-thing-varied',
      front({ held: '{shaft: S, length: 45 in}' }),
      'Only the head changed: met. Two other items are written down, and the same for all.',
    ],
    [
      'one-thing-varied',
      front({ held: '{shaft: S}' }),
      'Only the head changed: met. One other item is written down, and the same for all.',
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
      'Only the head changed: not met. Also different: measured loft (Alder: 9.5°; Birch: 10.2°); condition is written down for Cedar only.',
    ],
    ['order', {}, 'Hit in a fair order: met. They were hit in turn, in the same order every time.'],
    [
      'order',
      { order: 'one after another' },
      'Hit in a fair order: not met. They were hit one after another.',
    ],
    [
      'order',
      front({ rows: 'not-in-hit-order' }),
      'Hit in a fair order: not recorded. The order of the shots is not known.',
    ],
    [
      'order',
      { csv: inVisits(['alder', 'birch', 'cedar', 'birch', 'alder', 'cedar'], 6) },
      'Hit in a fair order: not met. They were hit in turns of a few shots, too few of them.',
    ],
    [
      'order',
      {
        csv: inVisits(
          ['alder', 'birch', 'alder', 'birch', 'alder', 'cedar', 'birch', 'alder', 'cedar', 'birch', 'cedar'],
          3,
        ),
      },
      'Hit in a fair order: not met. They were hit in turns of a few shots, some mostly later than others.',
    ],
    ['warm-up', {}, 'Warmed up first: not recorded. Nothing is said of a warm-up.'],
    [
      'warm-up',
      front({ plan: '{warm_up: ten balls with another club}' }),
      'Warmed up first: met. The shop states: ten balls with another club.',
    ],
    [
      'enough-shots',
      {},
      'Enough shots: not met. In carry a test like this finds a gap of 6 yards four times in five; 5 yards would matter.',
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
      'Enough shots: not met. In carry a test like this finds a gap of 7 yards four times in five; 5 yards would matter. ' +
        'In ball speed a test like this finds a gap of 7 mph four times in five; 2 mph would matter.',
    ],
    ['plan-first', {}, 'Planned before hitting: not recorded. No day is given for a plan.'],
    [
      'plan-first',
      front({ plan: '{date: 2026-04-01}' }),
      'Planned before hitting: not recorded. The shop states that it was, on 1 April 2026; no record shows it.',
    ],
    [
      'plan-first',
      front({ plan: '{date: 2026-04-11}' }),
      'Planned before hitting: not met. No, the plan is of 11 April 2026, not before the session.',
    ],
    ['exclusion-rule', {}, 'Rule for leaving out shots made first: not recorded. No rule is written down.'],
    [
      'exclusion-rule',
      front({ plan: '{date: 2026-04-01, exclusion_rule: misreads only}' }),
      'Rule for leaving out shots made first: met. The shop states that it was made first: misreads only.',
    ],
    [
      'exclusion-rule',
      front({ plan: '{exclusion_rule: misreads only}' }),
      'Rule for leaving out shots made first: not recorded. The rule is "misreads only", and no day is given for it.',
    ],
    [
      'exclusion-rule',
      front({ plan: '{date: 2026-04-12, exclusion_rule: misreads only}' }),
      'Rule for leaving out shots made first: not met. The rule is not older than the session.',
    ],
    ['exclusions-even', {}, 'As many left out of each head: met. No shot was left out.'],
    [
      'exclusions-even',
      front({
        exclusions:
          '[{contender: alder, shot: 1, rule: misread, reason: no spin}, {contender: alder, shot: 4, rule: misread, reason: no spin}]',
      }),
      'As many left out of each head: not met. Left out: two of Alder, none of Birch and none of Cedar.',
    ],
    ['same-ball', {}, 'One kind of ball: not recorded. Nothing is said of the ball.'],
    [
      'same-ball',
      front({ conditions: '{ball: practice balls}' }),
      'One kind of ball: not recorded. A ball is described, and not whether the same kind was used for all.',
    ],
    [
      'same-ball',
      front({ held: '{ball: one new model}' }),
      'One kind of ball: met. The shop states that one kind of ball was used for all.',
    ],
    ['same-ball', front({ varied: 'ball' }), 'absent'],
    [
      'conditions',
      front({ conditions: '{place: indoors, surface: mat}' }),
      'Conditions written down: not recorded. Not given: temperature and altitude.',
    ],
    [
      'reading-measured',
      front({ conditions: '{monitor: {columns: {carry: modelled}}}' }),
      'Measured, not calculated: not met. Carry was calculated, not seen.',
    ],
    [
      'reading-measured',
      {},
      'Measured, not calculated: not recorded. Nothing is said of how carry was read.',
    ],
    [
      'hitter-blind',
      front({ hitters: '{one: {role: customer, consent: yes, saw_numbers: yes}}' }),
      'Golfer did not see the numbers: not met. The golfer could see the numbers.',
    ],
    [
      'hitters',
      {},
      'Six golfers or more: not met. One golfer hit; from six on a test can speak of golfers like them.',
    ],
    [
      'interests',
      {},
      'Interests answered: not recorded. Who sold, lent and paid is answered; how the golfer is tied to the shop is not.',
    ],
    ['device-accuracy', {}, 'Monitor fine enough: not recorded. No accuracy is stated for what was judged.'],
    [
      'device-accuracy',
      front({ conditions: '{monitor: {stated_accuracy: {carry: 2 yd}}}' }),
      'Monitor fine enough: met. Carry is stated to be right to ±2 yards; 5 yards would matter.',
    ],
    [
      'device-accuracy',
      front({ conditions: '{monitor: {stated_accuracy: {carry: 6 yd}}}' }),
      'Monitor fine enough: not met. Carry is stated to be right to ±6 yards; 5 yards would matter. That is too near to the gap.',
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
      'Monitor fine enough: not met. Carry is stated to be right to ±6 yards; 5 yards would matter. That is too near to the gap. No accuracy is stated for ball speed.',
    ],
    ['shot-numbers', {}, 'No shot number missing: met. The numbers of the shots have no gap.'],
    [
      'shot-numbers',
      { csv: csvOf(threeHeads ?? {}).replace(/^birch,5,.*\n/m, '') },
      'No shot number missing: not met. Some numbers are missing from the count.',
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
      'As many left out of each head: not met. Left out: one of Alder, none of Birch and none of Cedar; the answer changes when they count.',
    );
  });
});
