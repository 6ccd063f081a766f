import { describe, expect, test } from 'vitest';
import { assembleSession } from '../../src/intake/assembleSession.ts';
import { defineSource } from '../../src/intake/authored/source.ts';
import { nothingShared } from '../../src/intake/authored/shared.ts';
import { readShotFile } from '../../src/intake/shots/readShotFile.ts';
import { reportText } from '../findings/reportOf.ts';

const yard = 0.9144;

type Files = Readonly<Record<string, string>>;

/** The session of a report of Alder and Birch with these files beside it, in this order. */
function joined(files: Files, front: Readonly<Record<string, string | null>> = {}) {
  const { source, problems } = defineSource({
    slug: 'invented',
    file: 'reports/invented/report.md',
    text: reportText({
      front: {
        contenders:
          '{alder: {label: Alder 9°, match: [A9], supplied_by: us, sold_here: new}, birch: {label: Birch, supplied_by: us, sold_here: new}}',
        session: `[${Object.keys(files).join(', ')}]`,
        ...front,
      },
    }),
    files: [],
    ...nothingShared,
  });
  if (source === null)
    throw new Error(problems.map(({ kind, found }) => `${kind}: ${found ?? ''}`).join('\n'));
  const read = Object.entries(files).map(([name, csv]) =>
    readShotFile(`reports/invented/${name}`, new TextEncoder().encode(csv), {
      columns: source.front.columns,
      varied: source.front.varied,
    }),
  );
  const { session, problems: found } = assembleSession(source, read);
  return {
    session,
    carries: session.shots.map(({ contender, values }) => [
      contender,
      Math.round((values.carry ?? 0) / yard),
    ]),
    problems: found.map(({ kind, file, line, found: what, cure }) => ({ kind, file, line, what, cure })),
  };
}

const head = 'Club,Carry (yd)';

describe('rows of a session', () => {
  test('get their contender by id, label or a name under match, in any casing', () => {
    const csv = `${head}\nalder,200\nALDER 9°,201\nA9,202\nbirch,203\n`;
    expect(joined({ 'shots.csv': csv }).carries).toEqual([
      ['alder', 200],
      ['alder', 201],
      ['alder', 202],
      ['birch', 203],
    ]);
  });

  test('of a file that names nothing are of the contender in its name', () => {
    const { carries, problems } = joined({
      'alder.csv': 'Carry (yd)\n200\n201\n',
      'birch.csv': 'Carry (yd)\n190\n191\n',
    });
    expect(carries).toEqual([
      ['alder', 200],
      ['alder', 201],
      ['birch', 190],
      ['birch', 191],
    ]);
    expect(problems).toEqual([]);
  });

  test('stand in the order of the files, and by time only where every row has one', () => {
    const timed = (hour: string): string =>
      `Club,Time,Carry (yd)\nalder,2026-04-11 ${hour}:01:00,20${hour}\nbirch,2026-04-11 ${hour}:02:00,10${hour}\n`;
    const early = timed('09').replace('2009', '209').replace('1009', '109');
    const late = timed('10').replace('2010', '210').replace('1010', '110');
    expect(joined({ 'late.csv': late, 'early.csv': early }).carries.map(([, carry]) => carry)).toEqual([
      209, 109, 210, 110,
    ]);
    const untimed = `${head}\nalder,300\nbirch,301\n`;
    expect(joined({ 'late.csv': late, 'more.csv': untimed }).carries.map(([, carry]) => carry)).toEqual([
      210, 110, 300, 301,
    ]);
  });

  test('count for each golfer from one, warm-ups apart', () => {
    const csv =
      'Player,Club,Warm-up,Carry (yd)\nAnn,alder,no,200\nBea,alder,no,201\nAnn,alder,yes,150\nAnn,birch,no,202\nBea,birch,no,203\n';
    const { session } = joined(
      { 'shots.csv': csv },
      {
        hitters:
          '{one: {role: customer, match: [Ann], consent: yes}, two: {role: customer, match: [Bea], consent: yes}}',
      },
    );
    expect(session.shots.map(({ hitter, order }) => [hitter, order])).toEqual([
      ['one', 1],
      ['two', 1],
      ['one', 2],
      ['two', 2],
    ]);
    expect(session.warmUps).toBe(1);
  });

  test('keep columns apart that share a unit', () => {
    const { session } = joined({
      'shots.csv': 'Club,Total (yd),Carry (yd)\nalder,220,200\nbirch,215,199\n',
    });
    const [first] = session.shots;
    expect([first?.values.carry, first?.values.total].map((own) => Math.round((own ?? 0) / yard))).toEqual([
      200, 220,
    ]);
  });
});

describe('columns of several files', () => {
  const files = {
    'alder.csv': 'Carry (yd)\n200.4\n201.3\n',
    'birch.csv': 'Carry (yd)\n190\n191\n',
  };

  test('have the coarsest step', () => {
    expect(joined(files).session.columns.carry?.step).toBeCloseTo(yard, 10);
  });

  test('are read as the monitor’s answer says, before the column’s own and what is usual', () => {
    const of = (front: Readonly<Record<string, string>>): string | undefined =>
      joined(files, front).session.columns.carry?.class;
    expect(of({})).toBe('measured');
    const columns = '{carry: {heading: Carry (yd), class: estimated}}';
    expect(of({ columns })).toBe('estimated');
    expect(of({ columns, conditions: '{monitor: {columns: {carry: modelled}}}' })).toBe('modelled');
  });
});

describe('what does not fit together', () => {
  test('a name that no contender has, once, with its first line, its count and the nearest id', () => {
    expect(joined({ 'shots.csv': `${head}\nalder,200\nbirc,190\nbirch,191\nbirc,192\n` }).problems).toEqual([
      {
        kind: 'contender-not-in-report',
        file: 'reports/invented/shots.csv',
        line: 3,
        what: 'birc (2 shots)',
        cure: 'If it is birch, add "match: [\'birc\']" to that contender; else add it to the contenders of the report.',
      },
    ]);
  });

  test('a golfer that the report does not list, and rows without one where several hit', () => {
    const csv = 'Player,Club,Carry (yd)\nAnn,alder,200\nCleo,birch,201\n,birch,202\n';
    const { problems } = joined(
      { 'shots.csv': csv },
      { hitters: '{one: {role: customer, match: [Ann], consent: yes}, two: {role: customer, consent: yes}}' },
    );
    expect(problems.map(({ kind, line, what, cure }) => [kind, line, what, cure])).toEqual([
      [
        'hitter-not-in-report',
        3,
        'Cleo (1 shots)',
        'Add "match: [\'Cleo\']" to the hitter it is, or add that hitter to the report.',
      ],
      [
        'hitter-not-in-report',
        4,
        'no hitter (1 shots)',
        'Give every row its hitter, or name one hitter only in the report.',
      ],
      [
        'contender-not-in-csv',
        expect.any(Number),
        'none',
        expect.stringContaining('take birch out of the report'),
      ],
      [
        'hitter-not-in-csv',
        expect.any(Number),
        'none',
        expect.stringContaining('take two out of the report'),
      ],
    ]);
  });

  test('a row without a golfer is the only golfer’s; a name is not', () => {
    const { session, problems } = joined({ 'shots.csv': `${head}\nalder,200\nbirch,199\n` });
    expect(session.shots.map(({ hitter }) => hitter)).toEqual(['one', 'one']);
    expect(problems).toEqual([]);
    expect(
      joined({ 'shots.csv': 'Player,Club,Carry (yd)\nAnn,alder,200\nAnn,birch,199\n' }).problems[0]?.kind,
    ).toBe('hitter-not-in-report');
  });

  test('a main metric without a column', () => {
    const { problems } = joined(
      { 'shots.csv': `${head}\nalder,200\nbirch,199\n` },
      { primary: 'ball_speed', matters: null },
    );
    expect(problems).toMatchObject([
      { kind: 'primary-column-missing', what: 'columns understood: Carry (yd)' },
    ]);
  });

  test('of a file that is not there nothing is missed', () => {
    const { problems } = joined(
      { 'shots.csv': `${head}\nalder,200\n` },
      { session: '[shots.csv, more.csv]' },
    );
    expect(problems).toEqual([]);
  });
});
