import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { fieldBlocks } from '../../src/intake/authored/fields.ts';
import { frontAnswers } from '../../src/intake/authored/front.ts';
import { shopAnswers } from '../../src/intake/authored/shop.ts';
import { around } from '../findings/reportOf.ts';
import { contentFolder } from './contentFolder.ts';
import { build, foldersFor } from './builds.ts';

/** Keys whose answer is not printed as typed, each with what it does. */
const used: Readonly<Record<string, string>> = {
  status: 'decides whether and how the report is published',
  superseded_by: 'links to the newer report, tried in tests/kit/manyReports.ts',
  withdrawn: 'printed in a report that is withdrawn, tried in tests/kit/manyReports.ts',
  'withdrawn.date': 'as above',
  'withdrawn.reason': 'as above',
  seen: 'keeps warnings quiet that were answered, as its keys say',
  'shop exports': 'chooses the pictures that are given away, tried in tests/kit/exportForms.test.ts',
  aliases: 'older addresses, tried in tests/commands/aliases.test.ts',
  invented_data: 'prints "Invented data"',
  primary: 'chooses the metrics that are judged',
  better: 'turns the answers',
  matters: 'judges the answers',
  rows: 'takes the order of hitting away',
  order_sheet: 'read and joined, tried in tests/commands/draftPlanned.test.ts',
  columns: 'reads the file',
  modelled: 'lets the flight model stand in',
  session: 'read',
  'contenders.<id>.article': 'chooses the article in sentences',
  'contenders.<id>.match': 'read in the file, never printed',
  'contenders.<id>.supplied_by.kind': 'chooses the sentence',
  'contenders.<id>.price.on': 'printed as a day in words',
  'plan.date': 'printed as a day in words',
  'plan.shots_per_contender': 'held against the file',
  'columns.<metric>.heading': 'finds the column',
  'columns.<metric>.unit': 'reads the column',
  'columns.<metric>.positive': 'reads the column',
  'columns.<metric>.class': 'says how the column was read, as the monitor’s answer does',
  'hitters.<id>.consent': 'printed as a day in words',
  'hitters.<id>.match': 'read in the file, never printed',
  'conditions.ball.same_for_all': 'printed as yes',
  'conditions.ball.description': 'stands in place of the model',
  'exclusions[] (a shot).contender': 'finds the shot',
  'exclusions[] (a shot).shot': 'finds the shot',
  'exclusions[] (a shot).hitter': 'finds the shot',
  'exclusions[] (a limit).metric': 'finds the shots',
  'interests.paid_by.kind': 'chooses the sentence',
  'interests.commission_or_gifts.kind': 'chooses the sentence',
  'interests.seen_before.kind': 'chooses the sentence',
  'claims[].metric': 'judges the claim',
  'claims[].more': 'judges the claim',
  'claims[].less': 'judges the claim',
  'claims[].tighter': 'judges the claim',
  'claims[].straighter': 'judges the claim',
  'claims[].than': 'judges the claim',
  'claims[].by_at_least': 'judges the claim',
  'claims[].allow_unproven': 'lets the claim stand, marked',
  'corrections[].date': 'printed as a day in words',
  'replies[].date': 'printed as a day in words',
  'seen[].warning': 'keeps a warning quiet, tried in tests/mistakes/seen.test.ts',
  'seen[].about': 'as above',
  'shop schema': 'checked',
  'shop brand.logo': 'a file that pages show, tried in tests/commands/brand.test.ts',
  'shop brand.logo_dark': 'as above',
  'shop brand.accent': 'colours links, tried in tests/commands/brand.test.ts',
  'shop brand.accent.light': 'as above',
  'shop brand.accent.dark': 'as above',
  'shop strict': 'decides whether the linter stops a build',
  'shop defaults.units': 'the units that a page shows first',
  'shop defaults.locale': 'how days are written, tried in tests/prose/disclosure.test.ts',
  'shop defaults.matters': 'judges the answers',
  'shop defaults.ball.description': 'stands in place of the model',
};

/** What stands in for an answer in words: letters of its own for each key. */
const token = (key: string): string => `zq${key.replace(/[^a-z]/g, '')}zq`;
const say = (...keys: readonly string[]): string =>
  keys.map((key) => `${key.split('.').at(-1) ?? ''}: ${token(key)}`).join(', ');

const shop = [
  'schema: 1',
  `name: ${token('shopname')}`,
  'address: https://zqaddresszq.example/',
  `contact: ${token('shopcontact')}`,
  `brand: {site: https://zqshopsitezq.example/, booking: https://zqshopbookingzq.example/visit, contact: ${token('shopreached')}}`,
  `interests: {supplied: ${token('shopsupplied')}, paid_by: {kind: shared, by: ${token('shopby')}, share: ${token('shopshare')}, words: ${token('shoppaid')}}, commission_or_gifts: {kind: some, words: ${token('shopgifts')}}, seen_before: {kind: others, words: ${token('shopseen')}}, sentence: ${token('shopsentence')}}`,
  `reuse: {terms: ${token('shopterms')}, credit: ${token('shopcredit')}, licence_charts: ${token('shopchartslicence')}, licence_data: ${token('shopdatalicence')}}`,
  'defaults:',
  `  {units: yards, locale: en-GB, place: ${token('shopplace')}, surface: ${token('shopsurface')}, tee: ${token('shoptee')}, altitude: 1234 m, matters: {carry: 5 yd}, ball: {model: ${token('shopmodel')}, state: ${token('shopstate')}, same_for_all: yes}, monitor: {kind: ${token('shopkind')}, stated_accuracy: ${token('shopaccuracy')}, accuracy_stated_by: ${token('shopstatedby')}, flight: ${token('shopflight')}, normalised_to: ${token('shopnormalised')}, last_check: ${token('shopcheck')}, software: ${token('shopsoftware')}, columns: {carry: estimated}}}`,
  'strict: no',
  '',
].join('\n');

const plain = (title: string, more: readonly string[]): string =>
  [
    '---',
    `title: ${title}`,
    'date: 2026-04-11',
    'status: published',
    'varied: head',
    'primary: carry',
    'session: shots.csv',
    ...more,
    '---',
    '',
  ].join('\n');

const small = plain('Small', [
  'question: Which one?',
  'contenders: {alder: {label: Alder, supplied_by: us, sold_here: new}, birch: {label: Birch, supplied_by: us, sold_here: new}}',
  'hitters: {one: {role: customer, consent: yes}}',
]);

const full = plain(token('title'), [
  'published: 2026-05-02',
  `summary: ${token('summary')}`,
  `question: ${token('question')}`,
  `held: {shaft: ${token('held')}}`,
  'contenders:',
  `  alder: {label: ${token('label')}, short: zqshortzq, article: no, build: {loft: ${token('build')}}, supplied_by: {kind: lent, ${say('by')}, ${say('words')}}, sold_here: both, price: {amount: 147.5, currency: ZQD, on: 2026-04-02}}`,
  '  birch: {label: Birch, supplied_by: us, sold_here: new}',
  'matters: {carry: 5 yd}',
  `plan: {date: 2026-04-09, ${say('plan.order', 'plan.seed', 'plan.exclusion_rule', 'plan.stopping_rule', 'plan.expectation', 'plan.warm_up')}}`,
  `hitters: {one: {${say('role', 'handicap_band', 'link_to_shop', 'usual_club', 'hitters.expectation')}, hand: left, saw_club: yes, saw_numbers: no, consent: yes}}`,
  `conditions: {${say('place', 'surface', 'tee', 'wind', 'humidity', 'target')}, temperature: 27.3 °C, altitude: 432 m, ball: {${say('model', 'state')}, same_for_all: yes}, monitor: {${say('monitor.kind', 'stated_accuracy', 'accuracy_stated_by', 'flight', 'normalised_to', 'last_check', 'software')}, columns: {carry: derived}}}`,
  'exclusions:',
  `  - {contender: alder, shot: 3, rule: ${token('shot.rule')}, reason: ${token('shot.reason')}}`,
  `  - {metric: carry, below: 10 yd, above: 232.5 yd, rule: ${token('limit.rule')}, reason: ${token('limit.reason')}}`,
  `interests: {${say('supplied', 'sentence')}, paid_by: {kind: shared, by: ${token('paid.by')}, share: ${token('paid.share')}, words: ${token('paid.words')}}, commission_or_gifts: {kind: some, words: ${token('gifts.words')}}, seen_before: {kind: others, words: ${token('seen.words')}}}`,
  `claims: [{say: ${token('say')}, metric: carry, more: birch, than: alder, allow_unproven: yes}]`,
  `corrections: [{date: 2026-05-03, ${say('what', 'was', 'now')}}]`,
  `replies: [{from: ${token('from')}, date: 2026-05-04, text: ${token('reply.text')}}]`,
]);

const allKeys = (name: string, schema: Parameters<typeof fieldBlocks>[0]): readonly string[] =>
  fieldBlocks(schema).flatMap(({ path, fields }) =>
    fields.map(({ key }) => `${name}${path === '' ? '' : `${path}.`}${key}`),
  );

/** The keys that are answered, as the reference writes their paths. */
function pathsIn(answers: unknown, path = ''): readonly string[] {
  if (Array.isArray(answers)) {
    return answers.flatMap((entry: unknown) => {
      const kind = path !== 'exclusions' ? '' : isLimit(entry) ? ' (a limit)' : ' (a shot)';
      return pathsIn(entry, `${path}[]${kind}`);
    });
  }
  if (typeof answers !== 'object' || answers === null) return [];
  return Object.entries(answers).flatMap(([key, value]: [string, unknown]) => {
    const step = ['contenders', 'hitters'].includes(path) ? '<id>' : key;
    const below = path === '' ? step : `${path}.${step}`;
    return [below, ...pathsIn(value, below)];
  });
}

const isLimit = (entry: unknown): boolean => typeof entry === 'object' && entry !== null && 'metric' in entry;

/** All text of a built site. */
function textOf(folder: string): string {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(?:html|json|csv|xml|txt)$/.test(entry.name))
    .map((entry) => readFileSync(join(entry.parentPath, entry.name), 'utf8'))
    .join('\n');
}

test('every answer is printed somewhere, or a list says what it does', { timeout: 120_000 }, () => {
  const rows = around(230).flatMap((carry, index) => [
    `alder,${index + 1},${carry}`,
    `birch,${index + 1},${carry - 5}`,
  ]);
  const csv = ['Club,Shot,Carry (yd)', ...rows, ''].join('\n');
  const content = contentFolder({
    'shop.yaml': shop,
    'reports/small/report.md': small,
    'reports/small/shots.csv': csv,
    'reports/full/report.md': full,
    'reports/full/shots.csv': csv,
  });
  const folders = foldersFor(content);
  const run = build(folders);
  expect(run.status, run.said).toBe(0);
  const printed = textOf(folders.out).toLowerCase();
  const typed = `${shop}\n${full}`;
  const tokens = [...new Set(typed.match(/zq[a-z]+zq/g))];
  expect(tokens.length).toBeGreaterThan(60);
  expect(tokens.filter((own) => !printed.includes(own))).toEqual([]);
  for (const value of ['27.3 °C', '432 m', '1234 m', '147.5', 'left', 'derived', 'estimated'])
    expect(printed, value).toContain(value.toLowerCase());

  // A key that no report here answers, and that no reason is given for, is one that nothing may read.
  const answered = new Set([
    ...pathsIn(parse(full.split('---')[1] ?? '')),
    ...pathsIn(parse(shop)).map((path) => `shop ${path}`),
  ]);
  const keys = [...allKeys('', frontAnswers), ...allKeys('shop ', shopAnswers)];
  expect(keys.filter((key) => used[key] === undefined && !answered.has(key))).toEqual([]);
  expect(Object.keys(used).filter((key) => !keys.includes(key))).toEqual([]);
});
