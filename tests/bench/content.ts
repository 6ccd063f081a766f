import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { seededRandom, shuffled } from '../../src/stats/random.ts';

const names = ['Alder', 'Birch', 'Cedar', 'Damson'];

const headings =
  'Shot,Round,Head,Club Speed (mph),Ball Speed (mph),Launch Angle (deg),Launch Direction (deg),Spin Rate (rpm),Spin Axis (deg),Carry (yd),Side (yd)';

/** The shots of one invented report: four heads, twelve rounds, one golfer; every number follows from `seed`. */
export function benchShots(seed: string): string {
  const random = seededRandom(`bench ${seed}`);
  const around = (mean: number, sd: number): number => mean + sd * random.normal();
  const rows = Array.from({ length: 12 }, () => shuffled(names, random)).flatMap((heads, round) =>
    heads.map((head) => {
      const club = around(96, 1);
      const ball = 1.43 * club + around(1.2 * names.indexOf(head), 0.8);
      const axis = around(0, 5);
      const numbers = [
        club.toFixed(1),
        ball.toFixed(1),
        around(12, 1).toFixed(1),
        around(0, 1.5).toFixed(1),
        around(2600, 250).toFixed(0),
        axis.toFixed(1),
        (1.65 * ball + around(0, 2)).toFixed(1),
        (1.5 * axis + around(0, 8)).toFixed(1),
      ];
      return [round + 1, head, ...numbers].join(',');
    }),
  );
  return [headings, ...rows.map((row, index) => `${index + 1},${row}`), ''].join('\n');
}

/** Ten reports in a row compare the same four builds, so that pages across reports have something to show. */
function report(index: number): string {
  const family = Math.floor(index / 10);
  const day = new Date(Date.UTC(2020, 0, 1 + index)).toISOString().slice(0, 10);
  const contenders = names.map(
    (name, place) =>
      `  ${name.toLowerCase()}-${family}: {label: ${name}, supplied_by: our stock, sold_here: new, ` +
      `price: {amount: ${300 + 40 * place}, currency: GBP, on: ${day}}, build: {head: '${name} ${family}'}}`,
  );
  return `---
title: Four heads, test ${index + 1}
date: ${day}
question: Does any of the four heads carry farther than the others?
varied: head
held: {shaft: one 55 g shaft, length: 45.5 in}
contenders:
${contenders.join('\n')}
primary: carry
matters: {carry: 5 yd}
session: shots.csv
hitters: {one: {role: staff fitter, hand: right, handicap_band: 6-10, consent: yes}}
conditions: {place: indoors, surface: mat, temperature: 20 °C, altitude: 60 m}
interests: {paid_by: the shop, commission_or_gifts: none, seen_before: nobody outside the shop}
invented_data: yes
status: published
---

Twelve rounds in one morning, the order drawn anew for each. The ball stayed the same.
`;
}

/** Writes report number `index` (from 0) into a content folder. */
export function writeBenchReport(folder: string, index: number): void {
  const own = join(folder, 'reports', `four-heads-${String(index + 1).padStart(4, '0')}`);
  mkdirSync(own, { recursive: true });
  writeFileSync(join(own, 'report.md'), report(index));
  writeFileSync(join(own, 'shots.csv'), benchShots(String(index)));
}

/** A content folder of `count` invented reports with an address, so that every edition is made. */
export function writeBenchContent(folder: string, count: number): void {
  mkdirSync(folder, { recursive: true });
  writeFileSync(
    join(folder, 'shop.yaml'),
    'name: Example Golf Workshop\naddress: https://example.test/\ncontact: corrections@example.test\n',
  );
  for (let index = 0; index < count; index += 1) writeBenchReport(folder, index);
}
