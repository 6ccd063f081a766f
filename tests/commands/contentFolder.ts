import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

/** A content folder somewhere else on the disk, with the files given by path; removed with the temporary folder. */
export function contentFolder(files: Readonly<Record<string, string | Uint8Array>>): string {
  const root = mkdtempSync(join(tmpdir(), 'straightface-'));
  for (const [path, content] of Object.entries(files)) {
    const file = join(root, path);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, content);
  }
  return root;
}

/** Two invented heads, six shots each in turn; `change` may edit the front matter, line by line. */
export function twoHeads(change: (front: string) => string = (front) => front): string {
  return change(`---
title: Two heads
date: 2026-05-02
question: Does the new head carry farther than the old one?
varied: head
contenders:
  alder: {label: Alder, supplied_by: our stock, sold_here: new}
  birch: {label: Birch, supplied_by: our stock, sold_here: used}
primary: carry
matters: {carry: 5 yd}
session: shots.csv
hitters: {one: {role: staff fitter, hand: right, consent: yes}}
interests: {paid_by: the shop, commission_or_gifts: none, seen_before: nobody outside the shop}
invented_data: yes
status: published
---

Six turns in one morning.
`);
}

export const shop = 'name: Example Golf Workshop\n';

const carries = [231.2, 226.1, 235.9, 224.4, 228.7, 219.8, 233.3, 227.5, 230.1, 221.6, 236.4, 229.9];

/** The shots of `twoHeads`: carry in yards, heads in turn. */
export const twoHeadsCsv = [
  'Shot,Head,Carry (yd)',
  ...carries.map((carry, index) => `${index + 1},${index % 2 === 0 ? 'Alder' : 'Birch'},${carry}`),
  '',
].join('\n');
