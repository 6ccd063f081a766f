import fc from 'fast-check';
import type { MetricId } from '../../../src/trade/metrics.ts';
import { toCanonical, type UnitId } from '../../../src/trade/units.ts';

/** A session whose shots are known, and one of the many ways to write it down. */
export interface KnownSession {
  readonly bytes: Uint8Array;
  readonly text: string;
  /** Where in the text the first shot begins. */
  readonly bodyAt: number;
  readonly shots: readonly KnownShot[];
}

export interface KnownShot {
  readonly club: string;
  readonly note: string | null;
  /** Canonical units. */
  readonly values: Readonly<Partial<Record<MetricId, number | null>>>;
}

interface Measure {
  readonly id: MetricId;
  readonly name: string;
  readonly units: readonly UnitId[];
  /** Bounds in the first unit, and decimals. */
  readonly low: number;
  readonly high: number;
  readonly decimals: number;
}

const measures: readonly Measure[] = [
  { id: 'ball_speed', name: 'Ball Speed', units: ['mph', 'km/h', 'm/s'], low: 150, high: 160, decimals: 1 },
  {
    id: 'club_speed',
    name: 'Club Head Speed',
    units: ['mph', 'km/h', 'm/s'],
    low: 102,
    high: 108,
    decimals: 1,
  },
  { id: 'launch_angle', name: 'Launch Angle', units: ['deg'], low: 10, high: 14, decimals: 1 },
  { id: 'spin_rate', name: 'Spin Rate', units: ['rpm'], low: 2100, high: 3100, decimals: 0 },
  { id: 'carry', name: 'Carry', units: ['yd', 'm'], low: 230, high: 260, decimals: 1 },
  { id: 'side', name: 'Side', units: ['yd', 'm', 'ft'], low: -20, high: 20, decimals: 1 },
  { id: 'club_path', name: 'Club Path', units: ['deg'], low: -5, high: 5, decimals: 1 },
];

const clubs = ['Alder', 'Birch 9°', '__proto__', 'constructor', 'Tête "3"', 'Head, long', 'toString'];
const notes = ['', '', 'thin', 'said "no"', 'two\nlines, then', 'a;b\tc', 'hasOwnProperty'];

const quoted = (text: string, delimiter: string): string =>
  /["\r\n]/.test(text) || text.includes(delimiter) ? `"${text.replaceAll('"', '""')}"` : text;

const encodings = {
  'utf-8': (text: string) => new TextEncoder().encode(text),
  'utf-8 with a mark': (text: string) => new TextEncoder().encode(`\ufeff${text}`),
  'utf-16le with a mark': (text: string) => new Uint8Array(Buffer.from(`\ufeff${text}`, 'utf16le')),
  'utf-16be': (text: string) => new Uint8Array(Buffer.from(text, 'utf16le').swap16()),
  'windows-1252': (text: string) => new Uint8Array(Buffer.from(text, 'latin1')),
} as const;

/** Sessions written down in every mixture of delimiter, decimal mark, units, order, casing, encoding and line end. */
export const knownSessions: fc.Arbitrary<KnownSession> = fc
  .record({
    order: fc.shuffledSubarray([...measures.keys()], { minLength: 2 }),
    unitChoice: fc.array(fc.nat(2), { minLength: measures.length, maxLength: measures.length }),
    delimiter: fc.constantFrom(',', ';', '\t'),
    comma: fc.boolean(),
    unitPlace: fc.constantFrom('heading', 'row', 'cell'),
    casing: fc.constantFrom('as is', 'upper', 'lower', 'snake'),
    lineEnd: fc.constantFrom('\n', '\r\n', '\r'),
    lastEnd: fc.boolean(),
    encoding: fc.constantFrom(...(Object.keys(encodings) as (keyof typeof encodings)[])),
    unknown: fc.option(fc.constantFrom('__proto__', 'hasOwnProperty', 'Target Carry', 'Loft', 'Ball model')),
    blankRows: fc.boolean(),
    rows: fc.array(
      fc.record({
        club: fc.constantFrom(...clubs),
        note: fc.constantFrom(...notes),
        parts: fc.array(fc.double({ min: 0, max: 1, noNaN: true }), {
          minLength: measures.length,
          maxLength: measures.length,
        }),
        missing: fc.array(fc.integer({ min: 0, max: 12 }), {
          minLength: measures.length,
          maxLength: measures.length,
        }),
      }),
      { minLength: 4, maxLength: 12 },
    ),
  })
  .map((spec) => {
    const chosen = spec.order.flatMap((index) => {
      const measure = measures[index];
      if (measure === undefined) return [];
      const unit = measure.units[(spec.unitChoice[index] ?? 0) % measure.units.length] ?? 'm';
      return [{ measure, unit, index }];
    });
    const spelled = (heading: string): string => {
      if (spec.casing === 'upper') return heading.toUpperCase();
      if (spec.casing === 'lower') return heading.toLowerCase();
      return spec.casing === 'snake' ? heading.replaceAll(' ', '_') : heading;
    };
    const extra = spec.unknown === null ? [] : [spec.unknown];
    const heading = chosen.map(({ measure, unit }) =>
      spec.unitPlace === 'heading' ? `${spelled(measure.name)} (${unit})` : spelled(measure.name),
    );
    const lines = [['Shot', spelled('Club'), ...heading, 'Note', ...extra]];
    if (spec.unitPlace === 'row')
      lines.push(['', '', ...chosen.map(({ unit }) => unit), '', ...extra.map(() => '')]);
    const shots = spec.rows.map((row, at): KnownShot => {
      const values: Partial<Record<MetricId, number | null>> = {};
      const cells = chosen.map(({ measure, unit, index }) => {
        const first = measure.units[0] ?? unit;
        const inFirst = measure.low + (row.parts[index] ?? 0) * (measure.high - measure.low);
        const typed = (inFirst * toCanonical(1, first)) / toCanonical(1, unit);
        // The first row has every reading, so that each column can be told; later ones may lack some.
        if (at > 0 && row.missing[index] === 0) {
          values[measure.id] = null;
          return ['', '-', 'N/A'][at % 3] ?? '';
        }
        const text = typed.toFixed(measure.decimals);
        values[measure.id] = toCanonical(Number(text), unit);
        const marked = spec.comma ? text.replace('.', ',') : text;
        return spec.unitPlace === 'cell' ? `${marked} ${unit}` : marked;
      });
      lines.push([String(at + 1), row.club, ...cells, row.note, ...extra.map(() => 'x')]);
      if (spec.blankRows && at % 4 === 3) lines.push(lines[0]?.map(() => '') ?? []);
      return { club: row.club, note: row.note === '' ? null : row.note, values };
    });
    const written = lines.map((cells) =>
      cells.map((cell) => quoted(cell, spec.delimiter)).join(spec.delimiter),
    );
    const text = written.join(spec.lineEnd) + (spec.lastEnd ? spec.lineEnd : '');
    const head = written.slice(0, spec.unitPlace === 'row' ? 2 : 1);
    const bodyAt = head.reduce((sum, line) => sum + line.length + spec.lineEnd.length, 0);
    return { bytes: encodings[spec.encoding](text), text, bodyAt, shots };
  });
