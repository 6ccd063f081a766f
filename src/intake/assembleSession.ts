import { closest } from 'fastest-levenshtein';
import { makeProblem } from '../problems/makeProblem.ts';
import type { Problem } from '../problems/problem.ts';
import { metricIds, metrics, type MetricId } from '../trade/metrics.ts';
import type { Hitter } from './authored/hitter.ts';
import type { Source } from './authored/source.ts';
import { withoutUnseen } from './authored/unseenCharacters.ts';
import { contenderMatcher, foldedName, type NamedContender } from './contenderNames.ts';
import { applyExclusions, markedInFile } from './exclusionsOf.ts';
import type { Session, Shot } from './session.ts';
import type { ShotColumn, ShotFile, ShotRow } from './shots/shotFile.ts';

export interface PlacedRow {
  readonly row: ShotRow;
  readonly file: string;
}

/**
 * Joins the files of a report with what the report says of them: every row gets its contender and hitter, what the
 * report leaves out is marked, and whatever does not fit together is a problem.
 */
export function assembleSession(
  source: Source,
  files: readonly ShotFile[],
): { readonly session: Session; readonly problems: readonly Problem[] } {
  const { front } = source;
  const rows = inHitOrder(files);
  const contenderOf = contenderMatcher(front.contenders);
  const problems: Problem[] = [...strangers(rows, contenderOf, source)];
  const hitterOf = hitterMatcher(front.hitters);
  problems.push(...hitterStrangers(rows, hitterOf, source));
  const excluded = applyExclusions(shotsOf(files, front), front.exclusions, (index) =>
    source.placeOf(['exclusions', index]),
  );
  const columns = joinColumns(files, source);
  const session: Session = {
    contenders: front.contenders.map(({ id }) => id),
    hitters: front.hitters.map(({ id }) => id),
    shots: excluded.shots,
    warmUps: rows.filter(({ row }) => row.warmUp).length,
    columns,
  };
  // A file that is not there or cannot be read has no shots to miss: what is wrong with it is said already.
  const whole = files.length >= front.session.length;
  const readable =
    whole && files.every(({ problems: own }) => own.every(({ severity }) => severity !== 'error'));
  if (readable) {
    problems.push(
      ...excluded.problems,
      ...absentContenders(session, source),
      ...absentHitters(session, source),
    );
    problems.push(...missingPrimaries(columns, files, source));
  }
  return { session, problems };
}

/** Who hit, as far as names go. */
export type NamedHitter = Pick<Hitter, 'id' | 'match'>;

/** The shots of these contenders by these hitters, in hit order; marked as left out is only what the files mark so. */
export function shotsOf(
  files: readonly ShotFile[],
  named: { readonly contenders: readonly NamedContender[]; readonly hitters: readonly NamedHitter[] },
): readonly Shot[] {
  const contenderOf = contenderMatcher(named.contenders);
  const hitterOf = hitterMatcher(named.hitters);
  const orders = new Map<string, number>();
  return inHitOrder(files).flatMap(({ row, file }): Shot[] => {
    const contender = clubOf(row, file, contenderOf);
    const hitter = hitterOf(row.hitter);
    if (contender === null || hitter === null || row.warmUp) return [];
    const order = (orders.get(hitter) ?? 0) + 1;
    orders.set(hitter, order);
    const { round, shotNo, time, values, line, note } = row;
    const excluded = row.excluded
      ? { rule: markedInFile, reason: withoutUnseen(note ?? 'no reason given') }
      : null;
    return [{ contender, hitter, round, order, shotNo, time, values, excluded, place: { file, line } }];
  });
}

/** Rows of all files; where there are several and every row has a time, by time. */
export function inHitOrder(files: readonly ShotFile[]): readonly PlacedRow[] {
  const rows = files.flatMap(({ rows: own, file }) => own.map((row) => ({ row, file })));
  const timed = files.length > 1 && rows.every(({ row }) => row.time !== null);
  return timed ? [...rows].sort((x, y) => ((x.row.time ?? '') < (y.row.time ?? '') ? -1 : 1)) : rows;
}

/** A row's contender by its club cell, or by the name of its file where the file holds one contender. */
function clubOf(row: ShotRow, file: string, contenderOf: (name: string) => string | null): string | null {
  return contenderOf(clubName(row, file));
}

/** What was hit, as the row names it; where it names nothing, the file does. */
export function clubName({ club }: ShotRow, file: string): string {
  return club ?? nameInFile(file);
}

/** The name that a file of a single contender gives it. */
export const nameInFile = (file: string): string => (file.split('/').pop() ?? file).replace(/\.[^.]+$/, '');

function hitterMatcher(hitters: readonly NamedHitter[]): (name: string | null) => string | null {
  const [only] = hitters;
  const known = new Map(
    hitters.flatMap(({ id, match = [] }) => [id, ...match].map((name) => [foldedName(name), id])),
  );
  return (name) => {
    const found = name === null ? undefined : known.get(foldedName(name));
    if (found !== undefined) return found;
    return hitters.length === 1 && only !== undefined && name === null ? only.id : null;
  };
}

function strangers(
  rows: readonly PlacedRow[],
  contenderOf: (name: string) => string | null,
  { front }: Source,
): Problem[] {
  const names = firstRows(rows, ({ row, file }) =>
    !row.warmUp && clubOf(row, file, contenderOf) === null ? clubName(row, file) : null,
  );
  const ids = front.contenders.map(({ id }) => id);
  return names.map(({ name, first, count }) =>
    makeProblem(
      'contender-not-in-report',
      { file: first.file, line: first.row.line, columnName: null },
      {
        expected: `one of the contenders of the report: ${ids.join(', ')}`,
        found: `${name} (${count} ${count === 1 ? 'shot' : 'shots'})`,
        cure:
          `If it is ${closest(name.toLowerCase(), ids)}, add "match: [${yamlText(name)}]" to that contender; ` +
          'else add it to the contenders of the report.',
      },
    ),
  );
}

function hitterStrangers(
  rows: readonly PlacedRow[],
  hitterOf: (name: string | null) => string | null,
  { front }: Source,
): Problem[] {
  const names = firstRows(rows, ({ row }) => (hitterOf(row.hitter) === null ? (row.hitter ?? '') : null));
  const ids = front.hitters.map(({ id }) => id).join(', ');
  return names.map(({ name, first, count }) =>
    makeProblem(
      'hitter-not-in-report',
      { file: first.file, line: first.row.line },
      {
        expected: `one of the hitters of the report: ${ids}`,
        found: name === '' ? `no hitter (${count} shots)` : `${name} (${count} shots)`,
        cure:
          name === ''
            ? 'Give every row its hitter, or name one hitter only in the report.'
            : `Add "match: [${yamlText(name)}]" to the hitter it is, or add that hitter to the report.`,
      },
    ),
  );
}

interface FirstRow {
  readonly name: string;
  readonly first: PlacedRow;
  readonly count: number;
}

/** Each name that `nameOf` gives, with the first row that has it and how many have. */
function firstRows(
  rows: readonly PlacedRow[],
  nameOf: (placed: PlacedRow) => string | null,
): readonly FirstRow[] {
  const found = new Map<string, FirstRow>();
  for (const placed of rows) {
    const name = nameOf(placed);
    if (name === null) continue;
    const known = found.get(name);
    found.set(name, { name, first: known?.first ?? placed, count: (known?.count ?? 0) + 1 });
  }
  return [...found.values()];
}

function yamlText(name: string): string {
  return `'${name.replace(/'/g, "''")}'`;
}

function absentContenders(session: Session, source: Source): Problem[] {
  const present = new Set(session.shots.map(({ contender }) => contender));
  return source.front.contenders
    .filter(({ id }) => !present.has(id))
    .map(({ id, label }) =>
      makeProblem('contender-not-in-csv', source.placeOf(['contenders', id], 'key'), {
        expected: `at least one shot whose club is named ${label} or ${id}`,
        found: 'none',
        cure: `Add "match:" with the name the file uses for ${id}, or take ${id} out of the report.`,
      }),
    );
}

function absentHitters(session: Session, source: Source): Problem[] {
  const present = new Set(session.shots.map(({ hitter }) => hitter));
  return source.front.hitters
    .filter(({ id }) => !present.has(id))
    .map(({ id }) =>
      makeProblem('hitter-not-in-csv', source.placeOf(['hitters', id], 'key'), {
        expected: `at least one shot of hitter ${id}`,
        found: 'none',
        cure: `Add "match:" with the name the file uses for ${id}, or take ${id} out of the report.`,
      }),
    );
}

function missingPrimaries(
  columns: Session['columns'],
  files: readonly ShotFile[],
  { front, placeOf }: Source,
): Problem[] {
  const headings = files.flatMap(({ columns: own }) => Object.values(own).map(({ heading }) => heading));
  return front.primary
    .filter((metric) => columns[metric] === undefined && !canBeModelled(metric, columns, front.modelled))
    .map((metric) =>
      makeProblem('primary-column-missing', placeOf(['primary']), {
        expected: `a column for ${metrics[metric].name} in ${front.session.join(', ')}`,
        found:
          headings.length === 0 ? 'no column of the trade' : `columns understood: ${headings.join(', ')}`,
        cure: `Add the column, write its heading under "columns" in report.md: columns: {${metric}: "..."}, or choose another primary metric.`,
      }),
    );
}

/** Whether the report lets the flight model stand in for a metric, and the files have the launches for it. */
function canBeModelled(metric: MetricId, columns: Session['columns'], allowed: readonly MetricId[]): boolean {
  const spin = columns.spin_rate ?? (columns.side_spin === undefined ? undefined : columns.back_spin);
  const launched =
    columns.ball_speed !== undefined && columns.launch_angle !== undefined && spin !== undefined;
  return allowed.includes(metric) && launched;
}

/** One column a metric for all files: the coarsest step holds, and the report's word on how it was read. */
function joinColumns(files: readonly ShotFile[], { front }: Source): Session['columns'] {
  const declared = front.conditions.monitor?.columns ?? {};
  const joined: Partial<Record<MetricId, ShotColumn>> = {};
  for (const metric of metricIds) {
    const own = files.flatMap(({ columns }) => columns[metric] ?? []);
    const [first] = own;
    if (first === undefined) continue;
    joined[metric] = {
      ...first,
      step: Math.max(...own.map(({ step }) => step)),
      class: declared[metric] ?? front.columns[metric]?.class ?? first.class,
    };
  }
  return joined;
}
