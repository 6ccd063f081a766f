import { expect, test } from 'vitest';
import { projectPathTrouble } from '../../src/site/projectPath.ts';

test.each([
  ['/builds/feature%2Fgolf/site', '%'],
  ['/builds/100% golf', '%'],
  ['/builds/golf#2', '#'],
  ['/builds/golf?', '?'],
])('%s cannot be built in, and a sentence says what to do', (path, what) => {
  expect(projectPathTrouble(path)).toBe(
    `The project lies in ${path}, and pages cannot be built in a folder with ${what} in its path: move or rename the folder.`,
  );
});

test.each(['/builds/golf', '/builds/golf & co, größe/50 off', 'C:\\golf\\site', "/builds/it's [new] $1+1"])(
  '%s is as good as any',
  (path) => {
    expect(projectPathTrouble(path)).toBeNull();
  },
);
