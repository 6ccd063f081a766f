import type { ColumnRole } from '../../trade/columnRoles.ts';
import { metricIds, metrics, type MetricClass, type MetricId } from '../../trade/metrics.ts';
import { units, type UnitId } from '../../trade/units.ts';
import type { Report } from './collector.ts';
import type { Heading } from './heading.ts';
import type { Block } from './layout.ts';
import type { ColumnOverride, PositiveSide, ShotFileOptions } from './shotFile.ts';

/** One column that holds a metric, with all that is stated about it. */
export interface MetricColumn {
  readonly metric: MetricId;
  /** Position in the record, from 0. */
  readonly index: number;
  readonly heading: string;
  readonly headingLine: number;
  readonly unit: UnitId | null;
  /** The file counts the other side as positive. */
  readonly turned: boolean;
  readonly class: MetricClass;
}

export interface Columns {
  readonly metrics: readonly MetricColumn[];
  readonly roles: ReadonlyMap<ColumnRole, readonly number[]>;
}

const spellSides: Readonly<Record<PositiveSide, number>> = {
  left: -1,
  right: 1,
  up: 1,
  down: -1,
  toe: 1,
  heel: -1,
};

const sameHeading = (a: string, b: string): boolean =>
  a.replace(/\s+/g, ' ').trim().toLowerCase() === b.replace(/\s+/g, ' ').trim().toLowerCase();

/** Whether a declared side is one this metric can have, and whether it is the other way round than ours. */
function isTurned(metric: MetricId, side: PositiveSide | null): boolean {
  const { positive } = metrics[metric];
  if (side === null || positive === null) return false;
  const sideways = side === 'left' || side === 'right';
  const upright = side === 'up' || side === 'down';
  if (positive === 'right of the target line') return sideways && spellSides[side] < 0;
  if (positive === 'towards the toe') return side === 'heel';
  return upright && side !== positive;
}

/** A column of a block, and the metric that it is taken for. */
interface Headed {
  readonly block: Block;
  readonly index: number;
  readonly metric: MetricId;
}

function statedUnit({ block, index, metric }: Headed, heading: Heading, report: Report): UnitId | null {
  const { dimension } = metrics[metric];
  const { units: above } = block.statements;
  const aboveAll = above.get(metric) ?? above.get(dimension);
  // Heights are commonly in feet beside yards, but in metres beside metres.
  const fromDistance = dimension === 'height' && above.get('distance') === 'm' ? 'm' : undefined;
  const inRow = block.units?.[index]?.unit ?? null;
  const stated = [heading.unit, inRow, aboveAll ?? fromDistance ?? null].filter((unit) => unit !== null);
  const place = { line: block.line, column: index + 1, columnName: heading.text };
  const fitting = stated.filter((unit) => units[unit].dimensions.includes(dimension));
  const [first = null] = stated;
  if (fitting.length < stated.length && first !== null) {
    report('unit-contradiction', {
      ...place,
      expected: `a unit of ${metrics[metric].name}`,
      found: `${heading.text} in ${stated.find((unit) => !fitting.includes(unit)) ?? first}`,
      cure: 'correct the unit in the heading, or tell in the report which column this is',
    });
  } else if (stated.some((unit) => unit !== first)) {
    report('unit-contradiction', {
      ...place,
      expected: 'one unit for this column',
      found: [...new Set(stated)].join(' and '),
      cure: 'state the same unit in the heading and in the lines around it',
    });
  }
  return fitting[0] ?? null;
}

function metricColumn(headed: Headed, override: ColumnOverride | null, report: Report): MetricColumn | null {
  const { block, index, metric } = headed;
  const heading = block.headings[index];
  if (heading === undefined) return null;
  const place = { line: block.line, column: index + 1, columnName: heading.text };
  const overridden = override?.unit ?? null;
  if (overridden === null && heading.unreadUnit !== null) {
    const { dimension } = metrics[metric];
    const readable = Object.values(units).filter((unit) => unit.dimensions.includes(dimension));
    report('unit-unknown', {
      ...place,
      expected: readable.map(({ id }) => id).join(', '),
      found: heading.unreadUnit,
      cure: `export ${metrics[metric].name} in one of these units`,
    });
    return null;
  }
  const rowSign = block.units?.[index]?.positive ?? null;
  const sides = [heading.positive, rowSign].filter((side) => side !== null);
  const side = sides[0] ?? block.statements.positive;
  if (
    override?.positive === undefined &&
    (side === 'contradiction' || sides.some((other) => other !== sides[0]))
  ) {
    report('contradictory-sign', {
      ...place,
      expected: 'one side that counts as positive',
      found: heading.text,
      cure: 'say once which side is positive, for instance "left +"',
    });
  }
  return {
    metric,
    index,
    heading: heading.text,
    headingLine: block.line,
    unit: overridden ?? statedUnit(headed, heading, report),
    turned: isTurned(metric, override?.positive ?? (side === 'contradiction' ? null : side)),
    class: override?.class ?? heading.class ?? metrics[metric].usualClass,
  };
}

/** The columns that the report says name the contenders: by their heading, or headed with what it varies. */
function namedContenders(block: Block, { club, varied }: ShotFileOptions): readonly number[] {
  const headed = (name: string | undefined): readonly number[] =>
    name === undefined
      ? []
      : block.headings.flatMap(({ text }, index) => (sameHeading(text, name) ? [index] : []));
  const byHeading = headed(club);
  return byHeading.length > 0 ? byHeading : headed(varied);
}

/** Works out which column of a block is which. The report's own `columns:` rule over anything the file says. */
export function readColumns(block: Block, options: ShotFileOptions, report: Report): Columns {
  const found: MetricColumn[] = [];
  const roles = new Map<ColumnRole, number[]>();
  const taken = new Set<number>();
  const add = (column: MetricColumn | null): void => {
    if (column !== null) found.push(column);
  };
  for (const metric of metricIds) {
    const override = options.columns?.[metric];
    if (override === undefined) continue;
    for (const [index, { text }] of block.headings.entries()) {
      if (!sameHeading(text, override.heading)) continue;
      taken.add(index);
      add(metricColumn({ block, index, metric }, override, report));
    }
  }
  const contenders = namedContenders(block, options);
  for (const index of contenders) taken.add(index);
  const overridden = new Set(found.map(({ metric }) => metric));
  for (const [index, heading] of block.headings.entries()) {
    if (taken.has(index)) continue;
    const { meaning } = heading;
    if (meaning.kind === 'role') {
      roles.set(meaning.role, [...(roles.get(meaning.role) ?? []), index]);
    } else if (meaning.kind === 'metric' && !overridden.has(meaning.metric)) {
      add(metricColumn({ block, index, metric: meaning.metric }, null, report));
    } else if (meaning.kind === 'ambiguous' && !meaning.metrics.some((metric) => overridden.has(metric))) {
      const names = meaning.metrics.map((metric) => metrics[metric].name);
      report('heading-ambiguous', {
        line: block.line,
        column: index + 1,
        columnName: heading.text,
        expected: 'a heading that can mean one thing only',
        found: heading.text,
        cure: `write ${names.join(' or ')}, or name the column in the report under "columns"`,
      });
    }
  }
  // Where nothing names the club, a single column of balls, shafts and the like does.
  const parts = roles.get('part') ?? [];
  const kinds = roles.get('club-type') ?? [];
  if (contenders.length > 0) roles.set('club', [...contenders]);
  else if (!roles.has('club') && parts.length === 1) roles.set('club', parts);
  else if (!roles.has('club') && parts.length === 0 && kinds.length === 1) roles.set('club', kinds);
  return { metrics: found.toSorted((a, b) => a.index - b.index), roles };
}

/** Refuses a `columns:` entry that names a heading which no block has. */
export function reportUnmatchedOverrides(
  blocks: readonly Block[],
  options: ShotFileOptions,
  report: Report,
): void {
  const headings = new Set(blocks.flatMap((block) => block.headings.map(({ text }) => text)));
  const wanted = metricIds.flatMap((metric) => options.columns?.[metric]?.heading ?? []);
  for (const heading of options.club === undefined ? wanted : [...wanted, options.club]) {
    if ([...headings].some((text) => sameHeading(text, heading))) continue;
    report('override-matches-nothing', {
      expected: `a column headed "${heading}"`,
      found: [...headings].filter((text) => text !== '').join(', ') || null,
      cure: 'write the heading in the report exactly as it stands in the file',
    });
  }
}
