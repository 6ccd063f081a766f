import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { classicAnova } from '../../../src/stats/classicAnova.ts';
import { describe } from '../../../src/stats/describe.ts';
import { gamesHowell } from '../../../src/stats/gamesHowell.ts';
import { moments } from '../../../src/stats/moments.ts';

/** The columns of `benchShots()` that the peers show, the main measure first. */
const metrics = ['Carry', 'Ball Speed', 'Launch Angle', 'Spin Rate', 'Side', 'Club Speed'] as const;

interface Shot {
  readonly head: string;
  readonly value: number;
}

/**
 * The same report by Observable Framework as its guide has it: the answer and all tables are worked out beforehand and
 * stand in the page, and six plots are drawn in the browser by Plot. Its web fonts, which it would fetch from elsewhere, are
 * left out, and so are its sidebar and pager.
 *
 * @param installed the folder into which it was installed
 * @param folder where project and site are made, below this project, so that Plot is found
 * @returns the folder of the built site
 */
export function buildFrameworkPeer(installed: string, folder: string, shotsFile: string): string {
  const source = join(folder, 'src');
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(source, { recursive: true });
  const columns = readColumns(shotsFile);
  writeFileSync(join(source, 'shots.json'), JSON.stringify(Object.fromEntries(columns)));
  writeFileSync(join(source, 'index.md'), page(columns));
  writeFileSync(
    join(folder, 'observablehq.config.js'),
    'export default { root: "src", title: "Four heads", globalStylesheets: [], sidebar: false, toc: false, pager: false };\n',
  );
  execFileSync(process.execPath, [join(installed, 'node_modules/.bin/observable'), 'build'], {
    cwd: folder,
    env: { ...process.env, OBSERVABLE_TELEMETRY_DISABLE: 'true' },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  return join(folder, 'dist');
}

function readColumns(file: string): ReadonlyMap<string, readonly Shot[]> {
  const [headings = [], ...rows] = readFileSync(file, 'utf8')
    .trim()
    .split('\n')
    .map((line) => line.split(','));
  const head = headings.indexOf('Head');
  return new Map(
    metrics.map((metric) => {
      const column = headings.findIndex((heading) => heading.startsWith(`${metric} (`));
      return [metric, rows.map((row) => ({ head: row[head] ?? '', value: Number(row[column]) }))];
    }),
  );
}

function page(columns: ReadonlyMap<string, readonly Shot[]>): string {
  const sections = [...columns].map(([metric, shots]) => section(metric, shots));
  return `# Four heads

${answer(columns.get('Carry') ?? [])}

\`\`\`js
import * as Plot from "@observablehq/plot";
const shots = FileAttachment("shots.json").json();
\`\`\`

${sections.join('\n')}`;
}

function answer(carries: readonly Shot[]): string {
  const heads = headsOf(carries);
  const gaps = gamesHowell(valuesByHead(carries).map(moments), 0.95);
  const widest = gaps.toSorted((a, b) => Math.abs(b.estimate) - Math.abs(a.estimate))[0];
  if (widest === undefined) throw new Error('There are no two heads.');
  const [from, to] = widest.ci;
  return `<p id="answer">The widest difference in carry: ${heads[widest.a]} and ${heads[widest.b]}, ${widest.estimate.toFixed(0)} yards, likely ${from.toFixed(0)} to ${to.toFixed(0)}.</p>`;
}

function section(metric: string, shots: readonly Shot[]): string {
  const heads = headsOf(shots);
  const groups = valuesByHead(shots);
  const { statistic, p } = classicAnova(groups);
  const means = groups.map((values, at) => {
    const { mean, sd, n } = describe(values);
    return `| ${heads[at]} | ${mean.toFixed(1)} | ${sd.toFixed(1)} | ${n} |`;
  });
  const gaps = gamesHowell(groups.map(moments), 0.95).map(
    ({ a, b, estimate, ci: [from, to], p }) =>
      `| ${heads[a]} and ${heads[b]} | ${[estimate, from, to, p].map((value) => value.toFixed(4)).join(' | ')} |`,
  );
  const plot = `Plot.plot({x: {label: null}, y: {label: ${JSON.stringify(metric)}, grid: true}, marks: [Plot.boxY(shots[${JSON.stringify(metric)}], {x: "head", y: "value", r: 0}), Plot.dot(shots[${JSON.stringify(metric)}], {x: "head", y: "value"})]})`;
  return `## ${metric}

<div class="plot">\${${plot}}</div>

| Head | Mean | sd | n |
| --- | ---: | ---: | ---: |
${means.join('\n')}

Analysis of variance: F ${statistic.toFixed(4)}, p ${p.toFixed(4)}.

| Pair | Difference | from | to | p |
| --- | ---: | ---: | ---: | ---: |
${gaps.join('\n')}
`;
}

const headsOf = (shots: readonly Shot[]): readonly string[] =>
  [...new Set(shots.map(({ head }) => head))].toSorted();

const valuesByHead = (shots: readonly Shot[]): readonly (readonly number[])[] =>
  headsOf(shots).map((own) => shots.filter(({ head }) => head === own).map(({ value }) => value));
