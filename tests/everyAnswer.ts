import { parse } from 'yaml';

/** Every question of a report that goes together with the others, answered; where its answer is words, with `WORDS`. */
const report = `
title: WORDS
date: 2026-04-11
published: 2026-05-02
summary: WORDS
status: published
question: WORDS
varied: head
held: {shaft: WORDS}
contenders:
  alder:
    label: WORDS
    short: zqshortzq
    article: no
    build: {loft: WORDS}
    supplied_by: {kind: lent, by: WORDS, words: WORDS}
    sold_here: both
    price: {amount: 147.5, currency: ZQD, on: 2026-04-02}
  birch: {label: Birch, supplied_by: us, sold_here: new}
primary: carry
matters: {carry: 5 yd}
plan:
  date: 2026-04-09
  order: WORDS
  seed: WORDS
  exclusion_rule: WORDS
  stopping_rule: WORDS
  expectation: WORDS
  warm_up: WORDS
session: shots.csv
hitters:
  one:
    role: WORDS
    hand: left
    handicap_band: WORDS
    link_to_shop: WORDS
    saw_club: yes
    saw_numbers: no
    usual_club: WORDS
    expectation: WORDS
    consent: yes
conditions:
  place: WORDS
  surface: WORDS
  tee: WORDS
  ball: {model: WORDS, state: WORDS, same_for_all: yes}
  temperature: 27.3 °C
  altitude: 432 m
  wind: WORDS
  humidity: WORDS
  target: WORDS
  monitor:
    kind: WORDS
    stated_accuracy: WORDS
    accuracy_stated_by: WORDS
    columns: {carry: derived}
    flight: WORDS
    normalised_to: WORDS
    last_check: WORDS
    software: WORDS
exclusions:
  - {contender: alder, shot: 3, rule: WORDS, reason: WORDS}
  - {metric: carry, below: 10 yd, above: 232.5 yd, rule: WORDS, reason: WORDS}
interests:
  supplied: WORDS
  paid_by: {kind: shared, by: WORDS, share: WORDS, words: WORDS}
  commission_or_gifts: {kind: some, words: WORDS}
  seen_before: {kind: others, words: WORDS}
  sentence: WORDS
claims: [{say: WORDS, metric: carry, more: birch, than: alder, allow_unproven: yes}]
corrections: [{date: 2026-05-03, what: WORDS, was: WORDS, now: WORDS}]
replies: [{from: WORDS, date: 2026-05-04, text: WORDS}]
`;

/** The same of a shop. */
const shop = `
schema: 1
name: WORDS
address: https://zqaddresszq.example/
contact: WORDS
brand:
  site: https://zqshopsitezq.example/
  booking: https://zqshopbookingzq.example/visit
  contact: WORDS
interests:
  supplied: WORDS
  paid_by: {kind: shared, by: WORDS, share: WORDS, words: WORDS}
  commission_or_gifts: {kind: some, words: WORDS}
  seen_before: {kind: others, words: WORDS}
  sentence: WORDS
reuse: {terms: WORDS, credit: WORDS, licence_charts: WORDS, licence_data: WORDS}
defaults:
  units: yards
  locale: en-GB
  place: WORDS
  surface: WORDS
  tee: WORDS
  altitude: 1234 m
  ball: {model: WORDS, state: WORDS, same_for_all: yes}
  monitor:
    kind: WORDS
    stated_accuracy: WORDS
    accuracy_stated_by: WORDS
    columns: {carry: estimated}
    flight: WORDS
    normalised_to: WORDS
    last_check: WORDS
    software: WORDS
  matters: {carry: 5 yd}
strict: no
`;

/** One answer: its key as the reference writes it, and what stands there. */
export interface Answered {
  readonly key: string;
  /** Null: a block or a list, whose parts follow. */
  readonly value: string | null;
  /** Whether the shop says it in its own words. */
  readonly inWords: boolean;
}

interface EveryAnswer {
  /** YAML, one line for each key at the top. */
  readonly text: string;
  readonly answers: readonly Answered[];
}

/** A front matter that answers everything; `wordsFor` says in words what a key is answered with. */
export const everyAnswer = (wordsFor: (key: string) => string): EveryAnswer => answered(report, wordsFor);

/** A `shop.yaml` that answers everything. */
export const everyAnswerOfShop = (wordsFor: (key: string) => string): EveryAnswer => answered(shop, wordsFor);

function answered(yaml: string, wordsFor: (key: string) => string): EveryAnswer {
  const tree: unknown = parse(yaml);
  if (typeof tree !== 'object' || tree === null) throw new Error('no answers');
  const filled = Object.entries(tree).map(
    ([key, value]: [string, unknown]) => `${key}: ${JSON.stringify(withWords(value, key, wordsFor))}`,
  );
  return { text: filled.join('\n'), answers: answersIn(tree, '', wordsFor) };
}

function withWords(tree: unknown, key: string, wordsFor: (key: string) => string): unknown {
  if (tree === 'WORDS') return wordsFor(key);
  if (Array.isArray(tree))
    return tree.map((entry: unknown) => withWords(entry, entryKey(key, entry), wordsFor));
  if (typeof tree !== 'object' || tree === null) return tree;
  return Object.fromEntries(
    Object.entries(tree).map(([step, value]: [string, unknown]) => [
      step,
      withWords(value, below(key, step), wordsFor),
    ]),
  );
}

function answersIn(tree: unknown, key: string, wordsFor: (key: string) => string): readonly Answered[] {
  const own = (value: string | null): readonly Answered[] =>
    /^$|[)\]>]$/.test(key) ? [] : [{ key, value, inWords: tree === 'WORDS' }];
  if (Array.isArray(tree))
    return [
      ...own(null),
      ...tree.flatMap((entry: unknown) => answersIn(entry, entryKey(key, entry), wordsFor)),
    ];
  if (typeof tree !== 'object' || tree === null) return own(tree === 'WORDS' ? wordsFor(key) : String(tree));
  return [
    ...own(null),
    ...Object.entries(tree).flatMap(([step, value]: [string, unknown]) =>
      answersIn(value, below(key, step), wordsFor),
    ),
  ];
}

function below(key: string, step: string): string {
  if (key === '') return step;
  return ['contenders', 'hitters'].includes(key) ? `${key}.<id>` : `${key}.${step}`;
}

function entryKey(key: string, entry: unknown): string {
  const isLimit = typeof entry === 'object' && entry !== null && 'metric' in entry;
  return `${key}[]${key !== 'exclusions' ? '' : isLimit ? ' (a limit)' : ' (a shot)'}`;
}
