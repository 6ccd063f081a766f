import { describe, expect, test } from 'vitest';
import type { DrawnFigure } from '../../src/charts/figure.ts';
import { reportOf } from '../findings/reportOf.ts';
import { drawnMarks, sharesSeen } from './drawnMarks.ts';
import { heads, longNames } from './examples/heads.ts';
import { launchExample, launchInputOf } from './examples/launch.ts';
import { brokenRules, inherited, parseSvg, placedTexts } from './inspectSvg.ts';
import { drawLaunch, shortfall, type LaunchInput } from '../../src/charts/launchDrawing.ts';
import { exampleFigure } from './examples/exampleFigure.ts';

const draw = (given: LaunchInput): DrawnFigure => {
  const figure = exampleFigure('launch-and-spin', drawLaunch(given));
  if (figure.kind !== 'drawn') throw new Error(figure.why);
  return figure;
};

/** Middle of a number across the foot, px. */
const across = (svg: string, text: string): number => {
  const found = placedTexts(svg).find((one) => one.text === text);
  return ((found?.left ?? Number.NaN) + (found?.right ?? Number.NaN)) / 2;
};

/** Height of a number at the side, px. */
const up = (svg: string, text: string): number =>
  (placedTexts(svg).find((one) => one.text === text)?.y ?? Number.NaN) - 4.5;

describe('Launch and spin', () => {
  const figure = draw(launchExample);
  const variants = ['wide', 'narrow'] as const;

  test.each(variants)('%s is drawn as it was approved', async (variant) => {
    await expect(figure.svg[variant].replaceAll('><', '>\n<')).toMatchFileSnapshot(
      `golden/launch-and-spin-${variant}.svg`,
    );
  });

  /** Launch and spin at a place of the picture, read off its axes. */
  const readAt = (svg: string, x: number, y: number) => ({
    launch: 10 + (4 * (x - across(svg, '10'))) / (across(svg, '14') - across(svg, '10')),
    spin: 2000 + (1000 * (y - up(svg, '2,000'))) / (up(svg, '3,000') - up(svg, '2,000')),
  });

  test.each(variants)('%s: every counted shot where the axes say', (variant) => {
    const svg = figure.svg[variant];
    for (const index of [0, 1, 2]) {
      const counted = launchExample.shots.filter((shot) => shot.contender === index && !shot.leftOut);
      const drawn = drawnMarks(svg, [index]).slice(1);
      expect(drawn).toHaveLength(counted.length);
      for (const [place, { launch, spin }] of counted.entries()) {
        const read = readAt(svg, drawn[place]?.x ?? Number.NaN, drawn[place]?.y ?? Number.NaN);
        expect(Math.abs(read.launch - launch)).toBeLessThan(0.1);
        expect(Math.abs(read.spin - spin)).toBeLessThan(20);
      }
    }
  });

  test('the line runs where the invented hill falls short by 3 yards, and nothing is filled', () => {
    const svg = figure.svg.wide;
    const [edge] = [...parseSvg(svg).querySelectorAll('path')].filter(
      (path) => inherited(path, 'stroke') === 'var(--band-edge)',
    );
    if (edge === undefined) throw new Error('no line');
    expect(inherited(edge, 'fill')).toBe('none');
    const points = [...(edge.getAttribute('d') ?? '').matchAll(/[ML](-?[\d.]+),(-?[\d.]+)/g)];
    expect(points.length).toBeGreaterThan(20);
    for (const [, x, y] of points) {
      const { launch, spin } = readAt(svg, Number(x), Number(y));
      const [along, over] = [(launch - 14) / 2, (spin - 2200) / 500];
      expect(Math.abs(along * along + over * over + 0.9 * along * over - 3)).toBeLessThan(0.15);
    }
  });

  test('ball speed and set of coefficients stand in the picture', () => {
    const words = placedTexts(figure.svg.narrow)
      .map(({ text }) => text)
      .join(' ');
    expect(words).toContain('At 140 mph ball speed, calculated with the first set of coefficients');
    expect(words).toContain('within 3 yards of the most');
  });

  test.each(variants)('%s: a fifth of every shot at least is seen in a crowd', (variant) => {
    const { svg } = draw(launchInputOf(heads, 20));
    expect(Math.min(...sharesSeen(drawnMarks(svg[variant], [0, 1, 2, 3, 4, 5]).slice(6)))).toBeGreaterThan(
      0.2,
    );
  });

  const one = { launch: 40, spin: 9800, contender: 0, leftOut: false };
  const cases: readonly (readonly [string, LaunchInput])[] = [
    ['three heads', launchExample],
    ['six heads, long names', launchInputOf(longNames, 20)],
    ['one shot far outside the window', launchInputOf(['Alder'], 1, { shots: [one] })],
    ['a plateau over all the window', launchInputOf(['Alder'], 12, { within: 900 })],
    [
      'a long setting',
      launchInputOf(['Alder'], 12, {
        setting:
          'At 140 mph ball speed, calculated with the second of the two published sets of coefficients, at sea level in still air of 20 degrees',
      }),
    ],
  ];
  test.each(cases)('%s: text large enough, apart and inside; ids, names and numbers in order', (_, given) => {
    const { svg } = draw(given);
    expect(brokenRules(svg.wide)).toEqual([]);
    expect(brokenRules(svg.narrow)).toEqual([]);
  });

  test('counts the shots drawn of those recorded; without shots there is no chart but a reason', () => {
    expect(draw({ ...launchExample, recorded: 40 })).toMatchObject({
      drawn: 36,
      recorded: 40,
      counted: 'shots',
    });
    expect(exampleFigure('launch-and-spin', drawLaunch({ ...launchExample, shots: [] }))).toMatchObject({
      kind: 'absent',
      why: 'No shot has both a launch angle and spin.',
    });
  });

  const { grid } = launchExample;
  test.each([
    ['a grid of one row', { grid: { ...grid, short: [[1, 2]] } }, 'The grid has 1 rows'],
    ['rows not as long', { grid: { ...grid, short: [[1, 2], [1]] } }, 'all rows as long'],
    [
      'a point better than the best',
      {
        grid: {
          ...grid,
          short: [
            [1, 2],
            [1, -1],
          ],
        },
      },
      'not a distance short of the best',
    ],
    [
      'a window upside down',
      { grid: { ...grid, launch: [18, 8] as const } },
      'The grid must rise from 18 to 8',
    ],
    ['a plateau of nothing', { within: 0 }, 'The plateau is within 0'],
    ['a shot of nobody', { shots: [{ ...one, contender: 5 }] }, 'A shot is of contender number 6'],
    ['a broken shot', { shots: [{ ...one, spin: Number.NaN }] }, 'A shot has launch 40 and spin NaN'],
    ['a seventh contender', { contenders: [{ label: 'Gorse', index: 6 }] }, 'not for number 7'],
    ['more shots than recorded', { recorded: 3 }, '36 shots to draw but only 3 recorded.'],
  ])('refuses %s', (_, change, message) => {
    expect(() => drawLaunch({ ...launchExample, ...change })).toThrow(message);
  });
});

describe('how far a launch falls short of the best', () => {
  const grid = {
    launch: [8, 12],
    spin: [2000, 3000],
    short: [
      [0, 4],
      [2, 10],
    ],
  } as const;

  test.each([
    [8, 2000, 0],
    [12, 3000, 10],
    [10, 2000, 2],
    [8, 2500, 1],
    [10, 2500, 4],
    [7.9, 2000, Infinity],
    [8, 3001, Infinity],
  ])('at %d degrees and %d rpm', (launch, spin, expected) => {
    expect(shortfall(grid, { launch, spin })).toBeCloseTo(expected, 9);
  });
});

describe('of which tests it is drawn', () => {
  /** Twelve shots of each, launched alike but for a little. */
  const launched = (launch: number, spin: number) => {
    const own = (middle: number, by: number): readonly number[] =>
      Array.from({ length: 12 }, (_, at) => middle + by * ((at % 5) - 2));
    return {
      'Carry (yd)': { alder: own(230, 2), birch: own(231, 2), cedar: own(232, 2) },
      'Ball Speed (mph)': { alder: own(150, 0.2), birch: own(150.3, 0.2), cedar: own(150.6, 0.2) },
      'Launch Angle (deg)': { alder: own(launch, 0.4), birch: own(launch, 0.5), cedar: own(launch, 0.6) },
      'Spin Rate (rpm)': { alder: own(spin, 60), birch: own(spin, 70), cedar: own(spin, 80) },
      'Launch Direction (deg)': { alder: own(0, 0.3), birch: own(0, 0.4), cedar: own(0, 0.5) },
      'Spin Axis (deg)': { alder: own(0, 1), birch: own(0, 1.2), cedar: own(0, 1.4) },
    };
  };
  const chartOf = (report: ReturnType<typeof reportOf>) =>
    report.figures.find(({ chart }) => chart === 'launch-and-spin');

  test('a driver near where the model carries farthest, with how many of its shots lie there', () => {
    const figure = chartOf(reportOf({ shots: launched(21, 2150) }));
    expect(figure).toMatchObject({ kind: 'drawn' });
    expect(figure?.kind === 'drawn' && figure.finding).toMatch(
      /^[\p{Lu}\d]\w* of 36 shots lies? where the model carries farthest$/u,
    );
  });

  test('not one whose every shot lies beyond it', () => {
    expect(chartOf(reportOf({ shots: launched(6, 5200) }))).toMatchObject({
      kind: 'absent',
      why: 'No shot lies where the model finds the most carry.',
    });
  });

  test('not a club that must stop the ball', () => {
    const report = reportOf({
      shots: launched(15, 2300),
      front: { title: 'Three 7-iron heads, one shaft' },
    });
    expect(chartOf(report)).toMatchObject({
      kind: 'absent',
      why: 'This chart is for drivers and fairway woods; other clubs must also stop the ball.',
    });
  });
});
