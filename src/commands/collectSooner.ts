import { setFlagsFromString } from 'node:v8';

/**
 * Lets the heaps of this process and its workers grow by two fifths between collections instead of several times over. A
 * thousand reports leave behind much that nobody needs. 250 of them take 1.4 GB at most, and the pages a quarter longer.
 */
export function collectSooner(): void {
  setFlagsFromString('--heap-growing-percent=40');
}
