import { mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { namedFunctions } from './parametersOf.ts';

const most = 4;

const drawn = 'what is drawn, in which signs and layout, and how far down: all rows of charts are called so';
const inner = 'numbers of an inner loop, where an object a call takes time';
const formula = 'the letters of a formula in the order in which the literature writes them';

/** Functions that take more than `most`, since nothing would be read better by names, each with its reason. */
const excused: Readonly<Record<string, string>> = {
  'charts/apartRow.ts apartRow': drawn,
  'charts/apartRow.ts judgedRow': drawn,
  'charts/axisBelow.ts axisBelow': drawn,
  'charts/intervalRows.ts intervalRow': drawn,
  'charts/keys.ts signKey': drawn,
  'charts/landingPanel.ts panelWords': drawn,
  'charts/ringAndBarDrawing.ts drawnRow': drawn,
  'charts/shotsStrip.ts shotsStrip': drawn,
  'charts/signs.ts label': drawn,
  'charts/gapScale.ts gapScale':
    'values, what matters, their unit, the layout and the room: the parts of a scale',
  'charts/textWidth.ts fitText': 'a text, its type and its room, as `textWidth` takes them',
  'flight/attribution.ts sharesOf': inner,
  'flight/equationsOfMotion.ts run': inner,
  'flight/hermite.ts hermite': inner,
  'flight/polynomialGrid.ts putIn': inner,
  'kit/colourRuns.ts countAgain': inner,
  'intake/shots/settleCell.ts settleCell':
    'called for each cell of up to 200,000 rows, where an object a call takes time',
  'stats/distributions/beta.ts quantile': formula,
  'stats/distributions/beta.ts tail': formula,
};

const src = resolve('src');
const files = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.(?:ts|astro|mjs)$/.test(path))
  .map((path) => join(src, path));
const functions = files.flatMap((file) =>
  namedFunctions(file).map(({ name, parameters }) => ({
    name: `${relative(src, file)} ${name}`,
    parameters,
  })),
);
const long = functions.filter(({ parameters }) => parameters > most).map(({ name }) => name);

test('functions take at most four parameters, or one object whose parts have names', () => {
  expect(long.filter((name) => !(name in excused))).toEqual([]);
  expect(functions.length).toBeGreaterThan(4000);
});

test('nothing is excused that need not be', () => {
  expect(Object.keys(excused).filter((name) => !long.includes(name))).toEqual([]);
});

test('functions are counted however they are written, but for those that are only handed over', () => {
  const file = join(mkdtempSync(join(tmpdir(), 'functions-')), 'some.ts');
  writeFileSync(
    file,
    `export function declared(a: number, { b, c }: Two) { const inner = (x: number) => x; return inner(a); }
    const kept = { method(a: number, b = 2, ...c: number[]) {}, arrow: (a: number) => a };
    const plain = 3;
    [1].map((a, b, c) => a);`,
  );
  expect(namedFunctions(file)).toEqual([
    { name: 'declared', parameters: 2 },
    { name: 'inner', parameters: 1 },
    { name: 'method', parameters: 3 },
    { name: 'arrow', parameters: 1 },
  ]);
});
