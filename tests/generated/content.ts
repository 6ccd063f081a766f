import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { normal, shuffled, uniform } from '../demo/random.ts';

const labels = ['Alder', 'Birch', 'Cedar', 'Dogwood', 'Elm', 'Fairway wood'];
const orders = ['rounds', 'rounds', 'rounds', 'spells', 'one-after-another', 'mixed', 'not-kept'] as const;

/** One generated test: what is compared, by how many golfers, in which order, and how far apart things truly are. */
interface Drawn {
  readonly slug: string;
  readonly things: readonly string[];
  readonly golfers: number;
  readonly order: (typeof orders)[number];
  readonly shots: number;
  readonly second: 'spin_rate' | 'smash' | 'descent_angle' | null;
  readonly better: 'more' | 'less' | null;
  readonly leftOut: boolean;
  readonly seed: number;
}

function drawn(index: number): Drawn {
  const next = uniform(7_000 + index);
  const pick = <Item>(items: readonly Item[]): Item => {
    const item = items[Math.floor(next() * items.length)];
    if (item === undefined) throw new Error('nothing to pick from');
    return item;
  };
  const golfers = index % 3 === 0 ? 1 + (index % 8) : 1;
  return {
    slug: `generated-${index}`,
    things: labels.slice(0, 2 + Math.floor(next() * 4)),
    golfers,
    order: pick(orders),
    shots: pick(golfers > 5 ? [5, 6] : [4, 5, 7, 8, 12, 12, 20]),
    second: pick([null, null, 'spin_rate', 'smash', 'descent_angle']),
    better: pick([null, 'more', 'less']),
    leftOut: golfers === 1 && next() < 0.2,
    seed: 90_000 + index,
  };
}

/** Contenders in the order of hitting, one golfer's shots. */
function sequence({ things, shots, order }: Drawn, next: () => number): readonly string[] {
  const repeat = (count: number, of: () => readonly string[]): readonly string[] =>
    Array.from({ length: count }, of).flat();
  const spell = Math.max(2, Math.floor(shots / 3));
  switch (order) {
    case 'rounds':
    case 'not-kept':
      return repeat(shots, () => shuffled(things, next));
    case 'spells':
      return repeat(Math.ceil(shots / spell), () => things.flatMap((thing) => repeat(spell, () => [thing])));
    case 'one-after-another':
      return things.flatMap((thing) => repeat(shots, () => [thing]));
    case 'mixed':
      return shuffled(
        things.flatMap((thing) => repeat(shots, () => [thing])),
        next,
      );
  }
}

function csv(one: Drawn): string {
  const next = uniform(one.seed);
  const gauss = normal(next);
  // From no difference at all to far more than what matters; some tests of steady hitters, some of wild ones.
  const reach = [0, 0, 3, 8, 16][Math.floor(next() * 5)] ?? 0;
  const sd = [1.5, 4, 7, 12][Math.floor(next() * 4)] ?? 7;
  const truth = new Map(one.things.map((thing) => [thing, reach * gauss()]));
  const rows: string[] = [];
  for (let golfer = 1; golfer <= one.golfers; golfer++) {
    const speed = 80 + 4 * golfer;
    for (const thing of sequence(one, next)) {
      const carry = 180 + 6 * golfer + (truth.get(thing) ?? 0) + sd * gauss();
      rows.push(
        [
          rows.length + 1,
          `p${golfer}`,
          thing,
          (speed + gauss()).toFixed(1),
          carry.toFixed(1),
          (9 * gauss()).toFixed(1),
          (3200 + 20 * (truth.get(thing) ?? 0) + 250 * gauss()).toFixed(0),
          (1.44 + 0.002 * (truth.get(thing) ?? 0) + 0.02 * gauss()).toFixed(2),
          (38 + 0.3 * (truth.get(thing) ?? 0) + 2 * gauss()).toFixed(1),
        ].join(','),
      );
    }
  }
  return [
    'Shot,Golfer,Club,Club Speed (mph),Carry (yd),Side (yd),Spin Rate (rpm),Smash,Descent Angle (deg)',
    ...rows,
    '',
  ].join('\n');
}

function front(one: Drawn): string {
  const primary = one.second === null ? 'carry' : `[carry, ${one.second}]`;
  const golfers = Array.from(
    { length: one.golfers },
    (_, at) => `  ${one.slug}-${at + 1}: {role: customer, hand: right, consent: 'yes', match: p${at + 1}}`,
  );
  return [
    '---',
    `title: Generated test ${one.slug}`,
    'date: 2026-04-11',
    'invented_data: yes',
    'question: Does any of these carry farther?',
    'varied: head',
    'contenders:',
    ...one.things.map(
      (label, at) => `  ${'abcdef'.charAt(at)}: {label: ${label}, supplied_by: our stock, sold_here: new}`,
    ),
    `primary: ${primary}`,
    ...(one.better === null || one.second !== 'spin_rate' ? [] : [`better: {spin_rate: ${one.better}}`]),
    'session: shots.csv',
    ...(one.order === 'not-kept' ? ['rows: not-in-hit-order'] : []),
    'hitters:',
    ...golfers,
    ...(one.leftOut
      ? ['exclusions:', '  - {contender: a, shot: 2, rule: looked up, reason: the golfer looked up}'].filter(
          () => csv(one).split('\n')[2]?.includes(',Alder,') === true,
        )
      : []),
    'interests: {paid_by: the shop, commission_or_gifts: none, seen_before: nobody outside the shop}',
    'status: published',
    '---',
    '',
  ].join('\n');
}

/**
 * A content folder of generated tests: two to six things, one to eight golfers, every order, one or two main measures,
 * from no difference to a large one. Every shot is invented; the same in every run.
 *
 * @returns its root
 */
export function generatedContent(count: number, units: 'yards' | 'metres'): string {
  const root = mkdtempSync(join(tmpdir(), 'straightface-generated-'));
  const write = (path: string, text: string): void => {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  };
  write(
    'shop.yaml',
    `name: Example Golf Workshop\naddress: https://shop.example.test\ncontact: corrections@example.test\ndefaults: {units: ${units}}\n`,
  );
  for (let index = 0; index < count; index++) {
    const one = drawn(index);
    write(`reports/${one.slug}/report.md`, front(one));
    write(`reports/${one.slug}/shots.csv`, csv(one));
  }
  return root;
}
