import { ucumCodes } from '../trade/ucum.ts';
import { chartData } from './chartData.ts';
import type { DescribedFile } from './describedFile.ts';
import { kitOf } from './kitOf.ts';
import type { Report } from './report.ts';
import { tableSchema } from './tableSchema.ts';

/** The charts of a report as files: each as a picture in two formats, and what it draws as a table and as JSON. */
export function chartFiles(report: Report): readonly DescribedFile[] {
  return kitOf(report).offered.flatMap(({ figure, title, headline }) => {
    const { csv, json, fields } = chartData(report, figure);
    const file = (format: string, mediatype: string) => ({
      name: `${figure.id}-${format}`,
      path: `charts/${figure.id}.${format}`,
      title,
      description: headline,
      format,
      mediatype,
    });
    const coded = fields.map((field) =>
      field.unit === undefined ? field : { ...field, ucum: ucumCodes[field.unit] },
    );
    return [
      { ...file('csv', 'text/csv'), text: csv, schema: tableSchema(coded), of: 'data' },
      { ...file('json', 'application/json'), text: json, schema: null, of: 'data' },
      // Drawn only when somebody asks for them: their sizes are not known here.
      { ...file('svg', 'image/svg+xml'), text: null, schema: null, of: 'charts' },
      { ...file('png', 'image/png'), text: null, schema: null, of: 'charts' },
    ];
  });
}
