import type { Table } from '../charts/table.ts';

/** A table as plain text: caption, head, then one line a row, cells parted by tabs. */
export function tableText({ caption, head, rows }: Table): string {
  return [caption, ...[head, ...rows].map((row) => row.join('\t'))].join('\n');
}
