import { lintNarrative } from '../../src/prose/linter.ts';
import type { Problem } from '../../src/problems/problem.ts';
import type { Report } from '../../src/kit/report.ts';
import { around, reportOf } from '../findings/reportOf.ts';

const speeds = { alder: 101, birch: 100.5, cedar: 100.8, dogwood: 101.2 };

/**
 * Four heads, twelve shots each, no claims: Alder 237 yards, Birch 231, Cedar 225, Dogwood 239; ball speeds 149.5, 148.7,
 * 149.2 and 149.8 mph, spin 2,610 to 2,650 rpm.
 */
export function salesReport(front: Readonly<Record<string, string>> = {}): Report {
  return reportOf({
    shots: {
      'Carry (yd)': {
        alder: around(237),
        birch: around(231).toReversed(),
        cedar: [...around(225).slice(6), ...around(225).slice(0, 6)],
        dogwood: [...around(239).slice(3), ...around(239).slice(0, 3)],
      },
      'Ball Speed (mph)': Object.fromEntries(
        Object.entries(speeds).map(([id, speed]) => [id, around(speed * 1.48, 0.2)]),
      ),
      'Club Speed (mph)': Object.fromEntries(
        Object.entries(speeds).map(([id, speed]) => [id, around(speed, 0.135)]),
      ),
      'Spin Rate (rpm)': {
        alder: around(2610, 20),
        birch: around(2640, 20).toReversed(),
        cedar: around(2650, 20),
        dogwood: around(2620, 20).toReversed(),
      },
      'Launch Angle (deg)': {
        alder: around(12.4, 0.1),
        birch: around(12.6, 0.1).toReversed(),
        cedar: around(12.5, 0.1),
        dogwood: around(12.3, 0.1).toReversed(),
      },
      'Side (yd)': {
        alder: around(3).toReversed(),
        birch: around(-2),
        cedar: around(1).toReversed(),
        dogwood: around(2),
      },
    },
    front: {
      title: 'Four driver heads, one shaft',
      contenders:
        '{alder: {label: Alder 9°, short: Alder, supplied_by: our stock, sold_here: new}, ' +
        'birch: {label: Birch 9°, short: Birch, supplied_by: our stock, sold_here: new}, ' +
        'cedar: {label: Cedar 9°, short: Cedar, supplied_by: our used stock, sold_here: used}, ' +
        'dogwood: {label: Dogwood 9°, short: Dogwood, supplied_by: our stock, sold_here: new}}',
      ...front,
    },
  });
}

/** What the linter says about paragraphs of a report. */
export function linted(text: string, { source, telling }: Report): readonly Problem[] {
  return lintNarrative(
    { file: 'reports/invented/report.md', text, firstLine: 20 },
    { telling, front: source.front, strict: false },
  );
}
