import { headingOf, type ChartNumbers } from '../charts/chartNumbers.ts';
import type { DrawnFigure } from '../charts/figure.ts';
import { absoluteAddress } from './absoluteAddress.ts';
import { csvText } from './csvText.ts';
import { metricsIn } from './figureAnswer.ts';
import { wholeHeadline } from './headline.ts';
import { publisherOf } from './interestInShort.ts';
import { licenceText } from './licences.ts';
import { numbersOfChart } from './numbersOfChart.ts';
import type { Report } from './report.ts';
import { reportVersion } from './reportVersion.ts';
import { textOf } from './said.ts';
import type { TableField } from './tableField.ts';
import { unitFor } from '../prose/readerUnits.ts';

/** What a chart draws, as files. */
interface ChartData {
  /** RFC 4180, UTF-8, the unit of each column in its heading. */
  readonly csv: string;
  readonly json: string;
  /** Columns of the CSV in the words of the Table Schema. */
  readonly fields: readonly TableField[];
}

/** What a chart of a report draws, in the units of the shop: a CSV with a heading, and JSON that says whose it is. */
export function chartData(report: Report, figure: DrawnFigure): ChartData {
  const numbers = withStamp(report, numbersOfChart(report, figure));
  const fields = numbers.columns.map((column) => ({
    name: headingOf(column),
    type: column.type,
    description: column.description,
    ...(column.unit === null ? {} : { unit: column.unit }),
  }));
  return {
    fields,
    csv: csvText([
      fields.map(({ name }) => name),
      ...numbers.rows.map((row) => row.map((cell) => (cell === null ? '' : String(cell)))),
    ]),
    json: `${JSON.stringify(described(report, figure, numbers), null, 1)}\n`,
  };
}

/** A row that is cut out of its table still says that nobody hit the shots. */
function withStamp({ source }: Report, { columns, rows }: ChartNumbers): ChartNumbers {
  if (!source.front.inventedData) return { columns, rows };
  return {
    columns: [
      {
        name: 'Invented data',
        type: 'string',
        unit: null,
        description: '"yes" in every row: nobody hit these shots.',
      },
      ...columns,
    ],
    rows: rows.map((row) => ['yes', ...row]),
  };
}

function described(report: Report, figure: DrawnFigure, { columns, rows }: ChartNumbers) {
  const { source, telling } = report;
  const { front, shop, slug } = source;
  const [metric, ...others] = metricsIn(report.findings, figure);
  return {
    id: figure.id,
    question: figure.question,
    finding: textOf(wholeHeadline(report, figure)),
    subject: figure.subject,
    invented: front.inventedData,
    unit: metric === undefined || others.length > 0 ? null : unitFor(metric.id, telling.system),
    report: {
      title: front.title,
      address: absoluteAddress(shop)?.(`/reports/${slug}/`) ?? null,
      version: reportVersion(source),
      status: front.status,
      tested: front.date,
      published: front.published,
      publisher: publisherOf(report),
    },
    licence: shop?.reuse.licenceData === undefined ? null : licenceText(shop.reuse.licenceData),
    columns: columns.map(({ name, unit, description }) => ({ name, unit, description })),
    rows: rows.map((row) => Object.fromEntries(columns.map(({ name }, at) => [name, row[at] ?? null]))),
  };
}
