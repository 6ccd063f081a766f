// What lies on the disk in another way than its name says, and what the disk refuses: told, and nothing else is kept back.
import * as fs from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openContentFolder, type ReadingDisk } from '../../src/site/contentFiles.ts';
import { readContent } from '../../src/site/contentList.ts';
import { contentFolder, twoHeads, twoHeadsCsv } from '../commands/contentFolder.ts';
import { base, session, without, type Files } from './content.ts';

/** A disk on which a file is kept from whoever runs the command. */
const locked = (ending: string): ReadingDisk => ({
  ...fs,
  readFileSync: ((path: fs.PathLike, ...rest: []) => {
    if (!String(path).endsWith(ending)) return fs.readFileSync(path, ...rest);
    throw Object.assign(new Error('EACCES: permission denied'), { code: 'EACCES', syscall: 'open' });
  }) as typeof fs.readFileSync,
});

const second: Files = {
  'reports/second/report.md': twoHeads((text) => text.replace('primary: carry', 'primary: cary')),
  'reports/second/shots.csv': twoHeadsCsv.replace('231.2', '231.4'),
};

/** File, line, what was found and what to do, of all reports. */
const told = (root: string, disk: ReadingDisk = fs): readonly string[] =>
  readContent(openContentFolder(root, disk)).reports.flatMap(({ problems }) =>
    problems.map(({ file, line, found, cure }) => `${file}:${line} ${found} | ${cure}`),
  );

test('a session that may not be read is told, and the other reports are checked', () => {
  const root = contentFolder({ ...base, ...second });
  expect(told(root, locked('heads/shots.csv'))).toEqual([
    `${session}:null there is no permission (EACCES) | Give whoever runs the command the right to read it, or put a good copy of the file in its place.`,
    'reports/second/report.md:9 cary | Did you mean "carry"?',
  ]);
});

test('a report that may not be read is told in the same way', () => {
  const root = contentFolder({ ...base, ...second });
  expect(told(root, locked('heads/report.md'))[0]).toMatch(
    /^reports\/heads\/report\.md:null there is no permission/,
  );
});

test.each([
  ['nowhere', '/nowhere/at/all.csv'],
  ['out of the content folder', '/etc/hostname'],
])('a link that leads %s is named as one', (_where, target) => {
  const root = contentFolder({ ...without(session), ...second });
  fs.symlinkSync(target, join(root, session));
  expect(told(root)[0]).toBe(
    'reports/heads/report.md:11 a link that leads nowhere, or out of the content folder | Copy the session file itself into the folder of the report, in place of the link.',
  );
});
