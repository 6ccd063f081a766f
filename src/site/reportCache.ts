import { existsSync, readdirSync, rmSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import { isDeepStrictEqual as isEqual } from 'node:util';
import { makeFigures } from '../charts/makeFigures.ts';
import type { DrawnFigure, Figure } from '../charts/figure.ts';
import type { Source } from '../intake/authored/source.ts';
import type { Report } from '../kit/report.ts';
import type { Telling } from '../prose/telling.ts';
import { tellingOf } from '../prose/tellingOf.ts';
import { readSealed, writeSealed } from './sealed.ts';
import { inOtherUnits } from './toldTwice.ts';

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
  const drawingsOf = (key: string, ids: readonly string[], drawAgain: () => Drawings): Drawings => {
    const known = held.get(key);
    if (known !== undefined) return known;
    const kept = readValue<Drawings>(drawingsFile(folder, key), key);
    const read = kept !== null && ids.every((id) => Object.hasOwn(kept, id)) ? kept : drawAgain();
    const [oldest] = held.keys();
    if (held.size >= drawingsHeld && oldest !== undefined) held.delete(oldest);
    held.set(key, read);
    return read;
  };
  const has = (key: string): boolean =>
    existsSync(reportFile(folder, key)) && existsSync(drawingsFile(folder, key));
  const retold = (stored: StoredReport, key: string, around: Pick<Source, 'shop' | 'placeOf'>): Report => {
    const source: Source = { ...stored.source, ...around };
    const telling = tellingOf(stored.findings, source);
    const drawn = (told: Telling): readonly Figure[] => makeFigures(told, stored.session, source.front);
    const drawAgain = (): Drawings => drawingsIn(drawn(telling));
    const figuresInOtherUnits = (): readonly Figure[] => {
      const kept = readValue<readonly Figure[]>(otherFile(folder, key), key);
      const isWhole = Array.isArray(kept) && isEqual(kept.map(idOf), stored.figures.map(idOf));
      return isWhole ? kept : drawn(inOtherUnits(telling));
    };
    const ids = stored.figures.flatMap((figure) => (figure.kind === 'absent' ? [] : [figure.id]));
    const figures = stored.figures.map((figure): Figure => {
      if (figure.kind === 'absent') return figure;
      const drawing = (): Svg => {
        const found = drawingsOf(key, ids, drawAgain)[figure.id];
        if (found === undefined) throw new Error(`The report has no drawing of ${figure.id}.`);
        return found;
      };
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
  };
  return {
    has,
    read: (key, around) => {
      const stored = has(key) ? readValue<StoredReport>(reportFile(folder, key), key) : null;
      if (stored === null) return null;
      try {
        return retold(stored, key, around);
      } catch {
        // Of another shape. It is then worked out anew by the same code, so a fault of ours comes to light there.
        return null;
      }
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
      writeValue(drawingsFile(folder, key), key, drawingsIn(figures));
      writeValue(otherFile(folder, key), key, figuresInOtherUnits());
      writeValue(reportFile(folder, key), key, stored);
    },
  };
}

const drawingsIn = (figures: readonly Figure[]): Drawings =>
  Object.fromEntries(figures.flatMap((figure) => (figure.kind === 'drawn' ? [[figure.id, figure.svg]] : [])));

const idOf = (figure: unknown): unknown =>
  typeof figure === 'object' && figure !== null && 'id' in figure ? figure.id : null;

const reportFile = (folder: string, key: string): string => join(folder, `${key}.json`);
const drawingsFile = (folder: string, key: string): string => join(folder, `${key}.svg.json`);

const otherFile = (folder: string, key: string): string => join(folder, `${key}.other.json`);

/** A value that was written under this key; null for a file that is missing, cut short, changed or another one's. */
function readValue<Value>(file: string, key: string): Value | null {
  const bytes = readSealed(file, sealedAs(file, key));
  return bytes === null ? null : JSON.parse(new TextDecoder().decode(bytes));
}

/** As `readValue` takes it. */
function writeValue(file: string, key: string, value: unknown): void {
  writeSealed(file, sealedAs(file, key), new TextEncoder().encode(JSON.stringify(value)));
}

/** The files of one report are sealed as what they are too: its drawings are not its figures. */
const sealedAs = (file: string, key: string): string => `${key} ${basename(file)}`;

/** Names of our files in the folders of a cache, those of a writer that was killed among them. */
const ownName = /^([0-9a-f]{64})\.(?:json|svg\.json|other\.json|png|png\.sealed)(?:\.\d+\.\d+)?$/;

/** Deletes those of our files in a folder that are neither of these keys nor younger than `before`, and nothing else. */
export function pruneCache(folder: string, keys: ReadonlySet<string>, before: Date): void {
  if (!existsSync(folder)) return;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const key = ownName.exec(entry.name)?.[1];
    if (!entry.isFile() || key === undefined || keys.has(key)) continue;
    const file = join(folder, entry.name);
    const found = statSync(file, { throwIfNoEntry: false });
    if (found !== undefined && found.mtime < before) rmSync(file, { force: true });
  }
}
