import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

/** Folders of `src` in the order of import: each may import only from itself and from those above it. */
const order = [
  'problems',
  'trade',
  'stats',
  'flight',
  'intake',
  'findings',
  'prose',
  'charts',
  'kit',
  'site',
  'planning',
  'desk',
  'commands',
  'styles',
  'components',
  'layouts',
  'pages',
];

/** Pages show and compute nothing: values come from these only, types from anywhere above. */
const shownFrom = ['prose', 'charts', 'kit', 'site', 'styles', 'components', 'layouts', 'pages'];
const pageFolders = ['styles', 'components', 'layouts', 'pages'];

const src = resolve('src');

function sourceFiles(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return sourceFiles(path);
    return /\.(ts|astro|mjs)$/.test(entry.name) ? [path] : [];
  });
}

interface Import {
  readonly from: string;
  readonly to: string;
  readonly typeOnly: boolean;
}

function importsOf(file: string): Import[] {
  const text = readFileSync(file, 'utf8');
  const statements = text.matchAll(
    /^\s*(?:import|export)\s+(type\s)?(?:[^'"]*?from\s+)?['"](\.[^'"]+)['"]|import\(\s*['"](\.[^'"]+)['"]/gm,
  );
  return [...statements].flatMap((match) => {
    const target = resolve(dirname(file), match[2] ?? match[3] ?? '');
    const to = relative(src, target).split('/')[0] ?? '';
    // The version is read from package.json, which lies above src.
    if (to === '..') return [];
    return [{ from: relative(src, file), to, typeOnly: match[1] !== undefined }];
  });
}

describe('the folders of src', () => {
  const folders = readdirSync(src, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);
  const imports = sourceFiles(src).flatMap(importsOf);

  test('each has a place in the order of import', () => {
    expect(folders.filter((folder) => !order.includes(folder))).toEqual([]);
  });

  test('no loose file lies beside them', () => {
    const loose = readdirSync(src, { withFileTypes: true }).filter((entry) => !entry.isDirectory());
    expect(loose.map(({ name }) => name)).toEqual([]);
  });

  test('import only from themselves and from those above', () => {
    const wrong = imports.filter(
      ({ from, to }) =>
        order.indexOf(to) === -1 || order.indexOf(to) > order.indexOf(from.split('/')[0] ?? ''),
    );
    expect(wrong).toEqual([]);
    expect(imports.length).toBeGreaterThan(50);
  });

  test('pages and components compute nothing: values only from what shows', () => {
    const wrong = imports.filter(
      ({ from, to, typeOnly }) =>
        pageFolders.includes(from.split('/')[0] ?? '') && !typeOnly && !shownFrom.includes(to),
    );
    expect(wrong).toEqual([]);
  });

  test('problems and stats know nothing of golf', () => {
    const wrong = imports.filter(
      ({ from, to }) => /^(problems|stats)\//.test(from) && from.split('/')[0] !== to,
    );
    expect(wrong).toEqual([]);
  });
});
