import { rmSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { kitOf } from '../../src/kit/kitOf.ts';
import { exportedSvg } from '../../src/kit/exportedSvg.ts';
import { shotsCsv } from '../../src/kit/shotsCsv.ts';
import { drawPixels } from '../../src/site/rasters.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { contentFolder, shop, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';

type Files = Readonly<Record<string, string | Uint8Array>>;

const usual: Files = {
  'shop.yaml': shop,
  'reports/two/report.md': twoHeads(),
  'reports/two/shots.csv': twoHeadsCsv,
};

/** What is refused in a content folder with these files changed: kind, file and line. */
function refused(files: Files): readonly string[] {
  const { problems } = loadSite(contentFolder({ ...usual, ...files }));
  return problems
    .filter(({ severity }) => severity === 'error')
    .map(({ kind, file, line }) => `${kind} ${file}:${line}`);
}

const labelled = (label: string): Files => ({
  'reports/two/report.md': twoHeads((front) => front.replace('{label: Alder,', `{label: ${label},`)),
  'reports/two/shots.csv': twoHeadsCsv.replaceAll('Alder', 'alder'),
});

const answered = (lines: string): Files => ({
  'reports/two/report.md': twoHeads((front) => front.replace('title: Two heads', lines)),
});

describe('refused with its place', () => {
  test.each<readonly [what: string, files: Files, error: string]>([
    ['a bell in quotes', labelled('"Al\\u0007der"'), 'control-character reports/two/report.md:7'],
    ['a raw control character', labelled('Al\u0001der'), 'control-character reports/two/report.md:7'],
    ['half of a pair of surrogates', labelled('"Al\\uD800der"'), 'control-character reports/two/report.md:7'],
    [
      'a name that turns the direction of text',
      labelled('"\u202Eredla"'),
      'control-character reports/two/report.md:7',
    ],
    ['no character at all', labelled('"Al\\uFFFEder"'), 'control-character reports/two/report.md:7'],
    [
      'a control character in the narrative',
      { 'reports/two/report.md': `${twoHeads()}\nSoft\u000Bware.\n` },
      'control-character reports/two/report.md:20',
    ],
    ['answers without end', answered(`title: ${'x'.repeat(100_000)}`), 'too-long reports/two/report.md:1'],
    [
      'an alias bomb',
      answered('a: &a [x, x]\nb: &b [*a, *a]\ntitle: *b'),
      'yaml-syntax reports/two/report.md:2',
    ],
    ['brackets without end', answered(`title: ${'['.repeat(20_000)}`), 'yaml-syntax reports/two/report.md:2'],
    [
      'the prototype as a key',
      answered('__proto__: {x: 1}\ntitle: T'),
      'unknown-key reports/two/report.md:2',
    ],
    [
      'a session file elsewhere',
      { 'reports/two/report.md': twoHeads((front) => front.replace('shots.csv', '../../shop.yaml')) },
      'path-outside-report reports/two/report.md:11',
    ],
    [
      'a script as the address of a link',
      { 'reports/two/report.md': `${twoHeads()}\n<javascript:alert(1)>\n` },
      'link-refused reports/two/report.md:20',
    ],
    [
      'bytes that are no text',
      { 'reports/two/shots.csv': new Uint8Array(5000).map((_, i) => (i * 7919) % 256) },
      'not-text reports/two/shots.csv:null',
    ],
    [
      'a field without end',
      { 'reports/two/shots.csv': `${twoHeadsCsv}13,"${'x'.repeat(2_000_000)}` },
      'record-too-long reports/two/shots.csv:14',
    ],
    [
      'a folder name with markup',
      { 'reports/<img src=x>/report.md': twoHeads(), 'reports/<img src=x>/shots.csv': twoHeadsCsv },
      'folder-name reports/<img src=x>:null',
    ],
    [
      'a folder name that an address cannot hold',
      { 'reports/a b#c/report.md': twoHeads(), 'reports/a b#c/shots.csv': twoHeadsCsv },
      'folder-name reports/a b#c:null',
    ],
    [
      'the prototype as a contender',
      { 'reports/two/report.md': twoHeads((front) => front.replace('alder: {label', '__proto__: {label')) },
      'value-invalid reports/two/report.md:7',
    ],
    [
      'a method of all objects as a metric',
      { 'reports/two/report.md': twoHeads((front) => front.replace('{carry: 5 yd}', '{constructor: 5 yd}')) },
      'unknown-metric reports/two/report.md:10',
    ],
    [
      'a method of all objects as a value of the narrative',
      { 'reports/two/report.md': `${twoHeads()}\n{{ mean carry constructor }}\n` },
      'unknown-reference reports/two/report.md:20',
    ],
    [
      'a tag that asks for code',
      answered('title: !!js/function "function () {}"'),
      'yaml-syntax reports/two/report.md:2',
    ],
    [
      'an order sheet elsewhere',
      {
        'reports/two/report.md': twoHeads((front) =>
          front.replace('session:', 'order_sheet: /etc/passwd\nsession:'),
        ),
      },
      'path-outside-report reports/two/report.md:11',
    ],
    [
      'a picture elsewhere',
      { 'reports/two/report.md': `${twoHeads()}\n![x](https://other.test/x.png)\n` },
      'link-refused reports/two/report.md:20',
    ],
    ['content of another version', { 'shop.yaml': `schema: 2\n${shop}` }, 'value-invalid shop.yaml:1'],
  ])('%s', (_what, files, error) => {
    expect(refused(files)).toContain(error);
  });

  test('content of another version is told what to do', () => {
    const [problem] = loadSite(contentFolder({ ...usual, 'shop.yaml': `schema: 2\n${shop}` })).problems;
    expect(problem).toMatchObject({
      expected: 'schema: 1, the only version that this Straightface reads',
      found: '2',
      cure: 'Run npm run migrate: it brings content of an earlier version along, and says what a later one needs.',
    });
  });

  test('a ledger of another version is not taken for a broken one', () => {
    const ledger = JSON.stringify({ version: 4, plans: [], dropped: [], reports: [] });
    const [problem] = loadSite(contentFolder({ ...usual, 'ledger.json': ledger })).problems;
    expect(problem).toMatchObject({
      kind: 'ledger-invalid',
      found: 'version 4',
      cure: 'Use the version of Straightface that wrote it, or a later one.',
    });
  });

  test.each([
    ['brackets', '['.repeat(50_000)],
    ['quotes in quotes', `${'>'.repeat(20_000)}x`],
    ['stars', '*a **a '.repeat(20_000)],
    ['runs of backticks', Array.from({ length: 600 }, (_, i) => `${'`'.repeat(i + 1)}a`).join(' ')],
    ['links in links', '[a]('.repeat(20_000)],
    ['lists in lists', Array.from({ length: 600 }, (_, i) => `${' '.repeat(i)}- a`).join('\n')],
  ])(
    'a narrative of nothing but %s is text, and soon read',
    (_what, body) => {
      const { reports, problems } = loadSite(
        contentFolder({ ...usual, 'reports/two/report.md': `${twoHeads()}\n${body}\n` }),
      );
      expect([reports.length, problems.filter(({ severity }) => severity === 'error')]).toEqual([1, []]);
    },
    20_000,
  );

  test('a narrative of nothing but braces is one error, and soon read', () => {
    const { problems } = loadSite(
      contentFolder({ ...usual, 'reports/two/report.md': `${twoHeads()}\n${'{{'.repeat(50_000)}\n` }),
    );
    expect(problems.filter(({ severity }) => severity === 'error').map(({ kind }) => kind)).toEqual([
      'reference-unclosed',
    ]);
  }, 20_000);

  test('methods of all objects as ids, clubs and headings are names like any other', () => {
    const csv = twoHeadsCsv
      .replaceAll('Alder', 'constructor')
      .split('\n')
      .map((line, index) => (line === '' ? line : `${line},${index === 0 ? 'hasOwnProperty' : '1'}`));
    const { reports, problems } = loadSite(
      contentFolder({
        ...usual,
        'reports/two/report.md': twoHeads((front) =>
          front
            .replace('alder: {label: Alder', 'constructor: {label: Alder')
            .replace('{one: {', '{constructor: {'),
        ),
        'reports/two/shots.csv': csv.join('\n'),
      }),
    );
    expect(problems).toEqual([]);
    expect(reports[0]?.session.shots.map(({ contender, hitter }) => `${contender} ${hitter}`)).toContain(
      'constructor constructor',
    );
  });

  test('content of this version is read', () => {
    expect(refused({ 'shop.yaml': `schema: 1\n${shop}` })).toEqual([]);
  });

  test.each([
    ['reports/two/shots.csv', 'session-file-missing reports/two/report.md:11'],
    ['reports/two/report.md', 'report-missing reports/two/report.md:null'],
    ['shop.yaml', 'shop-missing shop.yaml:null'],
  ])('%s as a link that leads out of the folder', (path, problem) => {
    const root = contentFolder(usual);
    const elsewhere = contentFolder(usual);
    rmSync(join(root, path));
    symlinkSync(join(elsewhere, path), join(root, path));
    const found = loadSite(root).problems.map(({ kind, file, line }) => `${kind} ${file}:${line}`);
    expect(found).toContain(problem);
  });
});

describe('passed over by no reader in silence', () => {
  const found = (root: string): readonly string[] =>
    loadSite(root).problems.map(({ kind, severity, file }) => `${severity} ${kind} ${file}`);

  test.each(['reports/linked', 'contenders', 'inbox'])('%s as a link to a folder elsewhere', (path) => {
    const root = contentFolder(usual);
    symlinkSync(join(contentFolder(usual), 'reports/two'), join(root, path));
    expect(found(root)).toContain(`error folder-is-link ${path}`);
  });

  test.each(['contenders/x.yaml', 'inbox/x.csv'])(
    '%s as a link to a file elsewhere, and not read',
    (path) => {
      const root = contentFolder({ ...usual, 'contenders/y.yaml': '', 'inbox/y.csv': '' });
      const elsewhere = contentFolder({ secret: 'label: secret' });
      symlinkSync(join(elsewhere, 'secret'), join(root, path));
      expect(found(root).filter((problem) => problem.endsWith(path))).toEqual([
        `error folder-is-link ${path}`,
      ]);
      expect(loadSite(root).waiting).toEqual(['y.csv']);
    },
  );

  test('all reports as a link', () => {
    const root = contentFolder({ 'shop.yaml': shop });
    symlinkSync(join(contentFolder(usual), 'reports'), join(root, 'reports'));
    expect(found(root)).toContain('error folder-is-link reports');
  });

  test('a report or a session beside the folders of the reports', () => {
    const root = contentFolder({ ...usual, 'reports/shots.csv': twoHeadsCsv, 'reports/new.md': 'x' });
    expect(found(root)).toEqual(
      expect.arrayContaining([
        'warning file-outside-report reports/shots.csv',
        'warning file-outside-report reports/new.md',
      ]),
    );
    expect(found(contentFolder(usual))).toEqual([]);
  });
});

describe('shown as text', () => {
  const nasty = `<script>alert(1)</script>&amp;"'`;
  const label = `'${nasty.replaceAll("'", "''")}'`;
  const [report] = loadSite(
    contentFolder({
      ...usual,
      ...labelled(label),
      'shop.yaml': `name: ${label}\naddress: https://example.test/\n`,
    }),
  ).reports;

  test('markup in a name: charts stay well-formed and hold no element of it', () => {
    if (report === undefined) throw new Error('The report was refused.');
    const { offered } = kitOf(report);
    expect(offered.length).toBeGreaterThan(2);
    for (const { figure } of offered) {
      const svg = exportedSvg(report, figure);
      // The renderer's parser is strict: it throws on XML that is not well-formed.
      expect(drawPixels(svg, 300).width).toBe(300);
      expect(svg).not.toMatch(/<script/i);
      expect(svg).toContain('&lt;script&gt;');
    }
  });

  test('a name that is read from the right, with its mark, stays as typed, in charts that are well-formed', () => {
    const [own] = loadSite(contentFolder({ ...usual, ...labelled('"\u05E8\u05D0\u05E9\u200F 9"') })).reports;
    if (own === undefined) throw new Error('The report was refused.');
    const { offered } = kitOf(own);
    const [first] = offered;
    if (first === undefined) throw new Error('No chart is offered.');
    const svg = exportedSvg(own, first.figure);
    expect(drawPixels(svg, 300).width).toBe(300);
    expect(svg).toContain('\u05E8\u05D0\u05E9\u200F 9');
    expect(shotsCsv(own)).toContain('\u05E8\u05D0\u05E9\u200F 9');
  });

  test('a club whose name holds a control character in the file is the contender of that name without it', () => {
    const [own] = loadSite(
      contentFolder({ ...usual, 'reports/two/shots.csv': twoHeadsCsv.replaceAll('Alder', 'Al\u0007der') }),
    ).reports;
    expect(own?.session.shots.filter(({ contender }) => contender === 'alder')).toHaveLength(6);
  });

  test.each(['=1+1', '+1-1', '-1+2', '@sum(a1)', '＝1+1'])(
    'a name %s is no formula in the table of shots (OWASP, CSV injection)',
    (name) => {
      const [own] = loadSite(contentFolder({ ...usual, ...labelled(`'${name}'`) })).reports;
      if (own === undefined) throw new Error('The report was refused.');
      expect(shotsCsv(own).split('\r\n')[1]).toContain(`,'${name},`);
    },
  );
});
