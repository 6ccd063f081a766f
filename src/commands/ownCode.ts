import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** The folder of the program: its `package.json`, `src/` and `public/`, whatever folder a command works in. */
export const programFolder = folderAbove(import.meta.dirname);

/** In a package the commands are compiled into `lib/`: under `node_modules` Node reads no TypeScript. */
const isCompiled = import.meta.filename.endsWith('.js');

/** A source as the framework reads it. @param path below `src/` */
export const sourceFile = (path: string): string => join(programFolder, 'src', path);

/** A module of ours as Node runs it. @param path of its source below `src/`, listed among the entries of a package */
export const moduleFile = (path: string): string =>
  isCompiled ? join(programFolder, 'lib', path.replace(/\.ts$/, '.js')) : sourceFile(path);

function folderAbove(folder: string): string {
  if (existsSync(join(folder, 'package.json')) || dirname(folder) === folder) return folder;
  return folderAbove(dirname(folder));
}
