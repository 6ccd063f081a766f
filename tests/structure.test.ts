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

describe('the files of src', () => {
  // Tables of numbers are as long as what they hold.
  const files = readdirSync(src, { recursive: true, withFileTypes: true }).filter(
    (entry) => entry.isFile() && !entry.name.endsWith('.json'),
  );
  const lines = files
    .map(({ parentPath, name }) => join(parentPath, name))
    .map((path) => ({
      path: relative(src, path),
      lines: readFileSync(path, 'utf8').split('\n').length - 1,
    }));

  test('none has more than 300 lines', () => {
    expect(lines.filter((file) => file.lines > 300)).toEqual([]);
    expect(lines.length).toBeGreaterThan(500);
  });

  test('half have 30 to 90 lines or fewer', () => {
    const sorted = lines.map((file) => file.lines).toSorted((a, b) => a - b);
    const median = sorted[Math.floor(sorted.length / 2)];
    expect(median).toBeGreaterThanOrEqual(30);
    expect(median).toBeLessThanOrEqual(90);
  });
});

/** Files that import one another in a circle, as far as one leads back to itself; types count. */
function circles(files: readonly string[]): readonly string[] {
  const reads = new Map(
    files.map((file) => [
      file,
      [...readFileSync(file, 'utf8').matchAll(/ from '(\.[^']+)'/g)].map(([, to = '']) =>
        resolve(dirname(file), to),
      ),
    ]),
  );
  const found: string[] = [];
  const done = new Set<string>();
  const follow = (file: string, way: readonly string[]): void => {
    if (way.includes(file)) {
      found.push([...way.slice(way.indexOf(file)), file].map((one) => relative(src, one)).join(' > '));
      return;
    }
    if (done.has(file)) return;
    for (const next of reads.get(file) ?? []) follow(next, [...way, file]);
    done.add(file);
  };
  for (const file of files) follow(file, []);
  return found;
}

test('no file imports another that imports it', () => {
  expect(circles(sourceFiles(src))).toEqual([]);
});
