import { describe, expect, test } from 'vitest';
import { readReport } from '../../../src/intake/authored/readReport.ts';
import { file, line, problemsWith, readWith } from './example.ts';

/** The front matter that the design shows to a fitter, to the letter. */
const shownToFitters = `---
title: Three driver heads, one shaft
date: 2026-04-11
question: Does either new head carry farther than the used one?
varied: head
held: {shaft: one 60 g stiff shaft moved across, length: 45.25 in, ball: one new model for every shot}
contenders:
  alder: {label: Alder 9°, supplied_by: our stock, sold_here: new}
  birch: {label: Birch 9°, supplied_by: lent by its distributor, sold_here: new}
  cedar: {label: Cedar 9°, supplied_by: our used stock, sold_here: used}
primary: carry
matters: {carry: 5 yd}
session: shots.csv
hitters: {one: {role: staff fitter, hand: right, handicap_band: 6-10, consent: yes}}
interests: {paid_by: the shop, commission_or_gifts: none, seen_before: nobody outside the shop}
status: draft
---

Two paragraphs.
`;

describe('a first report', () => {
  const { front, body, problems } = readReport(file, shownToFitters);

  test('is accepted as it stands', () => {
    expect(problems).toEqual([]);
    expect(front).toMatchObject({
      title: 'Three driver heads, one shaft',
      date: '2026-04-11',
      status: 'draft',
      varied: 'head',
      held: {
        shaft: 'one 60 g stiff shaft moved across',
        length: '45.25 in',
        ball: 'one new model for every shot',
      },
      primary: ['carry'],
      session: ['shots.csv'],
      rowsInHitOrder: true,
      interests: {
        paidBy: { kind: 'shop', words: 'the shop' },
        commissionOrGifts: { kind: 'none', words: 'none' },
        seenBefore: { kind: 'nobody-outside', words: 'nobody outside the shop' },
      },
    });
    expect(front?.contenders.map(({ id, label, soldHere }) => [id, label, soldHere])).toEqual([
      ['alder', 'Alder 9°', 'new'],
      ['birch', 'Birch 9°', 'new'],
      ['cedar', 'Cedar 9°', 'used'],
    ]);
    expect(front?.hitters).toEqual([
      { id: 'one', role: 'staff fitter', hand: 'right', handicapBand: '6-10', consent: { date: null } },
    ]);
  });

  test('keeps five yards as 4.572 m (1 yd = 0.9144 m, NIST SP 811 appendix B.8) and as typed', () => {
    expect(front?.matters.carry?.value).toBeCloseTo(4.572, 12);
    expect(front?.matters.carry).toMatchObject({ unit: 'yd', typed: '5 yd' });
  });

  test('has its narrative with the line on which it begins', () => {
    expect(body.text).toBe('\nTwo paragraphs.\n');
    expect(shownToFitters.split('\n')[body.firstLine - 1 + 1]).toBe('Two paragraphs.');
  });

  test('reads alike with Windows line ends and a byte order mark', () => {
    const windows = readReport(file, `\uFEFF${shownToFitters.replaceAll('\n', '\r\n')}`);
    expect(windows.problems).toEqual([]);
    expect(windows.front).toEqual(front);
    expect(windows.body).toEqual(body);
  });
});

test('numbers, dates, versions and words like "no" survive as typed', () => {
  const { front, problems } = readWith({
    title: '9.0',
    question: 'no',
    varied: '010',
    held: '{loft: 1e3, shaft: 2026-04-11, grip: ~, length: 45.250, head: null, lie: 0x1F}',
  });
  expect(problems).toEqual([]);
  expect(front).toMatchObject({
    title: '9.0',
    question: 'no',
    varied: '010',
    held: { loft: '1e3', shaft: '2026-04-11', grip: '~', length: '45.250', head: 'null', lie: '0x1F' },
  });
});

test('contenders and hitters keep the order of the file, whatever their ids', () => {
  const entry = (label: string): string => `{label: ${label}, supplied_by: us, sold_here: no}`;
  const { front } = readWith({
    contenders: `{cedar: ${entry('C')}, 10: ${entry('X')}, 9: ${entry('IX')}, alder: ${entry('A')}}`,
    hitters: '{zoe-2: {role: customer, consent: yes}, 1: {role: staff, consent: yes}}',
  });
  expect(front?.contenders.map(({ id }) => id)).toEqual(['cedar', '10', '9', 'alder']);
  expect(front?.hitters.map(({ id }) => id)).toEqual(['zoe-2', '1']);
});

describe('a report without front matter', () => {
  test('says how it begins', () => {
    expect(readReport(file, '# Three heads\n').problems.map(line)).toEqual([
      '1:1 - | front-matter-missing | a first line of three dashes (---), then the answers, then three dashes again | # Three heads | Write --- as the very first line of the file, and --- again on a line of its own after the last answer.',
    ]);
    expect(readReport(file, '').problems.map(({ found }) => found)).toEqual(['an empty line']);
  });

  test('says that the answers are never closed', () => {
    const { front, problems } = readReport(file, '---\ntitle: x\n\nText\n');
    expect(front).toBeNull();
    expect(problems.map(line)).toEqual([
      '1:1 - | front-matter-missing | three dashes (---) on a line of their own after the last answer | no closing line of dashes | Write --- on a line of its own between the last answer and the narrative.',
    ]);
  });

  test('lists every required answer when all are missing', () => {
    expect(
      readReport(file, '---\n---\n').problems.map(({ kind, columnName }) => `${kind} ${columnName}`),
    ).toEqual([
      'interests-missing interests',
      'key-missing contenders',
      'key-missing date',
      'key-missing hitters',
      'key-missing primary',
      'key-missing question',
      'key-missing session',
      'key-missing status',
      'key-missing title',
      'key-missing varied',
    ]);
  });
});

test('all problems are reported at once, in the order of the file', () => {
  const text = [
    '---',
    'title:',
    'date: 2026-02-30',
    'statsu: draft',
    'question: q',
    'varied: head',
    'contenders:',
    '  alder:',
    '    label: Alder',
    '    sold_here: sometimes',
    '  birch: {label: alder, supplied_by: us, sold_here: no}',
    'primary: bal speed',
    'matters: {carry: 5}',
    'session: ../shots.csv',
    'hitters: {one: {role: staff, consent: no}}',
    'claims:',
    '  - {say: Alder goes farther, metric: carry, more: aldre, than: birch}',
    'interests: {paid_by: us}',
    '---',
  ].join('\n');
  expect(
    readReport(file, text).problems.map(
      ({ line: row, column, kind, columnName }) => `${row}:${column} ${kind} ${columnName}`,
    ),
  ).toEqual([
    '1:1 key-missing status',
    '2:1 key-missing title',
    '3:7 value-invalid date',
    '4:1 unknown-key statsu',
    '8:3 key-missing contenders.alder.supplied_by',
    '10:16 value-invalid contenders.alder.sold_here',
    '11:18 value-invalid contenders.birch.label',
    '12:10 unknown-metric primary',
    '13:18 unit-missing matters.carry',
    '14:10 path-outside-report session',
    '15:39 value-invalid hitters.one.consent',
    '17:52 unknown-contender claims[1].more',
    '18:1 interests-missing interests.commission_or_gifts',
    '18:1 interests-missing interests.seen_before',
  ]);
});

test('keys named like parts of JavaScript objects are unknown keys and nothing else', () => {
  const problems = problemsWith({
    contenders:
      '{alder: {label: A, supplied_by: us, sold_here: no, __proto__: {label: B}}, constructor: {label: C, supplied_by: us, sold_here: no}}',
    matters: '{toString: 5 yd, __proto__: 5 yd}',
    held: '{also: {__proto__: kept, constructor: kept}, hasOwnProperty: x}',
  });
  expect(problems.map((text) => text.split(' | ').slice(0, 2).join(' '))).toEqual([
    '6:64 contenders.alder.__proto__ unknown-key',
    '12:11 matters.toString unknown-metric',
    '12:27 matters.__proto__ unknown-metric',
    '13:52 held.hasOwnProperty unknown-key',
  ]);
  const { front } = readWith({ held: '{also: {__proto__: kept, constructor: kept too}}' });
  expect(Object.entries(front?.held.also ?? {})).toEqual([
    ['__proto__', 'kept'],
    ['constructor', 'kept too'],
  ]);
  const polluted: Readonly<Record<string, unknown>> = {};
  expect(polluted['label']).toBeUndefined();
});

test('"not recorded" is no answer: left out where a question may stay open, refused where it may not', () => {
  const { front, problems } = readWith({
    conditions: '{place: not recorded, temperature: Not recorded, surface: mat}',
    held: '{shaft: not recorded, grip: the same}',
    summary: 'not recorded',
  });
  expect(problems).toEqual([]);
  expect(front).toMatchObject({ summary: null, conditions: { surface: 'mat' }, held: { grip: 'the same' } });
  expect(Object.keys(front?.conditions ?? {})).toEqual(['surface']);
  expect(Object.keys(front?.held ?? {})).toEqual(['grip']);
  expect(
    problemsWith({
      hitters: '{one: {role: not recorded, consent: yes}}',
      interests: '{paid_by: not recorded, commission_or_gifts: none, seen_before: nobody}',
    }),
  ).toEqual([
    '9:23 hitters.one.role | key-missing | who hit, as a role: staff fitter, customer, professional | not recorded | Answer it; this question may not stay open.',
    '10:22 interests.paid_by | interests-missing | who paid for the test | not recorded | Answer it; this question may not stay open.',
  ]);
});

describe('a block that need not be there', () => {
  const heads = (price: string): string =>
    `{alder: {label: Alder 9°, supplied_by: our stock, sold_here: new, price: ${price}}, birch: {label: Birch 9°, supplied_by: lent, sold_here: no}}`;

  test('counts as not there where every answer in it was taken back', () => {
    const { front, problems } = readWith({ contenders: heads('{amount: , currency: not recorded, on: }') });
    expect(problems).toEqual([]);
    expect(front?.contenders[0]).not.toHaveProperty('price');
  });

  test('asks for what it needs as soon as one answer is there', () => {
    expect(problemsWith({ contenders: heads('{amount: 499, currency: , on: }') })).toHaveLength(2);
  });
});
