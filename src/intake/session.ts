import type { MetricId } from '../trade/metrics.ts';
import type { ShotColumn } from './shots/shotFile.ts';

/** Why a recorded shot is left out of every figure. */
export interface Exclusion {
  readonly rule: string;
  readonly reason: string;
}

/** One swing with a contender of the report, excluded ones included, warm-ups not. */
export interface Shot {
  readonly contender: string;
  readonly hitter: string;
  readonly round: number | null;
  /** Position among all shots of its hitter, from 1, in the order of the file. */
  readonly order: number;
  readonly shotNo: number | null;
  readonly time: string | null;
  /** Canonical units; null where the file has the column but no reading. */
  readonly values: Readonly<Partial<Record<MetricId, number | null>>>;
  readonly excluded: Exclusion | null;
  readonly place: { readonly file: string; readonly line: number };
}

/** All shots of a report, ready for analysis. */
export interface Session {
  /** Contender ids in the order of the front matter. */
  readonly contenders: readonly string[];
  readonly hitters: readonly string[];
  readonly shots: readonly Shot[];
  /** Warm-up swings in the files, set aside. */
  readonly warmUps: number;
  readonly columns: Readonly<Partial<Record<MetricId, ShotColumn>>>;
  /** With what our flight model worked out the columns that the files do not have; absent where it worked out none. */
  readonly modelledWith?: ModelledWith;
}

/** What decides a modelled flight besides its launch. */
interface ModelledWith {
  /** The set of coefficients, by its id. */
  readonly coefficients: string;
  /** By which its drag is multiplied; 1 where no carries were there to tune it to. */
  readonly dragScale: number;
  readonly air: {
    /** kg/m3 */
    readonly density: number;
    /** dynamic, Pa s */
    readonly viscosity: number;
  };
}
