import type { TableSchema } from './tableSchema.ts';

/** A file as `datapackage.json` describes it. */
export interface DescribedFile {
  readonly name: string;
  /** From the folder of the report. */
  readonly path: string;
  readonly title: string;
  readonly description?: string;
  readonly format: string;
  readonly mediatype: string;
  /** What is in it; null where that is not known without drawing it. */
  readonly text: string | null;
  /** Of a table; null of anything else. */
  readonly schema: TableSchema | null;
  /** Whose licence it stands under. */
  readonly of: 'data' | 'charts';
}
