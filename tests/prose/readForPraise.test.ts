import { parse } from 'yaml';
import { expect, test } from 'vitest';
import { everyAnswer } from '../everyAnswer.ts';
import { csvOf, madeReport } from '../findings/reportOf.ts';

/** Answers in words in which praise is let stand, each with the reason. */
const letStand: Readonly<Record<string, string>> = {
  'contenders.<id>.supplied_by.by': 'names somebody',
  'interests.paid_by.by': 'as above',
  'interests.paid_by.share': 'an amount',
  'plan.order': 'what was decided, printed among the details',
  'plan.seed': 'as above',
  'plan.exclusion_rule': 'as above',
  'plan.stopping_rule': 'as above',
  'plan.expectation': 'what was expected is no finding',
  'plan.warm_up': 'as above',
  'hitters.<id>.role': 'says who hit, not what was hit',
  'hitters.<id>.handicap_band': 'as above',
  'hitters.<id>.link_to_shop': 'as above',
  'hitters.<id>.usual_club': 'not among what is compared',
  'hitters.<id>.expectation': 'what was expected is no finding',
  'conditions.wind': 'a reading',
  'conditions.humidity': 'a reading',
  'conditions.monitor.stated_accuracy': 'in the words of whoever states it',
  'conditions.monitor.accuracy_stated_by': 'names somebody',
  'conditions.monitor.normalised_to': 'a setting',
  'conditions.monitor.last_check': 'a time',
  'conditions.monitor.software': 'a version',
  'exclusions[] (a shot).rule': 'why a shot was left out',
  'exclusions[] (a shot).reason': 'as above',
  'exclusions[] (a limit).rule': 'as above',
  'exclusions[] (a limit).reason': 'as above',
  'corrections[].what': 'what was put right, as it stood and stands',
  'corrections[].was': 'as above',
  'corrections[].now': 'as above',
  'replies[].from': 'names somebody',
  'replies[].text': 'the words of others, printed whole',
};

test('praise in an answer is found, or a list says why it is let stand', () => {
  const { text, answers } = everyAnswer(() => 'the best and flawless');
  const front = Object.fromEntries(
    Object.entries(parse(text) as Readonly<Record<string, unknown>>).map(([key, value]) => [
      key,
      JSON.stringify(value),
    ]),
  );
  const carries = (first: number): readonly number[] =>
    Array.from({ length: 12 }, (_, index) => first + ((index * 5) % 11));
  const csv = csvOf({ 'Carry (yd)': { alder: carries(225), birch: carries(220) } });
  const { problems } = madeReport({ front, csv });
  const found = problems.flatMap(({ columnName, kind }) =>
    kind === 'absolute-word'
      ? (columnName ?? '').replace(/^(contenders|hitters)\.[^.]+/, '$1.<id>').replace(/\[\d+\]/, '[]')
      : [],
  );
  const isFound = (key: string): boolean => found.some((own) => own === key || key === `${own}.words`);
  const inWords = answers.flatMap((answer) => (answer.inWords ? answer.key : []));
  expect(inWords.length).toBeGreaterThan(40);
  expect(inWords.filter((key) => !isFound(key) && letStand[key] === undefined)).toEqual([]);
  expect(Object.keys(letStand).filter((key) => isFound(key) || !inWords.includes(key))).toEqual([]);
});
