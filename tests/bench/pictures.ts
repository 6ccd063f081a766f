// Processor time of every picture of a report, all forms in both systems of units, stage by stage; the first round warms up.
// `node tests/bench/pictures.ts [content]`
import { resolve } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import { encodePng } from '../../src/kit/encodePng.ts';
import { onClearGround } from '../../src/kit/clearGround.ts';
import { chartForms, leadForms, type ExportForm } from '../../src/kit/exportForms.ts';
import { fewColours } from '../../src/kit/fewColours.ts';
import { kitOf } from '../../src/kit/kitOf.ts';
import { pictureOf, type Picture } from '../../src/kit/pictureOf.ts';
import type { Report } from '../../src/kit/report.ts';
import { drawPixels, giveBack } from '../../src/site/drawPixels.ts';
import { portableSvg } from '../../src/site/portableSvg.ts';
import { printedSvg } from '../../src/site/printedSvg.ts';
import { loadSite } from '../../src/site/siteContent.ts';
import { reportInOtherUnits } from '../../src/site/toldTwice.ts';

/** Processor time, ms, of something and what it made. */
async function timed<Made>(make: () => Made | Promise<Made>): Promise<readonly [made: Made, ms: number]> {
  const before = process.cpuUsage();
  const made = await make();
  const { user, system } = process.cpuUsage(before);
  return [made, (user + system) / 1000];
}

const stages = ['set', 'drawn', 'few colours', 'encoded', 'SVG file'] as const;
type Stages = Record<(typeof stages)[number], number>;

async function picture(make: () => Picture): Promise<Stages> {
  const [{ svg, made }, set] = await timed(make);
  if (made.kind === 'print') {
    const [, file] = await timed(() => printedSvg(svg, made.width));
    return { set, drawn: 0, 'few colours': 0, encoded: 0, 'SVG file': file };
  }
  const [[bare, pixels], drawn] = await timed(() => {
    const picture = drawPixels(svg, made.width);
    return [picture, made.on === null ? picture : onClearGround(picture, made.on)] as const;
  });
  const [, few] = await timed(() => fewColours(pixels));
  const [, encoded] = await timed(() => encodePng(pixels));
  giveBack(bare);
  giveBack(pixels);
  const [, file] = await timed(() => portableSvg(svg));
  await setImmediate();
  return { set, drawn, 'few colours': few, encoded: encoded - few, 'SVG file': file };
}

interface Timed {
  readonly form: ExportForm;
  readonly ms: Stages;
}

async function pictures(report: Report): Promise<readonly Timed[]> {
  const made: Timed[] = [];
  for (const told of [report, reportInOtherUnits(report)])
    for (const [at, { figure }] of kitOf(told).offered.entries())
      for (const form of at === 0 ? [...chartForms, ...leadForms] : chartForms)
        made.push({ form, ms: await picture(() => pictureOf(told, figure, form)) });
  return made;
}

const totalOf = ({ ms }: Timed): number => stages.reduce((sum, stage) => sum + ms[stage], 0);
const meanOf = (values: readonly number[]): string =>
  (values.reduce((sum, value) => sum + value, 0) / values.length).toFixed(1);

const { reports } = loadSite(resolve(process.argv[2] ?? 'content'));
for (const round of ['first', 'second']) {
  const each = new Map<string, readonly Timed[]>();
  for (const report of reports) each.set(report.source.slug, await pictures(report));
  const all = [...each.values()].flat();
  console.log(`${round} round, ${all.length} pictures, ms of a processor each:`);
  for (const stage of stages) console.log(`  ${stage}: ${meanOf(all.map(({ ms }) => ms[stage]))}`);
  for (const form of [...chartForms, ...leadForms])
    console.log(`  ${form}, all stages: ${meanOf(all.filter((one) => one.form === form).map(totalOf))}`);
  for (const [slug, own] of each) {
    const total = own.reduce((sum, one) => sum + totalOf(one), 0);
    console.log(`  ${slug}: ${own.length} pictures, ${(total / 1000).toFixed(2)} s`);
  }
}
