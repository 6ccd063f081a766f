import { contenderAnswers } from '../../src/intake/authored/contender.ts';
import { fieldBlocks, type FieldBlock } from '../../src/intake/authored/fields.ts';
import { frontAnswers } from '../../src/intake/authored/front.ts';
import { sheetItems } from '../../src/intake/authored/sheet.ts';
import { shopAnswers } from '../../src/intake/authored/shop.ts';
import { code, takesOf } from '../../src/intake/authored/takes.ts';
import { orderSheetColumns } from '../../src/intake/plan/readOrderSheet.ts';
import { narrativeCharts } from '../../src/charts/narrativeCharts.ts';
import { formNames, narrativeForms } from '../../src/prose/narrativeForms.ts';
import { resolveReference, valueText } from '../../src/prose/references.ts';
import { around, reportOf, threeHeads } from '../findings/reportOf.ts';
import { metrics } from '../../src/trade/metrics.ts';

/** Between these lines `content/README.md` is written by `npm run reference`; what stands there otherwise is an error. */
export const markers = {
  begin: '<!-- reference: written by `npm run reference` from the schemas; do not edit -->',
  end: '<!-- end of the reference -->',
} as const;

/** The reference of all that a shop writes, as Markdown. */
export function reference(): string {
  const told = new Map();
  const report = fieldBlocks(frontAnswers, told);
  const shop = fieldBlocks(shopAnswers, told);
  return [
    '### `report.md`',
    ...report.map((block) => blockText(block, 'report.md')),
    '### `shop.yaml`',
    ...shop.map((block) => blockText(block, 'shop.yaml')),
    '### `contenders/<id>.yaml`',
    `The keys of ${code('contenders.<id>')} above: ${keysOf(contenderAnswers)}.`,
    '### Build sheets',
    'Each takes text, as on the sheet; what has no key here goes under `also`, which takes any.',
    listed(Object.entries(sheetItems).map(([key, words]) => [key, key === words ? '' : words])),
    '### Metrics',
    'By these names, or by the words of the trade: `Ball Speed`, `ball speed`.',
    listed(Object.values(metrics).map(({ id, name }) => [id, id === name ? '' : name])),
    '### Values of a narrative',
    'Alder, Birch and Cedar stand for the ids of your own contenders; `METRIC` is one of those above. A value prints its unit, yards or metres as a reader chooses, so write none behind it. There is no `best`: of more shots the best is better, whatever was hit.',
    table(['value', 'prints', 'which is'], narrativeValues()),
    '### `order_sheet`',
    table(
      ['heading', '', 'what stands under it'],
      Object.entries(orderSheetColumns).map(([key, { must, means }]) => [
        code(key.charAt(0).toUpperCase() + key.slice(1)),
        must ? 'required' : '',
        means,
      ]),
    ),
  ].join('\n\n');
}

/** What each value of a narrative prints of an invented report. */
function narrativeValues(): readonly (readonly string[])[] {
  const { telling, findings } = reportOf({
    shots: {
      ...threeHeads,
      'Ball Speed (mph)': { alder: around(151, 0.2), birch: around(150, 0.2), cedar: around(149, 0.2) },
    },
  });
  const charts = narrativeCharts(findings);
  const given: Readonly<Record<string, readonly string[]>> = {
    METRIC: ['carry'],
    NAME: ['alder', 'cedar'],
    CHART: ['shots'],
  };
  const rows = formNames.map((form) => {
    const { takes, means } = narrativeForms[form];
    const used: Record<string, number> = {};
    const words = takes.map((part) => {
      const at = used[part] ?? 0;
      used[part] = at + 1;
      return given[part]?.[at] ?? part;
    });
    return { words: [form, ...words], means };
  });
  const inTradeWords = {
    words: ['mean', 'Ball Speed', 'alder'],
    means: 'metrics in the words of the trade too',
  };
  return [...rows, inTradeWords].map(({ words, means }) => {
    const typed = words.join(' ');
    const resolved = resolveReference(typed.split(' '), telling, Object.keys(charts));
    if (resolved.kind === 'unknown') throw new Error(`{{ ${typed} }}: ${resolved.cure}`);
    const prints =
      resolved.kind === 'chart' ? `the chart “${charts[resolved.chart]?.title ?? ''}”` : valueText(resolved);
    return [code(`{{ ${typed} }}`), prints, means];
  });
}

/** `content/README.md` with its reference as the schemas have it; null where a marker is missing. */
export function withReference(readme: string): string | null {
  const [before, rest] = readme.split(markers.begin);
  const after = rest?.split(markers.end)[1];
  if (before === undefined || after === undefined) return null;
  // Prettier would pad every cell to the longest one.
  const ignored = ['<!-- prettier-ignore-start -->', reference(), '<!-- prettier-ignore-end -->'];
  return `${before}${[markers.begin, ...ignored, markers.end].join('\n\n')}${after}`;
}

function blockText({ path, fields, like }: FieldBlock, file: string): string {
  if (like !== null) return `${code(path)}: the keys of ${code(like)} above.`;
  const rows = fields.map(({ key, takes, required, means }) => [
    code(key),
    required ? 'required' : '',
    takes,
    means,
  ]);
  return table([path === '' ? code(file) : code(path), '', 'takes', 'means'], rows);
}

function table(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`;
  return [line(headings), line(headings.map(() => '---')), ...rows.map(line)].join('\n');
}

const cell = (text: string): string => text.replaceAll('|', '\\|');

const keysOf = (schema: typeof contenderAnswers): string =>
  (takesOf(schema).inside ?? []).map(([step]) => code(step.slice(1))).join(', ');

function listed(items: readonly (readonly [key: string, words: string])[]): string {
  return `${items.map(([key, words]) => `${code(key)}${words === '' ? '' : ` ${words}`}`).join('; ')}.`;
}
