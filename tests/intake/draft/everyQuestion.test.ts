import { expect, test } from 'vitest';
import { fieldBlocks } from '../../../src/intake/authored/fields.ts';
import { frontAnswers } from '../../../src/intake/authored/front.ts';
import { splitReport } from '../../../src/intake/authored/frontMatter.ts';
import { isBlock, type Tree } from '../../../src/intake/authored/tree.ts';
import { readYaml } from '../../../src/intake/authored/yamlText.ts';
import { draftReport } from '../../../src/intake/draft/draftReport.ts';
import { understand } from '../../../src/intake/draft/understood.ts';
import { readShotFile } from '../../../src/intake/shots/readShotFile.ts';

/** Keys of a report that a draft does not ask, each with the reason; also for what is in them. */
const notAsked: Readonly<Record<string, string>> = {
  published: 'comes with publication',
  summary: 'most reports have none',
  withdrawn: 'comes after publication',
  superseded_by: 'as above',
  aliases: 'as above',
  corrections: 'as above',
  replies: 'as above',
  invented_data: 'for tests and demonstrations',
  better: "the metric's own direction mostly holds",
  order_sheet: 'filled in by a plan, where there is one',
  modelled: 'the problem with a missing column offers it',
  seen: 'the problem that is answered offers it',
  'contenders.<id>.article': 'mostly right as it is',
  'plan.seed': 'filled in by a plan, where there is one',
  'columns.<metric>.positive': 'the problem with signs that cannot be told offers it',
  'columns.<metric>.class': 'asked of the monitor',
  'hitters.<id>.usual_club': 'more than most know',
  'hitters.<id>.expectation': 'as above',
  'conditions.ball.description': 'for those who answer the ball in one line',
  'conditions.monitor.software': 'more than most know',
  'interests.sentence': 'stands in shop.yaml',
};

interface Asked {
  readonly key: string;
  /** Whether the whole answer goes on one line, whatever is in it. */
  readonly onOneLine: boolean;
}

/** The keys of a draft, as the reference writes them. */
function keysIn(tree: Tree, above = ''): readonly Asked[] {
  if (!isBlock(tree)) return [];
  return Object.entries(tree).flatMap(([step, value]) => {
    const own = ['contenders', 'hitters'].includes(above) ? '<id>' : above === 'columns' ? '<metric>' : step;
    const key = above === '' ? own : `${above}.${own}`;
    return [{ key, onOneLine: !isBlock(value) }, ...keysIn(value, key)];
  });
}

const isWithin = (key: string, block: string): boolean =>
  key.startsWith(`${block}.`) || key.startsWith(`${block}[]`);

test('every question of a report is asked by a draft, or a list says why not', () => {
  const csv = 'Club,Shot,Hitter,Carry (yd)\nA head of a long name,1,J,230\nBirch,2,J,224\n';
  const file = readShotFile('shots.csv', new TextEncoder().encode(csv));
  const text = draftReport({
    slug: 'x',
    title: 'Two heads',
    dateInName: null,
    varied: 'head',
    session: ['shots.csv'],
    understood: understand([file]),
    usualGap: () => '5 yd',
    openColumns: [{ metric: 'ball_speed', heading: 'Ball', units: ['mph', 'm/s'] }],
    shop: null,
  });
  const { tree } = readYaml('report.md', splitReport('report.md', text).yaml ?? '');
  const asked = keysIn(tree);
  const keys = fieldBlocks(frontAnswers).flatMap(({ path, fields }) =>
    fields.map(({ key }) => (path === '' ? key : `${path}.${key}`)),
  );
  const isAsked = (key: string): boolean =>
    asked.some((one) => one.key === key || (one.onOneLine && isWithin(key, one.key)));
  const isExcused = (key: string): boolean =>
    Object.keys(notAsked).some((own) => own === key || isWithin(key, own));
  expect(asked.length).toBeGreaterThan(40);
  expect(keys.filter((key) => !isAsked(key) && !isExcused(key))).toEqual([]);
  expect(Object.keys(notAsked).filter((key) => isAsked(key) || !keys.includes(key))).toEqual([]);
});
