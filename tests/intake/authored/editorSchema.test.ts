import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { isRealDate } from '../../../src/intake/authored/answers.ts';
import { contenderAnswers } from '../../../src/intake/authored/contender.ts';
import { editorSchema, editorSchemaNames } from '../../../src/intake/authored/editorSchema.ts';
import { fieldBlocks } from '../../../src/intake/authored/fields.ts';
import { frontAnswers } from '../../../src/intake/authored/front.ts';
import { splitReport } from '../../../src/intake/authored/frontMatter.ts';
import { readWith } from '../../../src/intake/authored/readWith.ts';
import type { EditorSchema } from '../../../src/intake/authored/schemaLine.ts';
import { sheetItems } from '../../../src/intake/authored/sheet.ts';
import { shopAnswers } from '../../../src/intake/authored/shop.ts';
import { readYaml } from '../../../src/intake/authored/yamlText.ts';
import { problemsWith, reportWith } from './example.ts';

const answers = { report: frontAnswers, shop: shopAnswers, contender: contenderAnswers } as const;

const ajv = new Ajv2020({
  allowUnionTypes: true,
  strictRequired: false,
  strictTypes: false,
  formats: { date: isRealDate },
});
const validators = Object.fromEntries(
  editorSchemaNames.map((name) => [name, ajv.compile(JSON.parse(editorSchema(name)))]),
) as Readonly<Record<EditorSchema, ValidateFunction>>;

/** What an editor has against a text, which it reads as YAML 1.2 with its core schema. */
function complaints(name: EditorSchema, yaml: string): readonly string[] {
  const validate = validators[name];
  return validate(parse(yaml)) ? [] : (validate.errors ?? []).map((e) => `${e.instancePath} ${e.message}`);
}

const yamlOf = (text: string): string => splitReport('report.md', text).yaml ?? '';

/** Every file of a kind in the content of the demo and of the cases, by its path. */
function filesOf(kind: EditorSchema): readonly (readonly [path: string, yaml: string])[] {
  const cases = readdirSync('tests/cases').map((name) => join('tests/cases', name, 'content'));
  return ['content', ...cases].flatMap((root) =>
    readdirSync(root, { recursive: true, encoding: 'utf8' })
      .map((path) => path.replaceAll('\\', '/'))
      .filter(
        (path) =>
          (kind === 'report' && /^reports\/[^/]+\/report\.md$/.test(path)) ||
          (kind === 'shop' && path === 'shop.yaml') ||
          (kind === 'contender' && /^contenders\/[^/]+\.yaml$/.test(path)),
      )
      .map((path) => join(root, path))
      .map((path) => {
        const text = readFileSync(path, 'utf8');
        return [path, kind === 'report' ? yamlOf(text) : text] as const;
      }),
  );
}

describe('what we read is right to an editor', () => {
  test.each(editorSchemaNames)('in every %s of the demo and of the cases', (name) => {
    const files = filesOf(name);
    const accepted = files.filter(
      ([path, yaml]) => 'value' in readWith<unknown>(answers[name], readYaml(path, yaml).tree),
    );
    expect(accepted.map(([path, yaml]) => [path, complaints(name, yaml)])).toEqual(
      accepted.map(([path]) => [path, []]),
    );
    if (name !== 'contender') expect(accepted.length).toBeGreaterThan(10);
  });

  test.each([
    ['a title of digits', { title: '2026' }],
    ['a question that YAML takes for true', { question: 'true' }],
    ['an answer left open', { summary: '', plan: 'not recorded', invented_data: 'Not recorded' }],
    ['a word in another casing', { status: 'Draft' }],
    ['metrics in the words of the trade', { primary: '[Ball Speed, carry]', matters: '{Ball speed: 2 mph}' }],
    ['a loft as a number', { held: '{loft: 9, also: {grooves of: 12}}' }],
    ['text in place of a block', { held: 'one shaft', conditions: '{ball: one new model, monitor: camera}' }],
    ['a quantity without a unit where it has but one', { matters: '{spin rate: 500, launch_angle: 1}' }],
    ['no exclusions', { exclusions: 'none' }],
    ['a limit', { exclusions: '[{metric: smash, below: 1.2, reason: mishit}]' }],
    ['a claim on straightness', { claims: '[{say: x, straighter: alder, than: birch}]' }],
    [
      'yes as true and as yes',
      { hitters: '{one: {role: x, consent: true, saw_club: false, saw_numbers: yes}}' },
    ],
  ])('%s', (_, changes) => {
    expect(problemsWith(changes)).toEqual([]);
    expect(complaints('report', yamlOf(reportWith(changes)))).toEqual([]);
  });
});

/** One of two contenders, with more answers. */
const alder = (more: string): string =>
  `{alder: {label: A, supplied_by: us, ${more}}, birch: {label: B, supplied_by: us, sold_here: no}}`;

describe('what we refuse an editor warns of', () => {
  test.each<readonly [string, Readonly<Record<string, string | null>>]>([
    ['an unknown key', { weather: 'fine' }],
    ['an unknown key further in', { conditions: '{sun: yes}' }],
    ['a missing answer', { question: null }],
    ['a blank answer that must be given', { question: '' }],
    ['a missing answer further in', { hitters: '{one: {consent: yes}}' }],
    ['a list in place of text', { title: '[one, two]' }],
    ['text in place of a block', { interests: 'none' }],
    ['text in place of a list', { corrections: 'none' }],
    ['a word that is none of those allowed', { status: 'live' }],
    ['a day in another order', { date: '11/04/2026' }],
    ['a day that does not exist', { date: '2026-02-30' }],
    ['a year for a day', { date: '2026' }],
    ['withdrawn without a reason', { status: 'withdrawn' }],
    ['superseded by nothing', { status: 'superseded' }],
    ['one contender', { contenders: '{alder: {label: A, supplied_by: us, sold_here: no}}' }],
    ['a contender without an answer', { contenders: alder('short: x') }],
    ['an id with capitals', { contenders: alder('sold_here: no').replace('alder', 'Alder 9') }],
    ['an item of no build sheet', { contenders: alder('sold_here: no, build: {lofft: 9}') }],
    [
      'a price with a comma',
      { contenders: alder('sold_here: no, price: {amount: "1,099", currency: EUR, on: 2026-04-01}') },
    ],
    ['an unknown metric', { primary: 'cary' }],
    ['a distance without a unit', { matters: '{carry: 5}' }],
    ['a quantity in words', { matters: '{carry: five yards}' }],
    ['a gap of an unknown metric', { matters: '{feel: 5 yd}' }],
    ['better than what', { better: 'highest' }],
    ['a file above the folder', { session: '../shots.csv' }],
    ['no hitter', { hitters: '{}' }],
    ['a hitter who did not agree', { hitters: '{one: {role: customer, consent: no}}' }],
    ['neither yes nor no', { hitters: '{one: {role: customer, consent: yes, saw_club: perhaps}}' }],
    ['a temperature without a unit', { conditions: '{temperature: 21}' }],
    ['an excluded shot without a rule', { exclusions: '[{contender: alder, shot: 3, reason: no spin}]' }],
    ['a limit without a limit', { exclusions: '[{metric: smash, reason: mishit}]' }],
    ['a shot by a word', { exclusions: '[{contender: alder, shot: third, rule: misread, reason: x}]' }],
    ['a claim without direction', { claims: '[{say: x, metric: carry, than: birch}]' }],
    ['a claim without a metric', { claims: '[{say: x, more: alder, than: birch}]' }],
    ['a plan with a count in words', { plan: '{shots_per_contender: twelve}' }],
    ['a warning of no such name', { seen: '[{warning: no-such}]' }],
  ])('%s', (_, changes) => {
    expect(problemsWith(changes)).not.toEqual([]);
    expect(complaints('report', yamlOf(reportWith(changes)))).not.toEqual([]);
  });

  test.each([
    ['no name', 'address: https://a.example/'],
    ['an unknown key', 'name: N\ncontct: x'],
    ['another version', 'name: N\nschema: 2'],
    ['an address without its beginning', 'name: N\naddress: a.example'],
    ['a colour that is none', 'name: N\nbrand: {accent: {light: red}}'],
    ['units that are none', 'name: N\ndefaults: {units: yard}'],
    ['a picture that is none', 'name: N\nexports: [poster]'],
  ])('%s in shop.yaml', (_, yaml) => {
    expect('troubles' in readWith<unknown>(shopAnswers, readYaml('shop.yaml', yaml).tree)).toBe(true);
    expect(complaints('shop', yaml)).not.toEqual([]);
  });
});

type Json = { readonly [key: string]: unknown };

/** The keys of the block at a place of a schema, through forms of an answer, lists and keys of the shop's choice. */
function keysAt(json: Json, steps: readonly string[]): ReadonlySet<string> {
  const forms = (json['anyOf'] as readonly Json[] | undefined) ?? [];
  const [step, ...rest] = steps;
  const below = forms.flatMap((form) => [...keysAt(form, steps)]);
  const properties = (json['properties'] ?? {}) as Readonly<Record<string, Json>>;
  if (step === undefined) return new Set([...Object.keys(properties), ...below]);
  const inner =
    step === '[]' ? json['items'] : step.startsWith('<') ? json['additionalProperties'] : properties[step];
  return new Set([...below, ...(inner === undefined ? [] : keysAt(inner as Json, rest))]);
}

test.each(editorSchemaNames)(
  'the schema of %s knows the keys that the reference in content/README.md tells',
  (name) => {
    const json = JSON.parse(editorSchema(name)) as Json;
    const blocks = fieldBlocks(answers[name]).filter(({ like }) => like === null);
    const byPath = Map.groupBy(blocks, ({ path }) => path.replace(/ \(.*\)$/, ''));
    expect(byPath.size).toBeGreaterThan(name === 'contender' ? 2 : 5);
    for (const [path, own] of byPath) {
      const steps = path
        .replaceAll('[]', '.[]')
        .split('.')
        .filter((step) => step !== '');
      const told = own.flatMap(({ fields }) => fields.map(({ key }) => key));
      expect(keysAt(json, steps), path).toEqual(new Set(told));
    }
  },
);

test('what an editor offers has its words: meanings, choices, items of a build sheet', () => {
  const json = JSON.parse(editorSchema('report'));
  expect(json.properties.title.description).toBe('the title of the report');
  expect(JSON.stringify(json.properties.status)).toContain('["draft","published","withdrawn","superseded"]');
  expect(json.properties.date).toMatchObject({ format: 'date' });
  expect(keysAt(json, ['held'])).toEqual(new Set([...Object.keys(sheetItems), 'also']));
  expect(json.required).toEqual(
    expect.arrayContaining(['title', 'date', 'status', 'contenders', 'primary', 'session', 'hitters']),
  );
});
