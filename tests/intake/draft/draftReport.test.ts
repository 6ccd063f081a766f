import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assembleSession } from '../../../src/intake/assembleSession.ts';
import { defineSource } from '../../../src/intake/authored/source.ts';
import { readShop } from '../../../src/intake/authored/readShop.ts';
import { nothingShared, type Shared } from '../../../src/intake/authored/shared.ts';
import { draftReport } from '../../../src/intake/draft/draftReport.ts';
import { understand } from '../../../src/intake/draft/understood.ts';
import { isEmptyToTheEye, withoutHidden } from '../../../src/intake/authored/hiddenCharacters.ts';
import { foreignLetterIn } from '../../../src/intake/authored/lookAlikes.ts';
import { readShotFile } from '../../../src/intake/shots/readShotFile.ts';
import type { ShotFile } from '../../../src/intake/shots/shotFile.ts';
import { answered } from './answered.ts';

const file = 'reports/x/report.md';

function draftOf(shotFiles: readonly ShotFile[], shared: Shared = nothingShared): string {
  return draftReport({
    slug: 'x',
    title: 'Two: heads # one',
    dateInName: null,
    varied: 'head',
    session: shotFiles.map(({ file: name }) => name),
    understood: understand(shotFiles),
    usualGap: () => '5 yd',
    openColumns: [],
    shop: shared.shop,
  });
}

const cell = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** A file in which each club is hit three times in turn, by each hitter. */
function sessionOf(clubs: readonly string[], hitters: readonly string[] = ['']): Uint8Array {
  const rows = hitters.flatMap((hitter) =>
    [1, 2, 3].flatMap((turn) =>
      clubs.map((club, index) => `${cell(club)},${cell(hitter)},${200 + turn * 7 + index}.${turn}`),
    ),
  );
  return new TextEncoder().encode(['Club,Hitter,Carry (yd)', ...rows, ''].join('\n'));
}

describe('a draft with its blanks filled in', () => {
  const name = fc.oneof(
    fc.string({ minLength: 1, maxLength: 30 }),
    fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 }),
    fc.constantFrom('Head A', 'head-a', 'HEAD A', '9.0', "7's, #2", '__proto__', 'one', 'two', '<b>x</b>'),
  );

  test.each([false, true])(
    'is a report without a fault, whatever clubs and hitters are called (all: %s)',
    (every) => {
      let drafted = 0;
      fc.assert(
        fc.property(
          fc.array(name, { minLength: 2, maxLength: 6 }),
          fc.array(name, { minLength: 1, maxLength: 3 }),
          (clubs, hitters) => {
            const shotFile = readShotFile('odd name, #1.csv', sessionOf(clubs, hitters));
            const { contenders, nameless, hitters: found } = understand([shotFile]);
            // What the file itself gets wrong, or what no report may hold, no draft can mend.
            fc.pre(shotFile.problems.every(({ severity }) => severity !== 'error'));
            fc.pre(contenders.every((each) => foreignLetterIn(each.name) === null));
            fc.pre(contenders.every((each) => !isEmptyToTheEye(each.name)));
            fc.pre(contenders.length >= 2 && (nameless === 0 || found.length === 0));
            drafted += 1;
            const text = answered(file, draftOf([shotFile]), { every });
            const { source, problems } = defineSource({ slug: 'x', file, text, files: [], ...nothingShared });
            expect(problems).toEqual([]);
            if (source === null) throw new Error('no source');
            const session = assembleSession(source, [shotFile]);
            expect(session.problems.filter(({ severity }) => severity === 'error')).toEqual([]);
            expect(session.session.shots).toHaveLength(shotFile.rows.length);
            const withBlanks = (text: string): string => text.replaceAll('_', ' ').replace(/ +/g, ' ');
            expect(source.front.contenders.map(({ label }) => withBlanks(label))).toEqual(
              contenders.map((each) => withBlanks(withoutHidden(each.name))),
            );
          },
        ),
        { numRuns: 150 },
      );
      expect(drafted).toBeGreaterThan(100);
    },
  );
});

test.each([
  { clubs: ['worn_groove', 'Oak_2_'], labels: ['worn groove', 'Oak 2_'] },
  { clubs: ['worn_groove', 'worn groove'], labels: ['worn_groove', 'worn groove'] },
])('names for readers have blanks, and no two are alike: $clubs', ({ clubs, labels }) => {
  const text = answered(file, draftOf([readShotFile('s.csv', sessionOf(clubs))]), { every: false });
  const { source } = defineSource({ slug: 'x', file, text, files: [], ...nothingShared });
  expect(source?.front.contenders.map(({ label }) => label)).toEqual(labels);
});

describe('what a draft asks', () => {
  const shotFile = readShotFile('s.csv', sessionOf(['Alder', 'Birch']));
  const { shop } = readShop(
    'shop.yaml',
    'name: Shop\ninterests: {paid_by: the shop, commission_or_gifts: none}\ndefaults: {place: indoors, monitor: camera, matters: {carry: 4 yd}}\n',
  );

  test('is not what the shop has answered for all reports', () => {
    const keys = (text: string): string[] =>
      [...text.matchAll(/^ *([a-z_]+):/gm)].map((match) => match[1] ?? '');
    const alone = keys(draftOf([shotFile]));
    const within = keys(draftOf([shotFile], { ...nothingShared, shop }));
    expect(alone.filter((key) => !within.includes(key))).toEqual([
      'matters',
      'carry',
      'place',
      'monitor',
      'kind',
      'stated_accuracy',
      'accuracy_stated_by',
      'flight',
      'normalised_to',
      'last_check',
      'columns',
      'carry',
      'paid_by',
      'commission_or_gifts',
    ]);
  });

  test('stands as a comment right above the line for its answer, at least once for every key left empty', () => {
    const lines = draftOf([shotFile]).split('\n');
    const empty = lines.flatMap((line, index) => {
      const key = /^ *([a-z_]+):$/.exec(line)?.[1];
      const isBlock =
        /^\s*(?:#|[a-z])/.test(lines[index + 1] ?? '') && indent(lines[index + 1]) > indent(line);
      return key === undefined || isBlock ? [] : [{ key, asked: /^\s*#/.test(lines[index - 1] ?? '') }];
    });
    expect(empty.length).toBeGreaterThan(30);
    const asked = new Set(empty.filter((each) => each.asked).map(({ key }) => key));
    const held = ['head', 'loft', 'shaft', 'length', 'grip'];
    expect(empty.filter(({ key }) => !asked.has(key) && !held.includes(key))).toEqual([]);
  });
});

const indent = (line = ''): number => line.length - line.trimStart().length;
