import { describe, expect, test } from 'vitest';
import { airOfConditions } from '../../src/intake/airOfConditions.ts';
import { standardAir } from '../../src/flight/air.ts';
import { answerSentences } from '../prose/said.ts';
import { shotsCsv } from '../../src/kit/shotsCsv.ts';
import { madeReport, reportOf } from '../findings/reportOf.ts';

const scatter = [0.4, -0.6, 0.1, 0.9, -1.1, 0.3, -0.2, 0.7, -0.8, 0.5];
const twoHeads = {
  contenders:
    '{alder: {label: Alder, supplied_by: our stock, sold_here: new}, birch: {label: Birch, supplied_by: our stock, sold_here: new}}',
};

/** Invented launches without a carry: Alder leaves faster by 5 mph. */
const launches = [
  'Shot,Head,Ball Speed (mph),Launch Angle (deg),Spin Rate (rpm)',
  ...scatter.flatMap((own, turn) => [
    `${2 * turn + 1},Alder,${(147 + own).toFixed(1)},${(13 + own / 2).toFixed(1)},${2600 + Math.round(90 * own)}`,
    `${2 * turn + 2},Birch,${(142 - own).toFixed(1)},${(13 - own / 3).toFixed(1)},${2600 - Math.round(70 * own)}`,
  ]),
  '',
].join('\n');

describe('a session of launches without a carry', () => {
  test('gets carry, apex and descent angle from the flight model, marked as such, in the table of shots too', () => {
    const report = reportOf({
      front: { ...twoHeads, primary: 'ball_speed', matters: '{ball_speed: 2 mph}' },
      csv: launches,
    });
    const carry = report.findings.metrics.find(({ id }) => id === 'carry');
    expect(carry).toMatchObject({ class: 'modelled', readBy: 'flight-model', role: 'exploratory' });
    expect(report.findings.metrics.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['apex', 'descent_angle']),
    );
    expect(carry?.pairs[0]?.overlays).toContain('modelled-reading');
    const [head = '', first = ''] = shotsCsv(report).split('\r\n');
    expect(head.split(/,(?! )/).filter((heading) => /carry|apex|descent/i.test(heading))).toEqual([
      '"Carry (m, modelled by our flight model)"',
      '"Apex (m, modelled by our flight model)"',
      '"Descent angle (deg, modelled by our flight model)"',
    ]);
    // In centimetres and hundredths of a degree, as the figures are.
    expect(first).toMatch(/(,\d+\.\d{1,2}){3},,$/);
  });

  test('does not take carry as its primary metric unless the report says so', () => {
    expect(madeReport({ front: twoHeads, csv: launches }).problems.map(({ kind }) => kind)).toContain(
      'primary-column-missing',
    );
  });

  test('takes it where the report says so, and the headline names the model in the same breath', () => {
    const report = reportOf({ front: { ...twoHeads, modelled: 'carry' }, csv: launches });
    const [carry] = report.findings.metrics;
    if (carry === undefined) throw new Error('no metric');
    expect(carry).toMatchObject({ id: 'carry', role: 'primary', readBy: 'flight-model' });
    expect(answerSentences(carry, report.telling)[0]).toMatch(/^By our own flight model, Alder carried/);
  });

  test('stays without where there is no launch either, whatever the report says', () => {
    const bare = launches.replace(/,Launch Angle \(deg\)/, ',Something');
    expect(
      madeReport({ front: { ...twoHeads, modelled: 'carry' }, csv: bare }).problems.map(({ kind }) => kind),
    ).toContain('primary-column-missing');
  });
});

describe('the air of a session, from what the report says', () => {
  test('is standard air where nothing is said', () => {
    expect(airOfConditions({}).density).toBeCloseTo(standardAir.density, 3);
  });

  test.each([
    ['19 °C', '66.2 °F'],
    ['-5 °C', '23 °F'],
  ])('%s and %s are the same air', (celsius, fahrenheit) => {
    expect(airOfConditions({ temperature: celsius }).density).toBeCloseTo(
      airOfConditions({ temperature: fahrenheit }).density,
      6,
    );
  });

  test('thins with height, in metres or feet', () => {
    const high = airOfConditions({ altitude: '1500 m' }).density;
    // ISA: 1.058 kg/m3 at 1500 m (US Standard Atmosphere 1976, table; from memory).
    expect(high).toBeCloseTo(1.058, 2);
    expect(airOfConditions({ altitude: '4,921 ft' }).density).toBeCloseTo(high, 3);
  });

  test('does not guess a unit', () => {
    expect(airOfConditions({ temperature: 'mild', altitude: 'low' }).density).toBeCloseTo(
      standardAir.density,
      3,
    );
  });
});
