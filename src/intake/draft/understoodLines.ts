import { visible } from '../../problems/visible.ts';
import type { OrderClass } from '../../stats/orderClass.ts';
import { metrics } from '../../trade/metrics.ts';
import { fewestContenders, mostContenders } from '../authored/contenderChecks.ts';
import type { FoundName, Understood } from './understood.ts';

/** One thing that was understood, in words for the fitter. */
export interface UnderstoodLine {
  readonly label: string;
  readonly text: string;
}

const counted = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? '' : 's'}`;

/** What was understood, a line each, in the order in which a fitter would check it. */
export function understoodLines(understood: Understood): readonly UnderstoodLine[] {
  const { columns, ignoredHeadings, days } = understood;
  if (understood.shots + understood.warmUps === 0) return [{ label: 'shots', text: 'none could be read' }];
  const lines: readonly (readonly [label: string, text: string])[] = [
    ['shots', shots(understood)],
    ['compared', compared(understood)],
    ['columns', columns.map(column).join(', ') || 'none of the trade'],
    ...(ignoredHeadings.length === 0 ? [] : [['not used', ignoredHeadings.join(', ')] as const]),
    ['hitters', hitters(understood)],
    ['order', order(understood)],
    ...(days.length === 0 ? [] : [['hit on', days.join(', ')] as const]),
  ];
  return lines.map(([label, text]) => ({ label, text: visible(text) }));
}

function shots({ shots: all, markedExcluded, warmUps }: Understood): string {
  const apart = [
    ...(markedExcluded === 0 ? [] : [`${markedExcluded} marked as not to be used`]),
    ...(warmUps === 0 ? [] : [`${counted(warmUps, 'warm-up swing')} not counted`]),
  ];
  return apart.length === 0 ? String(all) : `${all} (${apart.join('; ')})`;
}

function compared({ contenders }: Understood): string {
  const listed = contenders.map(named).join(', ');
  if (contenders.length < fewestContenders)
    return `${listed} (a report needs two: name this file and that of the other in one go, or add a column that names them)`;
  if (contenders.length > mostContenders)
    return `${listed} (${contenders.length}; a report compares ${mostContenders} at most: split the file)`;
  return listed;
}

const named = ({ name, shots: own }: FoundName): string => `${name} ${own}`;

function column({ metric, heading, unit }: Understood['columns'][number]): string {
  const { name } = metrics[metric];
  // A heading that says no more than the name does need not be repeated.
  const bare = heading
    .replace(/[([{].*$/, '')
    .trim()
    .toLowerCase();
  const under = bare === name ? '' : ` under "${heading}"`;
  return `${name}${unit === '1' ? '' : ` in ${unit}`}${under}`;
}

function hitters({ hitters: found, nameless }: Understood): string {
  if (found.length === 0) return 'not named: taken as one';
  return [...found.map(named), ...(nameless === 0 ? [] : [`not named ${nameless}`])].join(', ');
}

function order({ orders, contenders }: Understood): string {
  if (orders.length === 0 || contenders.length < 2) return 'only one thing was hit';
  const told = orders.map(({ hitter, order: found }) => ({ hitter, words: orderWords(found) }));
  const [first] = told;
  if (told.every(({ words }) => words === first?.words)) return first?.words ?? '';
  return told.map(({ hitter, words }) => `${hitter ?? 'not named'}: ${words}`).join('; ');
}

function orderWords(found: OrderClass): string {
  switch (found.kind) {
    case 'one-after-another':
      return 'one after another';
    case 'mini-blocks':
      return `in short blocks, each at least ${found.fewestVisits} times`;
    case 'rotation':
      return `in turn, ${counted(found.complete, 'complete round')}, ${
        found.order === 'same' ? 'always in the same order' : 'in a changing order'
      }`;
    case 'mixed':
      return 'mixed';
  }
}
