import { describe, expect, test } from 'vitest';
import { frontAnswers } from '../../src/intake/authored/front.ts';
import { sheetItems } from '../../src/intake/authored/sheet.ts';
import { takesOf } from '../../src/intake/authored/takes.ts';
import { splitReport } from '../../src/intake/authored/frontMatter.ts';
import { readYaml } from '../../src/intake/authored/yamlText.ts';
import type { Block } from '../../src/intake/authored/tree.ts';
import { answerGroups, fieldAt, fieldsOf } from '../../src/desk/answerGroups.ts';
import { twoHeads } from '../commands/contentFolder.ts';

function treeOf(text: string): Block {
  const { yaml } = splitReport('report.md', text);
  const { tree } = readYaml('report.md', yaml ?? '');
  if (tree === null) throw new Error('cannot be read');
  return tree;
}

const fields = (text = twoHeads()) =>
  fieldsOf(
    answerGroups(treeOf(text), {
      measured: ['carry', 'ball_speed'],
      sheets: ['order.csv'],
      missing: new Set(),
      sheetsOfContenders: new Map(),
    }),
  );
const field = (name: string, text?: string) => fields(text).find((each) => each.name === name);

describe('the fields of a form come from the schema', () => {
  test('choices are those that the schema reads, each of them', () => {
    expect(field('contenders.alder.sold_here')).toMatchObject({
      label: 'Whether the shop sells it',
      control: 'one-of',
      required: true,
      typed: ['new'],
    });
    expect(field('contenders.alder.sold_here')?.choices.map(({ value }) => value)).toEqual([
      'new',
      'used',
      'both',
      'no',
    ]);
    expect(field('hitters.one.hand')?.choices.map(({ value }) => value)).toEqual(['right', 'left']);
    expect(field('hitters.one.saw_club')?.choices.map(({ value }) => value)).toEqual(['yes', 'no']);
    for (const { control, choices } of fields())
      expect(control === 'one-of' || control === 'some-of').toBe(choices.length > 0);
  });

  test('a day is asked by the calendar, unless what stands there is none', () => {
    expect(field('date')).toMatchObject({ control: 'day', typed: ['2026-05-02'] });
    expect(
      field(
        'date',
        twoHeads((front) => front.replace('2026-05-02', 'May')),
      ),
    ).toMatchObject({
      control: 'text',
      typed: ['May'],
    });
  });

  test('help says what an answer may be', () => {
    expect(field('conditions.temperature')?.help).toBe('text; a number with its unit, such as “21 °C”');
    expect(field('contenders.alder.supplied_by')?.help).toBe(
      'text, such as “our stock” or “lent by its distributor”',
    );
    expect(field('hitters.one.role')?.help).toBeNull();
  });

  test('a line in words stays a line, and a block becomes its answers', () => {
    const block = twoHeads((front) =>
      front.replace('supplied_by: our stock', 'supplied_by: {kind: lent, by: its maker}'),
    );
    expect(fields(block).map(({ name }) => name)).toEqual(
      expect.arrayContaining(['contenders.alder.supplied_by.kind', 'contenders.birch.supplied_by']),
    );
    expect(field('contenders.alder.supplied_by.kind', block)?.choices).toHaveLength(5);
  });

  test('what is compared by is one of the metrics that were measured, or two of them', () => {
    expect(field('primary')).toMatchObject({
      control: 'some-of',
      choices: [
        { value: 'carry', words: 'carry' },
        { value: 'ball_speed', words: 'ball speed' },
      ],
      typed: ['carry'],
    });
    const two = twoHeads((front) => front.replace('primary: carry', 'primary: [Carry, ball speed]'));
    expect(field('primary', two)?.typed).toEqual(['carry', 'ball_speed']);
  });

  test('a build sheet is asked by the items that it has, and the usual ones', () => {
    const built = twoHeads((front) =>
      front.replace('sold_here: new', 'sold_here: new, build: {grind: low, loft: 9°}'),
    );
    const asked = fields(built).filter(({ name }) => name.startsWith('contenders.alder.build.'));
    expect(asked.find(({ name }) => name.endsWith('.grind'))).toMatchObject({
      label: 'Grind',
      typed: ['low'],
    });
    expect(asked.find(({ name }) => name.endsWith('.loft'))).toMatchObject({
      label: 'Stated loft',
      typed: ['9°'],
    });
    for (const { path } of asked) expect(Object.keys(sheetItems)).toContain(String(path.at(-1)));
  });

  test('every key of the front matter is asked, or is one of those that a form does not ask yet', () => {
    const asked = new Set(fields(asked_all).map(({ path }) => String(path[0])));
    const keys = (takesOf(frontAnswers).inside ?? []).map(([step]) => step.slice(1));
    expect(keys.filter((key) => !asked.has(key))).toEqual([
      'published',
      'status',
      'withdrawn',
      'superseded_by',
      'aliases',
      'session',
      'exclusions',
      'claims',
      'corrections',
      'replies',
      'seen',
    ]);
  });
});

/** A report with a line for each block that is asked only where it is there. */
const asked_all = twoHeads((front) =>
  front.replace('session:', 'columns: {carry: {heading: Dist, unit: }}\nsession:'),
);

describe('a problem finds its field', () => {
  test.each([
    ['date', 'date'],
    ['contenders.alder.price.amount', 'contenders.alder.price.amount'],
    ['primary[2]', 'primary'],
    ['interests', 'interests.supplied'],
    ['claims[1].say', null],
    ['dat', null],
  ])('%s', (key, name) => {
    expect(fieldAt(fields(), key)?.name ?? null).toBe(name);
  });
});
