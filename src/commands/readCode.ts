import { resolve } from 'node:path';

/** Where Node keeps the code as it has read it, so that the next command starts sooner; goes with the packages. */
export const readCode = resolve(import.meta.dirname, '../../node_modules/.cache/read-code');
