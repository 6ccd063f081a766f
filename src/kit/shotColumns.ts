import { hitOrder } from '../findings/hitOrder.ts';
import { shotsOfHitter } from '../findings/shotsOfHitter.ts';
import { flightModelHeading } from '../intake/modelledColumns.ts';
import type { Session, Shot } from '../intake/session.ts';
import type { ShotColumn } from '../intake/shots/shotFile.ts';
import { shortUnit } from '../prose/readerUnits.ts';
import { capitalised } from '../prose/words.ts';
import { metricIds, metrics } from '../trade/metrics.ts';
import { ucumCodes } from '../trade/ucum.ts';
import { fromCanonical, toCanonical } from '../trade/units.ts';
import { guarded } from './guarded.ts';
import type { Report } from './report.ts';
import type { TableField } from './tableField.ts';

/** A column of `shots.csv`: what its heading means, and the cell of each shot. */
interface ShotsColumn {
  readonly field: TableField;
  readonly cell: (shot: Shot) => string;
}

/**
 * The columns of `shots.csv`, the same in every report but for the measures: who hit, which shot, what was hit by id and
 * label, then every measure in the unit of the session file, and what was left out.
 */
export function shotColumns({ session, source, telling: { noun } }: Report): readonly ShotsColumn[] {
  const { contenders, inventedData, rowsInHitOrder } = source.front;
  const roundOf = rowsInHitOrder ? roundsCounted(session) : new Map<Shot, number>();
  const labels = new Map(contenders.map(({ id, label }) => [id, label]));
  const always = { required: true };
  return [
    ...(inventedData ? [invented] : []),
    {
      field: {
        name: 'Golfer',
        type: 'string',
        description: 'Who hit: an id, no name.',
        constraints: { ...always, enum: session.hitters },
      },
      cell: ({ hitter }) => hitter,
    },
    {
      field: {
        name: 'Shot',
        type: 'integer',
        description: 'Number of the shot in the session file, else its place there.',
        constraints: always,
      },
      cell: ({ shotNo, order }) => String(shotNo ?? order),
    },
    {
      field: {
        name: 'Order',
        type: 'integer',
        description: `Place among this golfer's shots without warm-ups, in the order of the ${rowsInHitOrder ? 'hitting' : 'file, which is not that of the hitting'}.`,
        constraints: always,
      },
      cell: ({ order }) => String(order),
    },
    {
      field: {
        name: 'Round',
        type: 'integer',
        description:
          'The round (one of each) or set of spells of this golfer in which the shot was counted; empty for one hit again within its round, and where the order has no rounds.',
      },
      cell: (shot) => String(roundOf.get(shot) ?? ''),
    },
    {
      field: {
        name: 'Contender',
        type: 'string',
        description: `The ${noun} hit, by its id in findings.json.`,
        constraints: { ...always, enum: contenders.map(({ id }) => id) },
      },
      cell: ({ contender }) => contender,
    },
    {
      field: {
        name: 'Label',
        type: 'string',
        description: `The ${noun} hit, by its name.`,
        constraints: { ...always, enum: contenders.map(({ label }) => guarded(label)) },
      },
      cell: ({ contender }) => labels.get(contender) ?? '',
    },
    ...metricIds.flatMap((id) => session.columns[id] ?? []).map(measure),
    {
      field: {
        name: 'Left out',
        type: 'string',
        description: '"yes" for a shot left out of every figure.',
        constraints: { enum: ['yes'] },
      },
      cell: ({ excluded }) => (excluded === null ? '' : 'yes'),
    },
    {
      field: { name: 'Reason', type: 'string', description: 'The rule by which it was left out, and why.' },
      cell: ({ excluded }) => (excluded === null ? '' : `${excluded.rule}: ${excluded.reason}`),
    },
  ];
}

const invented: ShotsColumn = {
  field: {
    name: 'Invented data',
    type: 'string',
    description: '"yes" in every row: nobody hit these shots.',
    constraints: { required: true, enum: ['yes'] },
  },
  cell: () => 'yes',
};

function measure(column: ShotColumn): ShotsColumn {
  const { metric, unit, class: kind, from } = column;
  const { name, positive } = metrics[metric];
  const ours = column.heading === flightModelHeading;
  const sign = unit === 'deg' ? 'deg' : shortUnit(unit);
  const inBrackets = [sign, ours ? 'modelled by our flight model' : kind === 'measured' ? '' : kind];
  const said = inBrackets.filter((part) => part !== '').join(', ');
  const made = from === undefined ? '' : ` from ${metrics[from[0]].name} and ${metrics[from[1]].name}`;
  const meaning = [
    name,
    sign === '' ? 'no unit' : unit === 'deg' ? 'degrees' : sign,
    ours ? 'modelled by our flight model from the launch, in no session file' : `${kind}${made}`,
  ].join(', ');
  return {
    field: {
      name: capitalised(said === '' ? name : `${name} (${said})`),
      type: 'number',
      description: `${capitalised(meaning)}.${positive === null ? '' : ` Positive: ${positive}.`}`,
      metric,
      unit,
      ucum: ucumCodes[unit],
      toSI: toCanonical(1, unit),
      class: kind,
      ...(from === undefined ? {} : { calculatedFrom: from }),
    },
    cell: ({ values }) => {
      const value = values[metric];
      if (typeof value !== 'number') return '';
      const inUnit = fromCanonical(value, unit);
      return from === undefined ? asTyped(inUnit) : oneDigitMore(inUnit, fromCanonical(column.step, unit));
    },
  };
}

/** What conversion there and back adds lies past the twelfth digit. */
function asTyped(value: number): string {
  return String(Number(value.toPrecision(12)));
}

/** What follows from two readings, one digit finer than the step: a quotient would have sixteen digits. */
function oneDigitMore(value: number, step: number): string {
  const decimals = Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)) + 1;
  return String(Number(value.toFixed(decimals)));
}

/** Round or set of spells of each shot that counts in one, from 1 for each golfer. */
function roundsCounted(session: Session): ReadonlyMap<Shot, number> {
  return new Map(
    hitOrder(session, null).turns.flatMap(({ hitter, turns }) => {
      const shots = shotsOfHitter(session, hitter);
      return turns.blocks.flatMap((places, block) =>
        places.flatMap((place): (readonly [Shot, number])[] => {
          const shot = shots[place];
          return shot === undefined ? [] : [[shot, block + 1]];
        }),
      );
    }),
  );
}
