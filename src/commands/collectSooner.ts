import { setFlagsFromString } from 'node:v8';

/**
 * Lets the heaps of this process and its workers grow by two fifths between collections instead of several times over. A
 * thousand reports leave behind much that nobody needs: 1.4 GB at most
 * for 250 of them, for about a quarter more time on the pages.
 */
export function collectSooner(): void {
  setFlagsFromString('--heap-growing-percent=40');
}
