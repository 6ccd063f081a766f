import type { TableField } from './tableField.ts';

/** The columns of a CSV file in the words of the Table Schema, version 2. */
export interface TableSchema {
  readonly $schema: string;
  readonly fields: readonly TableField[];
  readonly missingValues: readonly string[];
}

/** An empty cell is one without a value, in every file of ours. */
export function tableSchema(fields: readonly TableField[]): TableSchema {
  return { $schema: 'https://datapackage.org/profiles/2.0/tableschema.json', fields, missingValues: [''] };
}
