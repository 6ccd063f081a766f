import { looseShots, type LooseShot, type LooseShots } from '../intake/draft/looseShots.ts';
import { markedInFile } from '../intake/exclusionsOf.ts';
import type { Exclusion } from '../intake/session.ts';
import type { ShotColumn } from '../intake/shots/shotFile.ts';
import { metricNamed } from '../intake/authored/metricName.ts';
import type { Tree } from '../intake/authored/tree.ts';
import type { Problem } from '../problems/problem.ts';
import type { UnitSystem } from '../prose/readerUnits.ts';
import { misreadIn } from './misreadShot.ts';
import { readingsAtDesk } from './readingsAtDesk.ts';
import type { ReportAtDesk } from './reportAtDesk.ts';

/** How an entry names a shot: every answer as it is written. */
interface ShotAddress {
  readonly contender: string;
  readonly shot: string;
  /** Only where several hit. */
  readonly hitter?: string;
}

/** One shot as the desk shows it. */
export interface ShotRow {
  /** The address in one word. */
  readonly key: string;
  readonly address: ShotAddress;
  readonly number: number;
  /** Who hit it; null where there is one golfer only. */
  readonly golfer: string | null;
  /** In the order of the columns and in the shop's units; null where there is none. */
  readonly readings: readonly (string | null)[];
  readonly leftOut: Exclusion | null;
  /** The places, from 0, of the entries by which it is left out. */
  readonly leftOutBy: readonly number[];
  /** The place of the entry that names it; null where none does, as where only a limit for all alike leaves it out. */
  readonly namedBy: number | null;
  /** Whether the file alone marks it as not to be used, and no entry says why. */
  readonly onlyMarked: boolean;
  /** How many shots have the same address: whoever leaves one out leaves out all of them. */
  readonly alike: number;
  /** What the checks said of it. */
  readonly problems: readonly Problem[];
  /** The rule and the reason that are offered where a cell of it was misread and it still counts. */
  readonly misread: Exclusion | null;
}

/** One of what was compared, with its shots in hit order. */
export interface ShotsOfOne {
  readonly id: string;
  readonly name: string;
  readonly rows: readonly ShotRow[];
}

/** All shots of a report as the desk shows them. */
export interface ShotsAtDesk {
  readonly contenders: readonly ShotsOfOne[];
  /** Ids and names of the golfers; one entry where there is one. */
  readonly golfers: readonly { readonly id: string; readonly name: string }[];
  /** The main measures first, then in the order of the files. */
  readonly columns: readonly ShotColumn[];
  readonly entries: LooseShots['entries'];
  readonly system: UnitSystem;
  /** Shots in the files that are of nobody in the report. */
  readonly ofNobody: number;
  readonly warmUps: number;
  /** What was found in the session files and belongs to no shot of these. */
  readonly ofFiles: readonly Problem[];
}

/** The shots of a report by what was hit, each with its address, its readings and what was said of it. */
export function shotsAtDesk(report: ReportAtDesk): ShotsAtDesk {
  const { shotFiles, shared, problems } = report;
  const loose = looseShots(report, shotFiles);
  const system = shared.shop?.defaults.units ?? 'yards';
  const print = readingsAtDesk(shotFiles, system);
  const columns = columnsOf(report);
  const golfers = loose.hitters.map(({ id, match = [] }) => ({ id, name: match[0] ?? id }));
  const read = new Set(shotFiles.map(({ file }) => file));
  // What is said of a line that repeats a shot is said of that shot.
  const repeats = new Map<string, number>(
    shotFiles.flatMap(({ file, setAside }) =>
      setAside.flatMap((aside) =>
        aside.reason === 'duplicate' ? [[`${file}:${aside.line}`, aside.of] as const] : [],
      ),
    ),
  );
  const said = Map.groupBy(
    problems.filter(({ file }) => read.has(file)),
    ({ file, line }) => `${file}:${repeats.get(`${file}:${line}`) ?? line}`,
  );
  const placeOf = ({ shot: { place } }: LooseShot): string => `${place.file}:${place.line}`;
  const addressOf = ({ shot: { contender, hitter }, number }: LooseShot): ShotAddress => ({
    contender,
    shot: String(number),
    ...(golfers.length > 1 ? { hitter } : {}),
  });
  const addresses = Map.groupBy(loose.shots, (one) => keyOf(addressOf(one)));
  const rowOf = (one: LooseShot): ShotRow => {
    const { shot, number, leftOutBy } = one;
    const address = addressOf(one);
    const own = said.get(placeOf(one)) ?? [];
    return {
      key: keyOf(address),
      address,
      number,
      golfer: golfers.length > 1 ? (golfers.find(({ id }) => id === shot.hitter)?.name ?? shot.hitter) : null,
      readings: columns.map(({ metric }) => print(shot.place.file, metric, shot.values[metric] ?? null)),
      leftOut: shot.excluded,
      leftOutBy,
      namedBy: leftOutBy.find((at) => loose.entries[at]?.entry?.kind === 'shot') ?? null,
      onlyMarked: shot.excluded?.rule === markedInFile,
      alike: addresses.get(keyOf(address))?.length ?? 1,
      problems: own,
      misread: shot.excluded === null ? misreadIn(own, shot, columns) : null,
    };
  };
  const shown = new Set(loose.shots.map(placeOf));
  const rows = shotFiles.flatMap((file) => file.rows);
  const warmUps = rows.filter(({ warmUp }) => warmUp).length;
  return {
    contenders: loose.contenders.map(({ id, label }) => ({
      id,
      name: label,
      rows: loose.shots.filter(({ shot }) => shot.contender === id).map(rowOf),
    })),
    golfers,
    columns,
    entries: loose.entries,
    system,
    ofNobody: rows.length - warmUps - loose.shots.length,
    warmUps,
    ofFiles: [...said].flatMap(([place, own]) => (shown.has(place) ? [] : own)),
  };
}

/** Every shot, whatever was hit. */
export const rowsOf = ({ contenders }: ShotsAtDesk): readonly ShotRow[] =>
  contenders.flatMap(({ rows }) => rows);

/** What no id holds parts them. */
const keyOf = ({ contender, shot, hitter = '' }: ShotAddress): string => [contender, shot, hitter].join('/');

function columnsOf({ shotFiles, tree }: Pick<ReportAtDesk, 'shotFiles' | 'tree'>): readonly ShotColumn[] {
  const all = new Map(
    shotFiles
      .toReversed()
      .flatMap(({ columns }) => Object.values(columns).map((column) => [column.metric, column] as const)),
  );
  const main = textsIn(tree?.['primary']).map(metricNamed);
  const place = ({ metric, column }: ShotColumn): number =>
    main.includes(metric) ? main.indexOf(metric) - main.length : column;
  return [...all.values()].toSorted((one, other) => place(one) - place(other));
}

const textsIn = (answer: Tree | undefined): readonly string[] =>
  (Array.isArray(answer) ? (answer as readonly Tree[]) : [answer]).filter((one) => typeof one === 'string');
