import type { AnalysisInput } from '../../src/findings/analysisInput.ts';
import type { Session, Shot } from '../../src/intake/session.ts';
import type { ShotColumn } from '../../src/intake/shots/shotFile.ts';
import { metrics, type MetricClass, type MetricId } from '../../src/trade/metrics.ts';
import { toCanonical } from '../../src/trade/units.ts';

/** One swing of an invented session; readings in canonical units. */
export interface Swing {
  readonly contender: string;
  readonly hitter?: string;
  readonly round?: number;
  readonly values: Readonly<Partial<Record<MetricId, number | null>>>;
  readonly leftOut?: boolean;
}

interface Options extends Partial<Omit<AnalysisInput, 'session' | 'contenders'>> {
  readonly contenders?: readonly string[];
  readonly labels?: readonly string[];
  /** Step of every column, canonical unit. */
  readonly step?: number;
  readonly classes?: Readonly<Partial<Record<MetricId, MetricClass>>>;
}

export const yd = (yards: number): number => toCanonical(yards, 'yd');
/** A tenth of a yard. */
export const tenthYard = yd(0.1);

/** The swings in hit order as a session; contenders and hitters in order of first appearance. */
export function sessionOf(swings: readonly Swing[], options: Options = {}): Session {
  const places = new Map<string, number>();
  const shots = swings.map((swing, index): Shot => {
    const hitter = swing.hitter ?? 'one';
    const order = (places.get(hitter) ?? 0) + 1;
    places.set(hitter, order);
    return {
      contender: swing.contender,
      hitter,
      round: swing.round ?? null,
      order,
      shotNo: index + 1,
      time: null,
      values: swing.values,
      excluded: swing.leftOut === true ? { rule: 'outside event', reason: 'a ball rolled past' } : null,
      place: { file: 'shots.csv', line: index + 2 },
    };
  });
  const columns: Partial<Record<MetricId, ShotColumn>> = {};
  const ids = new Set(swings.flatMap(({ values }) => metricKeys(values)));
  [...ids].forEach((metric, index) => {
    columns[metric] = {
      metric,
      heading: metric,
      column: index + 2,
      unit: 'm',
      step: options.step ?? tenthYard,
      class: options.classes?.[metric] ?? 'measured',
    };
  });
  return {
    contenders: options.contenders ?? [...new Set(swings.map(({ contender }) => contender))],
    hitters: [...places.keys()],
    shots,
    warmUps: 0,
    columns,
  };
}

const isMetric = (key: string): key is MetricId => Object.hasOwn(metrics, key);
const metricKeys = (values: Swing['values']): MetricId[] => Object.keys(values).filter(isMetric);

/** All that the analysis takes, for a test of heads with carry as the one primary metric unless told otherwise. */
export function inputFor(swings: readonly Swing[], options: Options = {}): AnalysisInput {
  const session = sessionOf(swings, options);
  return {
    slug: 'invented',
    title: 'Invented',
    date: '2026-04-11',
    contenders: session.contenders.map((id, index) => ({ id, label: options.labels?.[index] ?? id })),
    primaries: options.primaries ?? ['carry'],
    better: options.better ?? {},
    matters: options.matters ?? {},
    mattersOfShop: options.mattersOfShop ?? [],
    accuracy: options.accuracy ?? {},
    statedOrder: options.statedOrder ?? null,
    orderReproduced: false,
    plan: options.plan ?? 'not-said',
    claims: options.claims ?? [],
    written: options.written ?? {
      varied: 'head',
      date: '2026-04-11',
      contenders: [],
      held: {},
      plan: null,
      hitters: [],
      conditions: {},
      columns: {},
    },
    session,
    seed: '0123456789abcdef',
  };
}

/** Carries in yards, a list each contender, hit in turn: first of each, second of each, and so on. */
export function inTurn(carries: Readonly<Record<string, readonly number[]>>, hitter = 'one'): Swing[] {
  const rounds = Math.max(...Object.values(carries).map((own) => own.length));
  return Array.from({ length: rounds }, (_, round) =>
    Object.entries(carries).flatMap(([contender, own]): Swing[] => {
      const carry = own[round];
      return carry === undefined ? [] : [{ contender, hitter, values: { carry: yd(carry) } }];
    }),
  ).flat();
}

/** The same carries in turn, all counted, but the last of each in a round of its own: one round fewer holds both. */
export function lastApart({ a = [], b = [] }: Readonly<Record<'a' | 'b', readonly number[]>>): Swing[] {
  const last = a.length - 1;
  const swings = inTurn({
    a: [...a.slice(0, last), a[last] ?? 0, 0],
    b: [...b.slice(0, last), 0, b[last] ?? 0],
  });
  const notCounted = [swings.length - 3, swings.length - 2];
  return swings.map((swing, place) => ({ ...swing, leftOut: notCounted.includes(place) }));
}

/** The same carries, all of one contender before the next. */
export function oneAfterAnother(
  carries: Readonly<Record<string, readonly number[]>>,
  hitter = 'one',
): Swing[] {
  return Object.entries(carries).flatMap(([contender, own]) =>
    own.map((carry): Swing => ({ contender, hitter, values: { carry: yd(carry) } })),
  );
}

/** The same carries in visits of `length` shots, contenders in turn. */
export function inVisits(
  carries: Readonly<Record<string, readonly number[]>>,
  length: number,
  hitter = 'one',
): Swing[] {
  const most = Math.max(...Object.values(carries).map((own) => own.length));
  return Array.from({ length: Math.ceil(most / length) }, (_, visit) =>
    Object.entries(carries).flatMap(([contender, own]) =>
      own
        .slice(visit * length, (visit + 1) * length)
        .map((carry): Swing => ({ contender, hitter, values: { carry: yd(carry) } })),
    ),
  ).flat();
}
