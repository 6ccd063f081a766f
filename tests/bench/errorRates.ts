/**
 * Error rates of our own judgements, by simulation with a seeded generator. Run by hand:
 *
 *   node tests/bench/errorRates.ts [trials] [table ...]
 *
 * Writes src/charts/errorRates.json; the method page prints it. Tables that are not named stay as they are there; their
 * rows have streams of their own, so that it is all one. 20,000 trials take some fifteen minutes on one core. The standard
 * error of a rate near 5 % is then 0.15 %; 0.35 % for `judged`, of which every fifth as many are judged as in a report.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { format } from 'prettier';
import { leastGap } from '../../src/stats/power.ts';
import { seededRandom, type Random } from '../../src/stats/random.ts';
import { judgedRates } from './simulation/judgedRates.ts';
import { eightHitters, type Interaction } from './simulation/hitters.ts';
import { oneHitter } from './simulation/oneHitter.ts';
import { orderEffect } from './simulation/order.ts';
import { pooledReports } from './simulation/pooledReports.ts';
import { promisedPower } from './simulation/promisedPower.ts';
import { CARRY_SD, MATTERS } from './simulation/shots.ts';
import { whatToExpect } from './simulation/whatToExpect.ts';

const [, , asked = '20000', ...named] = process.argv;
const trials = Number(asked);
const sessions = Math.round(trials / 5);
const seed = 'straightface error rates 1';
const started = performance.now();

/** Every row has a stream of its own, so that a new row changes no other. */
function stream(...name: readonly (string | number)[]): Random {
  return seededRandom([seed, ...name].join(' / '));
}

function progress<T>(table: string, rows: readonly T[]): readonly T[] {
  console.log(`${table}: ${rows.length} rows, ${((performance.now() - started) / 1000).toFixed(0)} s`);
  return rows;
}

const contenders = [2, 3, 4, 5, 6];

const normal = () =>
  contenders.flatMap((k) =>
    [5, 8, 12, 20].flatMap((n) =>
      (['equal', '2:1'] as const).map((spreads) =>
        oneHitter(new Array<number>(k).fill(n), spreads, 'normal', trials, stream('one', k, n, spreads)),
      ),
    ),
  );
const unequal = () =>
  [
    [5, 12],
    [6, 9, 12],
    [5, 8, 12, 20],
    [20, 12, 8, 5],
  ].flatMap((shots) =>
    (['equal', '2:1'] as const).map((spreads) =>
      oneHitter(shots, spreads, 'normal', trials, stream('one', ...shots, spreads)),
    ),
  );
const mishits = () =>
  [2, 4].flatMap((k) =>
    [5, 12, 20].map((n) =>
      oneHitter(new Array<number>(k).fill(n), 'equal', 'with mishits', trials, stream('mishits', k, n)),
    ),
  );
const oneHitterRows = () => progress('one hitter', [...normal(), ...unequal(), ...mishits()]);

const powerRows = () =>
  progress(
    'power',
    [2, 4, 6].flatMap((k) =>
      [5, 8, 12, 20].flatMap((n) =>
        [0.5, 0.8].map((chance) => {
          const gap = leastGap({ n, k, level: 0.95 }, chance);
          return promisedPower(k, n, gap, trials, stream('power', k, n, chance));
        }),
      ),
    ),
  );

const expectRows = () =>
  progress(
    'what to expect',
    [5, 12, 20].flatMap((n) =>
      [0, MATTERS, 2 * MATTERS].map((gap) => whatToExpect(n, gap, trials, stream('expect', n, gap))),
    ),
  );

const orderRows = () =>
  progress(
    'order',
    [
      [2, 5],
      [2, 20],
      [4, 12],
      [4, 20],
    ].flatMap(([k = 2, n = 5]) =>
      (['rotation', 'one after another'] as const).flatMap((order) =>
        [
          [0, 0],
          [8, 0],
          [0, 0.2],
          [0, 0.4],
        ].map(([drift = 0, correlation = 0]) =>
          orderEffect(
            order,
            k,
            n,
            drift,
            correlation,
            trials / 4,
            stream('order', order, k, n, drift, correlation),
          ),
        ),
      ),
    ),
  );

/** A hitter's mean of 8 shots has a standard error of 2.8 yd: 6 yd is a strong interaction, 12 an extreme one. */
const interactions: readonly Interaction[] = [
  { sd: 0, of: 'every contender' },
  { sd: 6, of: 'every contender' },
  { sd: 6, of: 'one contender' },
  { sd: 12, of: 'one contender' },
];
const hitterRows = () =>
  progress(
    'eight hitters',
    contenders.flatMap((k) =>
      interactions.map((interaction) =>
        eightHitters(8, k, 8, interaction, trials, stream('hitters', k, interaction.sd, interaction.of)),
      ),
    ),
  );

const poolRows = () =>
  progress(
    'pooling',
    [
      [12, 12, 12],
      [5, 5, 40],
      [5, 8, 12, 20, 40],
    ].flatMap((shots) =>
      [0, 4].map((between) => pooledReports(shots, between, trials, stream('pool', ...shots, between))),
    ),
  );

const file = join(import.meta.dirname, '../../src/charts/errorRates.json');
const tables = {
  oneHitter: oneHitterRows,
  power: powerRows,
  whatToExpect: expectRows,
  order: orderRows,
  eightHitters: hitterRows,
  pooling: poolRows,
  judged: () =>
    judgedRates(sessions, seed, (row) => {
      progress(`judged, ${row}`, [row]);
    }),
};
const unknown = named.filter((name) => !Object.hasOwn(tables, name));
if (unknown.length > 0) throw new Error(`no table ${unknown.join(', ')}: ${Object.keys(tables).join(', ')}`);
const kept: unknown = named.length === 0 ? {} : JSON.parse(readFileSync(file, 'utf8'));
const worked = Object.entries(tables).flatMap(([name, rows]) =>
  named.length === 0 || named.includes(name) ? [[name, rows()] as const] : [],
);
const report = {
  ...(kept as object),
  seed,
  trials,
  carrySd: CARRY_SD,
  matters: MATTERS,
  level: 95,
  ...Object.fromEntries(worked),
};
const text = await format(JSON.stringify(report), { parser: 'json', printWidth: 110 });
writeFileSync(file, text);
