/**
 * Pages on a phone, in the browser of the tests: a report, the front page of 300, and a report of 600 shots, beside the
 * same report by R Markdown and by Observable Framework. Run by hand, on a machine that does nothing else; the number is
 * how often each page is visited, and what is printed are medians; fewer reports than 300 may be named after it:
 *
 *   node tests/bench/page.ts 9
 *
 * A peer that is not there is left out. R Markdown: `apt-get install r-base-core r-cran-rmarkdown r-cran-ggplot2 pandoc`.
 * The framework: `npm install --prefix FOLDER @observablehq/framework`, and FRAMEWORK=FOLDER before the command.
 *
 * What is equal: the shots, an answer in a sentence, six metrics with a plot and with tables of means, an analysis of
 * variance and all pairs. What is not: ours has more charts, each in two widths, all words in two systems of units, and
 * four web fonts, which are counted, and again left out, below; the framework's plots answer to the pointer.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { launch } from '../site/browser.ts';
import { writeBenchContent } from './content.ts';
import { writeLargeContent } from './largeContent.ts';
import { buildFrameworkPeer } from './page/frameworkPeer.ts';
import { visit, type Visit, type Watched } from './page/slowPhone.ts';
import { zippedHost } from './page/zippedHost.ts';

interface Measured extends Omit<Watched, 'address'> {
  readonly name: string;
  readonly folder: string;
  readonly path: string;
  readonly isPeer: boolean;
}

const visits = Number(process.argv[2] ?? 9);
const reports = Number(process.argv[3] ?? 300);
const work = resolve('.cache/bench-page');
const content = join(work, 'content');
const site = join(work, 'site');
const report = '/reports/four-heads-0001/';
const shots = join(content, report, 'shots.csv');

function ours(): readonly Measured[] {
  rmSync(content, { recursive: true, force: true });
  writeBenchContent(content, reports - 1);
  const design = { rows: 600, columns: 'twelve', contenders: 4, hitters: 1, order: 'rounds' } as const;
  writeLargeContent(content, design, 'All in one morning.');
  execFileSync(process.execPath, ['tests/bench/buildOnce.ts'], {
    env: {
      ...process.env,
      CONTENT_DIR: content,
      OUT_DIR: site,
      CACHE_DIR: join(work, 'cache'),
      ASTRO_TELEMETRY_DISABLED: '1',
    },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  const found = { folder: site, isPeer: false, answer: '.answer-text', chart: '#apart svg' };
  return [
    { ...found, name: 'a report', path: report },
    { ...found, name: '600 shots', path: '/reports/very-many/' },
    { ...found, name: `front page of ${reports}`, path: '/', answer: '.report-line .finding', chart: null },
  ];
}

function rMarkdown(): readonly Measured[] {
  const folder = join(work, 'r-markdown');
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  try {
    const said = execFileSync('Rscript', ['tests/bench/rMarkdown/render.R', content, '3', folder], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    console.log(said.trim());
  } catch {
    console.log('R Markdown is not installed here (R, rmarkdown, ggplot2, pandoc), and is left out.');
    return [];
  }
  renameSync(join(folder, 'four-heads-0001.html'), join(folder, 'index.html'));
  return [{ name: 'R Markdown', folder, path: '/', isPeer: true, answer: '#answer', chart: 'img' }];
}

function framework(): readonly Measured[] {
  const installed = process.env['FRAMEWORK'] ?? '';
  if (!existsSync(join(installed, 'node_modules/@observablehq/framework'))) {
    console.log('Observable Framework is not in the folder FRAMEWORK, and is left out.');
    return [];
  }
  const folder = buildFrameworkPeer(resolve(installed), join(work, 'framework'), shots);
  return [{ name: 'Framework', folder, path: '/', isPeer: true, answer: '#answer', chart: '.plot svg' }];
}

/** A page that never showed it counts as slowest. */
function median(values: readonly (number | null)[]): number {
  const sorted = values.map((value) => value ?? Infinity).toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? NaN;
}

const seconds = (ms: number): string => (Number.isFinite(ms) ? `${(ms / 1000).toFixed(2)} s` : 'never');

/** Visits every page in turn, so that what else the machine does meets all alike; the first round warms up. */
async function visited(pages: readonly Measured[]): Promise<ReadonlyMap<Measured, readonly Visit[]>> {
  const browser = await launch();
  const hosts = await Promise.all(pages.map(({ folder }) => zippedHost(folder)));
  const made = new Map<Measured, Visit[]>(pages.map((page) => [page, []]));
  for (let round = 0; round <= visits; round += 1)
    for (const [at, page] of pages.entries()) {
      const one = await visit(browser, { ...page, address: `${hosts[at]?.origin}${page.path}` });
      if (round > 0) made.get(page)?.push(one);
    }
  await browser.close();
  for (const host of hosts) host.close();
  return made;
}

const pages = [...ours(), ...rMarkdown(), ...framework()];
const made = await visited(pages);
const middle = (page: Measured, what: keyof Visit): number =>
  median((made.get(page) ?? []).map((one) => one[what]));

const columns = ['bytes', 'of fonts', 'requests', 'first paint', 'answer', 'lead chart', 'loaded', 'shift'];
console.log([''.padEnd(18), ...columns.map((column) => column.padStart(11))].join(' '));
for (const page of pages) {
  const cells = [
    ...(['bytes', 'fontBytes'] as const).map((what) => `${(middle(page, what) / 1000).toFixed(1)} kB`),
    String(middle(page, 'requests')),
    seconds(middle(page, 'firstPaint')),
    seconds(middle(page, 'answer')),
    page.chart === null ? 'none' : seconds(middle(page, 'chart')),
    seconds(middle(page, 'loaded')),
    Math.max(...(made.get(page) ?? []).map(({ shift }) => shift)).toFixed(3),
  ];
  console.log([page.name.padEnd(18), ...cells.map((cell) => cell.padStart(11))].join(' '));
}

const [own] = pages;
for (const peer of pages.filter(({ isPeer }) => isPeer)) {
  const times = (a: number, b: number): string => `${(a / b).toFixed(1)} times`;
  const [bytes, fontBytes] =
    own === undefined ? [NaN, NaN] : [middle(own, 'bytes'), middle(own, 'fontBytes')];
  const theirs = middle(peer, 'bytes') - middle(peer, 'fontBytes');
  console.log(
    `${peer.name}: ${times(middle(peer, 'bytes'), bytes)} our bytes over the wire on the first page of a visit, ` +
      `${times(theirs, bytes - fontBytes)} without fonts, which a reader gets once for all pages`,
  );
}
