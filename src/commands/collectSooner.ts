import { setFlagsFromString } from 'node:v8';

/**
 * Lets the heaps of this process and its workers grow by two fifths between collections instead of several times over. A
 * thousand reports leave behind much that nobody needs: it takes a good deal of memory less, and about a tenth more time.
 */
export function collectSooner(): void {
  setFlagsFromString('--heap-growing-percent=40');
}
