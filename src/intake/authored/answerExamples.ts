import { valueAt, type Path, type Tree } from './tree.ts';

const currencies: Readonly<Record<string, string>> = { '£': 'GBP', $: 'USD', '€': 'EUR', '¥': 'JPY' };

/** A price as it stands on a tag, as an answer; the day is that of the session, where that can be read. */
function priceFrom(typed: string, tree: Tree): string {
  const amount = /\d[\d.,]*/
    .exec(typed)?.[0]
    .replace(/,(?=\d{3}(?!\d))/g, '')
    .replace(/[.,]$/, '');
  const sign = /[£$€¥]/.exec(typed)?.[0] ?? '';
  const code = /(?<![A-Za-z])[A-Z]{3}(?![A-Za-z])/.exec(typed)?.[0];
  const day = valueAt(tree, ['date']);
  const on = typeof day === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(day) ? day : '2026-04-11';
  return `{amount: ${amount?.replace(',', '.') ?? 499}, currency: ${code ?? currencies[sign] ?? 'GBP'}, on: ${on}}`;
}

/** An id that the report has, so that an example can be taken as it stands. */
function firstId(tree: Tree, key: string, otherwise: string): string {
  const block = valueAt(tree, [key]);
  return typeof block === 'object' && block !== null && !Array.isArray(block)
    ? (Object.keys(block)[0] ?? otherwise)
    : otherwise;
}

/** Of a distance only: another measure has another unit. */
function mattersFrom(typed: string, tree: Tree): string | null {
  const primary = valueAt(tree, ['primary']);
  const number = /^\d{1,3}(?:\.\d)?/.exec(typed)?.[0] ?? '5';
  return primary === 'carry' || primary === 'total' ? `{${primary}: ${number} yd}` : null;
}

/** By the key of an answer that is a block or a list: what it can look like on one line. None for interests: nobody is to take what suits. */
const examples: Readonly<Record<string, (typed: string, tree: Tree) => string | null>> = {
  price: priceFrom,
  hitters: () => '{one: {role: staff fitter, hand: right, consent: yes}}',
  exclusions: (typed, tree) =>
    `[{contender: ${firstId(tree, 'contenders', 'alder')}, shot: ${/^\d{1,4}$/.test(typed) ? typed : 6}, rule: mishits, reason: hit the frame of the net}]`,
  matters: mattersFrom,
  corrections: () => '[{date: 2026-05-02, what: the carry of one shot, was: 244 yards, now: 224 yards}]',
  replies: () => '[{from: the maker, date: 2026-05-02, text: "What they answered."}]',
  withdrawn: () => '{date: 2026-05-02, reason: why it no longer stands}',
  conditions: () => '{place: indoors, ball: the same for all}',
};

/** An answer of the right form for a key at which only words were typed; null where there is nothing to show. */
export function exampleFor(path: Path, typed: string, tree: Tree): string | null {
  const key = path.at(-1);
  const example = typeof key === 'string' && Object.hasOwn(examples, key) ? examples[key] : undefined;
  const shown = example?.(typed.trim(), tree) ?? null;
  return shown === null ? null : `${String(key)}: ${shown}`;
}
