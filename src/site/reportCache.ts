import { existsSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { makeFigures } from '../charts/makeFigures.ts';
import type { DrawnFigure, Figure } from '../charts/figure.ts';
import type { Source } from '../intake/authored/source.ts';
import type { Report } from '../kit/report.ts';
import type { Telling } from '../prose/telling.ts';
import { tellingOf } from '../prose/tellingOf.ts';
import { sha256 } from './contentFiles.ts';
import { inOtherUnits } from './toldTwice.ts';
import { writeWhole } from './writeWhole.ts';

type Svg = DrawnFigure['svg'];

/** The drawings of a report by figure. */
type Drawings = Readonly<Record<string, Svg>>;

/** What of a report lies in the cache; the rest is worked out of it, or is the same for all reports. */
interface StoredReport extends Omit<
  Report,
  'key' | 'source' | 'telling' | 'figures' | 'figuresInOtherUnits'
> {
  readonly source: Omit<Source, 'shop' | 'placeOf'>;
  readonly figures: readonly (Exclude<Figure, DrawnFigure> | Omit<DrawnFigure, 'svg'>)[];
}

/** Reports that were worked out before, by `reportKey`. */
export interface ReportCache {
  /** Null for a report that is not there, or not whole. */
  readonly read: (key: string, around: Pick<Source, 'shop' | 'placeOf'>) => Report | null;
  /** Whether it is there; it may still turn out not to be whole. */
  readonly has: (key: string) => boolean;
  readonly write: (key: string, report: Report) => void;
}

/** Reports whose drawings are held: pages of one report come after one another. */
const drawingsHeld = 4;

/**
 * A cache in a folder that may be deleted at any time. Drawings lie apart and are read when a page asks for them: they
 * are nine tenths of a report, and an unchanged page needs none.
 */
export function diskCache(folder: string): ReportCache {
  const held = new Map<string, Drawings>();
  const drawingsOf = (key: string, drawAgain: () => Drawings): Drawings => {
    const known = held.get(key);
    if (known !== undefined) return known;
    const read = readHashed<Drawings>(drawingsFile(folder, key)) ?? drawAgain();
    const [oldest] = held.keys();
    if (held.size >= drawingsHeld && oldest !== undefined) held.delete(oldest);
    held.set(key, read);
    return read;
  };
  const has = (key: string): boolean =>
    existsSync(reportFile(folder, key)) && existsSync(drawingsFile(folder, key));
  return {
    has,
    read: (key, around) => {
      const stored = has(key) ? readHashed<StoredReport>(reportFile(folder, key)) : null;
      if (stored === null) return null;
      const source: Source = { ...stored.source, ...around };
      const telling = tellingOf(stored.findings, source);
      const drawn = (told: Telling): readonly Figure[] =>
        makeFigures(told, stored.session, source.front.contenders);
      const drawAgain = (): Drawings => drawingsIn(drawn(telling));
      const figuresInOtherUnits = (): readonly Figure[] =>
        readHashed<readonly Figure[]>(otherFile(folder, key)) ?? drawn(inOtherUnits(telling));
      const figures = stored.figures.map((figure): Figure => {
        if (figure.kind === 'absent') return figure;
        const drawing = (): Svg => drawingsOf(key, drawAgain)[figure.id] ?? { wide: '', narrow: '' };
        return {
          ...figure,
          svg: {
            get wide() {
              return drawing().wide;
            },
            get narrow() {
              return drawing().narrow;
            },
          },
        };
      });
      return { ...stored, key, source, telling, figures, figuresInOtherUnits };
    },
    write: (key, report) => {
      const { key: _key, source, telling: _telling, figures, figuresInOtherUnits, ...rest } = report;
      const { shop: _shop, placeOf: _placeOf, ...written } = source;
      const stored: StoredReport = {
        ...rest,
        source: written,
        figures: figures.map((figure) => {
          if (figure.kind === 'absent') return figure;
          const { svg: _svg, ...words } = figure;
          return words;
        }),
      };
      writeHashed(drawingsFile(folder, key), drawingsIn(figures));
      writeHashed(otherFile(folder, key), figuresInOtherUnits());
      writeHashed(reportFile(folder, key), stored);
    },
  };
}

const drawingsIn = (figures: readonly Figure[]): Drawings =>
  Object.fromEntries(figures.flatMap((figure) => (figure.kind === 'drawn' ? [[figure.id, figure.svg]] : [])));

const reportFile = (folder: string, key: string): string => join(folder, `${key}.json`);
const drawingsFile = (folder: string, key: string): string => join(folder, `${key}.svg.json`);

const otherFile = (folder: string, key: string): string => join(folder, `${key}.other.json`);

/** A value with its hash before it; null for a file that is missing, cut short or changed. */
function readHashed<Value>(file: string): Value | null {
  if (!existsSync(file)) return null;
  const text = readFileSync(file, 'utf8');
  const json = text.slice(65);
  if (text.slice(0, 65) !== `${hashOf(json)}\n`) return null;
  return JSON.parse(json);
}

/** As `readHashed` takes it. */
function writeHashed(file: string, value: unknown): void {
  const json = JSON.stringify(value);
  writeWhole(file, `${hashOf(json)}\n${json}`);
}

const hashOf = (text: string): string => sha256(new TextEncoder().encode(text));

/** Deletes what is neither among the keys nor younger than `before`. */
export function pruneCache(folder: string, keys: ReadonlySet<string>, before: Date): void {
  if (!existsSync(folder)) return;
  for (const name of readdirSync(folder)) {
    const file = join(folder, name);
    if (!keys.has(name.split('.')[0] ?? '') && statSync(file).mtime < before) rmSync(file, { force: true });
  }
}
