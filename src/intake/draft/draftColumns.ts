import { visible } from '../../problems/visible.ts';
import type { ShotColumn } from '../shots/shotFile.ts';
import { ask, comment } from './ask.ts';
import type { OpenColumn } from './openColumns.ts';
import { yamlScalar } from './yamlScalar.ts';

/** The block `columns`, which asks for the units that only the fitter knows; nothing where there are none. */
export function draftColumns(open: readonly OpenColumn[]): readonly string[] {
  if (open.length === 0) return [];
  return [
    ...comment('What the file does not say of its columns.'),
    'columns:',
    ...open.flatMap(({ metric, heading, units }) => [
      `  ${metric}:`,
      `    heading: ${yamlScalar(heading)}`,
      ...ask({
        key: 'unit',
        question: `In which unit is ${visible(heading)}: ${units.join(' or ')}?`,
        must: true,
        indent: 4,
      }),
    ]),
  ];
}

/** The block `columns` of the monitor in `conditions`; nothing where no column was understood. */
export function draftClasses(columns: readonly ShotColumn[]): readonly string[] {
  if (columns.length === 0) return [];
  return [
    ...comment('How did each column come about? The manual of the monitor says.', 4),
    '    columns:',
    ...columns.flatMap(({ metric }) =>
      ask({
        key: metric,
        question: `${metric}: measured, derived, modelled or estimated?`,
        indent: 6,
      }),
    ),
  ];
}
