import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { fieldBlocks } from '../../src/intake/authored/fields.ts';
import { frontAnswers } from '../../src/intake/authored/front.ts';
import { shopAnswers } from '../../src/intake/authored/shop.ts';
import { everyAnswer, everyAnswerOfShop, type Answered } from '../everyAnswer.ts';
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
  'exclusions[] (a limit).below': 'leaves the shots out',
  'exclusions[] (a limit).above': 'leaves the shots out',
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

/** Where readers find the answers of a report: on its page, among its details, in `findings.json`. */
const places: Readonly<Record<string, readonly string[]>> = {
  'page, details, data': [
    'title',
    'held.shaft',
    'contenders.<id>.label',
    'contenders.<id>.short',
    'contenders.<id>.build.loft',
    'contenders.<id>.supplied_by.words',
    'contenders.<id>.price.amount',
    'contenders.<id>.price.currency',
    'hitters.<id>.role',
    'hitters.<id>.handicap_band',
    'conditions.place',
    'conditions.surface',
    'conditions.tee',
    'conditions.ball.model',
    'conditions.ball.state',
    'conditions.temperature',
    'conditions.altitude',
    'conditions.wind',
    'conditions.target',
    'conditions.monitor.kind',
    'conditions.monitor.stated_accuracy',
    'conditions.monitor.flight',
    'conditions.monitor.normalised_to',
    'conditions.monitor.last_check',
    'interests.paid_by.words',
    'interests.commission_or_gifts.words',
    'interests.seen_before.words',
    'shop name',
    'shop address',
    'shop interests.paid_by.words',
    'shop interests.commission_or_gifts.words',
    'shop interests.seen_before.words',
    'shop defaults.place',
    'shop defaults.surface',
    'shop defaults.tee',
    'shop defaults.altitude',
    'shop defaults.ball.model',
    'shop defaults.ball.state',
    'shop defaults.monitor.kind',
    'shop defaults.monitor.stated_accuracy',
    'shop defaults.monitor.flight',
    'shop defaults.monitor.normalised_to',
    'shop defaults.monitor.last_check',
  ],
  'page, details': [
    'exclusions[] (a shot).rule',
    'exclusions[] (a shot).reason',
    'exclusions[] (a limit).rule',
    'exclusions[] (a limit).reason',
    'shop contact',
    'shop brand.site',
    'shop brand.booking',
    'shop brand.contact',
    'shop reuse.licence_charts',
  ],
  'page, data': [
    'question',
    'interests.supplied',
    'interests.sentence',
    'claims[].say',
    'corrections[].what',
    'corrections[].was',
    'corrections[].now',
    'shop interests.supplied',
    'shop interests.sentence',
    'shop reuse.licence_data',
  ],
  'details, data': [
    'hitters.<id>.link_to_shop',
    'hitters.<id>.usual_club',
    'hitters.<id>.expectation',
    'conditions.humidity',
    'conditions.monitor.accuracy_stated_by',
    'conditions.monitor.software',
    'shop defaults.monitor.accuracy_stated_by',
    'shop defaults.monitor.software',
  ],
  page: [
    'contenders.<id>.supplied_by.by',
    'interests.paid_by.by',
    'interests.paid_by.share',
    'replies[].from',
    'replies[].text',
    'shop interests.paid_by.by',
    'shop interests.paid_by.share',
    'shop reuse.terms',
    'shop reuse.credit',
  ],
  details: [
    'summary',
    'plan.order',
    'plan.seed',
    'plan.exclusion_rule',
    'plan.stopping_rule',
    'plan.expectation',
    'plan.warm_up',
  ],
};

/** Answers whose words stand on any page, and days, which are printed in words. */
const anywhere = [
  'varied',
  'date',
  'published',
  'contenders.<id>.supplied_by',
  'contenders.<id>.sold_here',
  'hitters.<id>.hand',
  'hitters.<id>.saw_club',
  'hitters.<id>.saw_numbers',
  'conditions.monitor.columns.carry',
  'shop interests.commission_or_gifts.kind',
  'shop interests.paid_by.kind',
  'shop interests.seen_before.kind',
  'shop defaults.ball.same_for_all',
  'shop defaults.monitor.columns.carry',
];

/** What stands in for an answer in words: letters of its own for each key. */
const wordsFor = (key: string): string => `zq${key.replace(/[^a-z]/g, '')}zq`;

const full = everyAnswer(wordsFor);
const shop = everyAnswerOfShop((key) => wordsFor(`shop ${key}`));

/** A report that leaves to the shop whatever it can. */
const small = `title: Small
date: 2026-04-11
status: published
varied: head
primary: carry
session: shots.csv
question: Which one?
contenders: {alder: {label: Alder, supplied_by: us, sold_here: new}, birch: {label: Birch, supplied_by: us, sold_here: new}}
hitters: {one: {role: customer, consent: yes}}`;

const allKeys = (name: string, schema: Parameters<typeof fieldBlocks>[0]): readonly string[] =>
  fieldBlocks(schema).flatMap(({ path, fields }) =>
    fields.map(({ key }) => `${name}${path === '' ? '' : `${path}.`}${key}`),
  );

const ofShop = (answer: Answered): Answered => ({ ...answer, key: `shop ${answer.key}` });

/** Whether a list says what becomes of it, or of the block that it stands in. */
const isUsed = (key: string): boolean =>
  Object.keys(used).some((own) => own === key || key.startsWith(`${own}.`));

/** Where a report of the site prints what is answered, as far as its words tell. */
function placedIn(folder: string, slug: string, answers: readonly Answered[]) {
  const read = (file: string): string =>
    readFileSync(join(folder, 'reports', slug, file), 'utf8').toLowerCase();
  const texts = {
    page: read('index.html'),
    details: read('details/index.html'),
    data: read('findings.json'),
  };
  return answers.flatMap(({ key, value }) => {
    if (value === null || isUsed(key) || anywhere.includes(key)) return [];
    const where = Object.entries(texts).filter(([, text]) => text.includes(value.toLowerCase()));
    return [{ key, where: where.map(([name]) => name).join(', ') }];
  });
}

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
    'shop.yaml': shop.text,
    'reports/small/report.md': `---\n${small}\n---\n`,
    'reports/small/shots.csv': csv,
    'reports/full/report.md': `---\n${full.text}\n---\n`,
    'reports/full/shots.csv': csv,
  });
  const folders = foldersFor(content);
  const run = build(folders);
  expect(run.status, run.said).toBe(0);
  const printed = textOf(folders.out).toLowerCase();
  const all = [...full.answers, ...shop.answers.map(ofShop)];
  const inWords = all.filter((answer) => answer.inWords);
  expect(inWords.length).toBeGreaterThan(60);
  expect(inWords.filter(({ value }) => !printed.includes(value ?? ''))).toEqual([]);

  // Each where it belongs: who adds a key says in `places` where readers find it.
  const placed = [
    ...placedIn(folders.out, 'full', full.answers),
    ...placedIn(folders.out, 'small', shop.answers.map(ofShop)),
  ];
  const found = [...Map.groupBy(placed, ({ where }) => where)].map(
    ([where, answers]) => [where, [...new Set(answers.map(({ key }) => key))].sort()] as const,
  );
  expect(Object.fromEntries(found)).toEqual(
    Object.fromEntries(Object.entries(places).map(([where, keys]) => [where, keys.toSorted()])),
  );

  // A key that no report here answers, and that no reason is given for, is one that nothing may read.
  const answered = new Set(all.map(({ key }) => key));
  const keys = [...allKeys('', frontAnswers), ...allKeys('shop ', shopAnswers)];
  expect(keys.filter((key) => used[key] === undefined && !answered.has(key))).toEqual([]);
  expect(Object.keys(used).filter((key) => !keys.includes(key))).toEqual([]);
});
