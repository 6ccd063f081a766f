import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { seededRandom, shuffled } from '../../src/stats/random.ts';

const names = ['Alder', 'Birch', 'Cedar', 'Damson', 'Elder', 'Fennel'];

/** How an invented session of very many shots is laid out. */
export interface LargeDesign {
  readonly rows: number;
  /** All that a monitor reads, or the carry alone. */
  readonly columns: 'twelve' | 'carry';
  /** Two to six. */
  readonly contenders: number;
  readonly hitters: number;
  /** The order is drawn for each round, or for each visit of five shots, or is one contender after another. */
  readonly order: 'rounds' | 'visits' | 'one-after-another';
}

const headings = {
  carry: 'Carry (yd)',
  twelve:
    'Club Speed (mph),Ball Speed (mph),Launch Angle (deg),Launch Direction (deg),Spin Rate (rpm),Spin Axis (deg),Carry (yd),Side (yd),Total (yd),Apex (ft),Descent Angle (deg)',
} as const;

/** Shots as a CSV; every number follows from the design. */
export function largeShots(design: LargeDesign): string {
  const { rows, columns, contenders, hitters, order } = design;
  const random = seededRandom(`large ${JSON.stringify(design)}`);
  const around = (mean: number, sd: number): number => mean + sd * random.normal();
  const heads = names.slice(0, contenders);
  const own = Math.floor(rows / hitters);
  const sequences: Readonly<Record<LargeDesign['order'], (shot: number) => string>> = {
    rounds: drawn(1),
    visits: drawn(5),
    'one-after-another': (shot) => heads[Math.floor((shot * contenders) / own)] ?? '',
  };
  function drawn(each: number): (shot: number) => string {
    let round: readonly string[] = [];
    return (shot) => {
      const turn = Math.floor(shot / each);
      if (shot % (each * contenders) === 0) round = shuffled(heads, random);
      return round[turn % contenders] ?? '';
    };
  }
  const lines = [`Golfer,Shot,Head,${headings[columns]}`];
  for (let hitter = 1; hitter <= hitters; hitter += 1) {
    for (let shot = 0; shot < own; shot += 1) {
      const head = sequences[order](shot);
      const club = around(96, 1);
      const ball = 1.43 * club + around(1.2 * names.indexOf(head), 0.8);
      const axis = around(0, 5);
      const carry = 1.65 * ball + around(0, 2);
      const values =
        columns === 'carry'
          ? [carry.toFixed(1)]
          : [
              club.toFixed(1),
              ball.toFixed(1),
              around(12, 1).toFixed(1),
              around(0, 1.5).toFixed(1),
              around(2600, 250).toFixed(0),
              axis.toFixed(1),
              carry.toFixed(1),
              (1.5 * axis + around(0, 8)).toFixed(1),
              (carry + around(18, 4)).toFixed(1),
              around(95, 5).toFixed(0),
              around(40, 2).toFixed(1),
            ];
      lines.push([`G${hitter}`, shot + 1, head, ...values].join(','));
    }
  }
  return [...lines, ''].join('\n');
}

/** Writes a content folder of one report of such a session, its narrative as given. */
export function writeLargeContent(folder: string, design: LargeDesign, narrative: string): void {
  const own = join(folder, 'reports', 'very-many');
  mkdirSync(own, { recursive: true });
  writeFileSync(
    join(folder, 'shop.yaml'),
    'name: Example Golf Workshop\naddress: https://example.test/\ncontact: corrections@example.test\n',
  );
  writeFileSync(join(own, 'report.md'), report(design, narrative));
  writeFileSync(join(own, 'shots.csv'), largeShots(design));
}

function report({ contenders, hitters }: LargeDesign, narrative: string): string {
  const builds = names
    .slice(0, contenders)
    .map((name) => `  ${name.toLowerCase()}: {label: ${name}, supplied_by: our stock, sold_here: new}`);
  const golfers = Array.from(
    { length: hitters },
    (_, hitter) =>
      `  g${hitter + 1}: {role: staff fitter, hand: right, handicap_band: 6-10, consent: yes, match: G${hitter + 1}}`,
  );
  return `---
title: Very many shots
date: 2026-04-11
question: Does any of the heads carry farther than the others?
varied: head
held: {shaft: one 55 g shaft, length: 45.5 in}
contenders:
${builds.join('\n')}
primary: carry
matters: {carry: 5 yd}
session: shots.csv
hitters:
${golfers.join('\n')}
conditions: {place: indoors, surface: mat, temperature: 20 °C, altitude: 60 m}
interests: {paid_by: the shop, commission_or_gifts: none, seen_before: nobody outside the shop}
invented_data: yes
status: published
---

${narrative}
`;
}
