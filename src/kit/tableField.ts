import type { MetricClass, MetricId } from '../trade/metrics.ts';
import type { UnitId } from '../trade/units.ts';

/** A field of a table in the words of the Table Schema, version 2, with what a program needs besides. */
export interface TableField {
  readonly name: string;
  readonly type: 'string' | 'number' | 'integer';
  readonly description: string;
  readonly constraints?: { readonly required?: boolean; readonly enum?: readonly string[] };
  /** The measure that the column holds, by its id in `findings.json`. */
  readonly metric?: MetricId;
  readonly unit?: UnitId;
  /** The same by its code in the Unified Code for Units of Measure. */
  readonly ucum?: string;
  /** What a value times makes one in the unit of `findings.json`. */
  readonly toSI?: number;
  readonly class?: MetricClass;
  /** The two measures that a value is made of wherever both are there. */
  readonly calculatedFrom?: readonly [MetricId, MetricId];
}
