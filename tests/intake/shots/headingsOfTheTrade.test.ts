import { describe, expect, test } from 'vitest';
import { readHeading } from '../../../src/intake/shots/heading.ts';
import { readShotFile } from '../../../src/intake/shots/readShotFile.ts';
import type { ShotFileOptions } from '../../../src/intake/shots/shotFile.ts';

const read = (csv: string, options: ShotFileOptions = {}) =>
  readShotFile('shots.csv', new TextEncoder().encode(csv), options);

describe('headings that are cut short', () => {
  test.each([
    ['Face Ang.', 'face_angle'],
    ['Launch Ang.', 'launch_angle'],
    ['Launch Dir.', 'launch_direction'],
    ['Attack Ang.', 'attack_angle'],
    ['Att. Ang. [deg]', 'attack_angle'],
    ['Land. Ang.', 'descent_angle'],
    ['Ball Spd (mph)', 'ball_speed'],
    ['Club Spd.', 'club_speed'],
    ['Max Ht. (ft)', 'apex'],
    ['Dyn. Loft', 'dynamic_loft'],
    ['Spin Ax.', 'spin_axis'],
    ['Vert. Launch Ang.', 'launch_angle'],
    ['Tot. Dist. (yd)', 'total'],
    ['launch_ang_deg', 'launch_angle'],
    ['Smash Fac.', 'smash'],
  ])('%s is %s', (heading, metric) => {
    expect(readHeading(heading).meaning).toEqual({ kind: 'metric', metric });
  });

  test.each(['Ht', 'Ang.', 'Target Dist. (yd)', 'Avg. Spd'])('%s may be anything', (heading) => {
    expect(readHeading(heading).meaning.kind).not.toBe('metric');
  });
});

describe('a column of kinds of club', () => {
  const clubs = (csv: string): (string | null)[] => read(csv).rows.map(({ club }) => club);

  test('tells contenders apart where nothing else does', () => {
    expect(clubs('Club Type,Carry (yd)\n7 iron,160.1\n8 iron,150.2\n')).toEqual(['7 iron', '8 iron']);
  });

  test('not where a club or a ball does', () => {
    expect(clubs('Club Type,Club,Carry (yd)\nDriver,Alder,240.1\n')).toEqual(['Alder']);
    expect(clubs('Club Type,Ball,Carry (yd)\nDriver,Heron,240.1\n')).toEqual(['Heron']);
  });
});

describe('a column that looks like a metric and is not used', () => {
  const unused = (heading: string, cells = ['12.1', '12.4'], options: ShotFileOptions = {}): string[] =>
    read(`Club,Carry (yd),${heading}\nAlder,240.1,${cells[0]}\nBirch,241.2,${cells[1]}\n`, options)
      .problems.filter(({ kind }) => kind === 'column-not-used')
      .map(({ line, column, found, cure }) => `${line}:${column} ${found}. ${cure}`);

  test.each([
    ['Angle Launch Ball', 'launch angle', 'launch_angle'],
    ['Path of Club', 'club path', 'club_path'],
    ['Ball Speeed (mph)', 'ball speed', 'ball_speed'],
    ['Height of apex', 'apex', 'apex'],
  ])('%s: a warning with the line to add', (heading, name, id) => {
    expect(unused(heading)).toEqual([
      `1:3 ${heading}. If it is ${name}, write in report.md: columns: {${id}: "${heading}"}; if it is something else, nothing need be done.`,
    ]);
  });

  test('the line reads the column', () => {
    const options = { columns: { launch_angle: { heading: 'Angle Launch Ball' } } };
    expect(unused('Angle Launch Ball', undefined, options)).toEqual([]);
    const { columns } = read('Club,Carry (yd),Angle Launch Ball\nAlder,240.1,12.1\n', options);
    expect(Object.keys(columns)).toContain('launch_angle');
  });

  test.each([
    ['a metric that the file has already', 'Carry of the ball (yd)', ['240', '241']],
    ['what was aimed at', 'Target launch', ['12', '12']],
    ['words in place of numbers', 'Launch feel angle', ['fine', 'low']],
    ['another thing', 'Swing tempo', ['2.9', '3.1']],
    ['another rate', 'Closure rate (deg/s)', ['2000', '2100']],
  ])('not %s', (_what, heading, cells) => {
    expect(unused(heading, cells)).toEqual([]);
  });
});
