import { join } from 'node:path';
import { programFolder } from './ownCode.ts';

/** Where Node keeps the code as it has read it, so that the next command starts sooner; goes with the packages. */
export const readCode = join(programFolder, 'node_modules/.cache/read-code');
