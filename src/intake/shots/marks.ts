import { at } from '../../stats/at.ts';
import type { ColumnRole } from '../../trade/columnRoles.ts';
import { isMissingMark } from './cell.ts';
import type { Report } from './collector.ts';
import { isWarmUpWord } from './summaryWords.ts';
import type { Table } from './table.ts';

const yes = new Set(['yes', 'y', 'true', 't', '1', 'x', '✓', '✔', '☑', 'ok', 'on']);
const no = new Set(['no', 'n', 'false', 'f', '0', 'off', '✗', '✘', '☐']);
const outWords =
  /^(?:excluded?|ignored?|discard(?:ed)?|omit(?:ted)?|deleted?|void(?:ed)?|invalid|reject(?:ed)?|bad|left out|not used|not to be used|do not use|unused|skip(?:ped)?|drop(?:ped)?|removed?)$/;
const inWords = /^(?:included?|used?|valid|good|kept?|keep|counted|counts|accepted|recorded|normal)$/;
const warmUpMark = /^warm(?:ing)?[\s-]*ups?$/;

/** Whether each row is marked as not to be used, and whether it is a warm-up. */
interface Marks {
  readonly excluded: readonly boolean[];
  readonly warmUp: readonly boolean[];
}

type MarkRole = 'exclude' | 'include' | 'warm-up' | 'status';
type Mark = 'out' | 'in' | 'warm-up' | 'blank' | 'unclear';

function readMark(cell: string, role: MarkRole): Mark {
  const text = cell.replace(/\s+/g, ' ').trim().toLowerCase();
  if (isMissingMark(text)) return 'blank';
  if (warmUpMark.test(text)) return 'warm-up';
  if (outWords.test(text)) return 'out';
  if (inWords.test(text)) return 'in';
  // A status says many things; only plain words for leaving a shot out count.
  if (role === 'status') return 'in';
  if (yes.has(text)) return role === 'include' ? 'in' : 'out';
  if (no.has(text)) return role === 'include' ? 'out' : 'in';
  return 'unclear';
}

/** Reads the columns in which the fitter marks shots. */
export function readMarks(table: Table, report: Report): Marks {
  const excluded = table.rows.map(() => false);
  const warmUp = table.rows.map(() => false);
  const headings = table.rows[0]?.block.headings ?? [];
  for (const role of ['exclude', 'include', 'warm-up', 'status'] as const satisfies readonly ColumnRole[]) {
    for (const index of table.columns.roles.get(role) ?? []) {
      const read = table.rows.map(({ cells }) => readMark(cells[index] ?? '', role));
      // A column that only ever says yes leaves open what its blanks mean.
      const blanksOpen =
        role === 'include' && read.includes('in') && read.includes('blank') && !read.includes('out');
      for (const [row, mark] of read.entries()) {
        if (mark === 'warm-up' || (role === 'warm-up' && mark === 'out')) warmUp[row] = true;
        else if (mark === 'out') excluded[row] = true;
        if (mark !== 'unclear' && !(mark === 'blank' && blanksOpen)) continue;
        const { line, cells } = at(table.rows, row);
        report('mark-unclear', {
          line,
          column: index + 1,
          columnName: headings[index]?.text ?? null,
          expected: 'yes or no',
          found: mark === 'blank' ? null : (cells[index] ?? '').trim().slice(0, 80),
          cure: 'write yes or no into that cell, so that nobody need guess whether the shot counts',
        });
      }
    }
  }
  const [shots] = table.columns.roles.get('shot') ?? [];
  if (shots !== undefined) {
    for (const [row, { cells }] of table.rows.entries())
      if (isWarmUpWord(cells[shots] ?? '')) warmUp[row] = true;
  }
  return { excluded, warmUp };
}
