import { existsSync, readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';

const { scripts }: { scripts: Record<string, string> } = JSON.parse(readFileSync('package.json', 'utf8'));
const flagsOf: Readonly<Record<string, string>> = {
  plan: readFileSync('src/commands/plan/planOptions.ts', 'utf8'),
  draft: readFileSync('src/commands/cli/draft.ts', 'utf8'),
  dev: readFileSync('src/commands/cli/dev.ts', 'utf8'),
  check: readFileSync('src/commands/cli/check.ts', 'utf8'),
  record: readFileSync('src/commands/cli/record.ts', 'utf8'),
};

/** The file that a link or picture of a file leads to, without the heading in it. */
const fileOf = (name: string, to: string): string => join(dirname(name), to.split('#')[0] ?? '');

/** The headings of a text, as links name them. */
const anchorsOf = (text: string): readonly string[] =>
  [...text.matchAll(/^#+ (.*)$/gm)].map(([, heading = '']) =>
    heading
      .toLowerCase()
      .replace(/[^\p{L}\p{N} _-]/gu, '')
      .replaceAll(' ', '-'),
  );

test('the README is short enough to be read', () => {
  expect(readFileSync('README.md', 'utf8').split('\n').length).toBeLessThanOrEqual(171);
});

describe.each(['README.md', 'DEVELOPERS.md', 'content/README.md'])('%s', (name) => {
  const text = readFileSync(name, 'utf8');
  const outsideCode = text.replaceAll(/`[^`\n]+`/g, '');

  test('names commands that there are, and flags that they know', () => {
    const named = [...text.matchAll(/npm run ([a-z]+)((?: -- [^`\n]*)?)/g)];
    expect(named.length).toBeGreaterThan(3);
    expect(named.map(([, command = '']) => command).filter((command) => !(command in scripts))).toEqual([]);
    const unknown = named.flatMap(([, command = '', typed = '']) =>
      [...typed.matchAll(/--([a-z][a-z-]+)/g)]
        .map(([, flag = '']) => flag)
        .filter((flag) => flag !== 'help' && !(flagsOf[command] ?? '').includes(flag))
        .map((flag) => `${command} --${flag}`),
    );
    expect(unknown).toEqual([]);
  });

  test('leads to files that there are, and to headings in them', () => {
    const links = [...outsideCode.matchAll(/\]\(([^)\s]+)\)/g)].map(([, to = '']) => to);
    const lost = links.filter((to) => {
      if (/^https:/.test(to)) return false;
      const file = to.startsWith('#') ? name : fileOf(name, to);
      const [, heading] = to.split('#');
      return (
        !existsSync(file) ||
        (heading !== undefined && !anchorsOf(readFileSync(file, 'utf8')).includes(heading))
      );
    });
    expect(lost).toEqual([]);
  });

  test('shows no picture that is large or says nothing to those who do not see it', () => {
    for (const [, alternative = '', file = ''] of outsideCode.matchAll(/!\[([^\]]*)\]\(([^)\s]+)\)/g)) {
      expect(statSync(fileOf(name, file)).size).toBeLessThan(150_000);
      expect(alternative.length).toBeGreaterThan(100);
    }
  });
});

test('DEVELOPERS.md names files that there are', () => {
  const named = [
    ...readFileSync('DEVELOPERS.md', 'utf8').matchAll(/`([\w./[\]-]+\/[\w.[\]-]+\.(?:ts|astro|css|json))`/g),
  ].map(([, file = '']) => file);
  expect(named.length).toBeGreaterThan(40);
  const roots = ['.', 'src', 'tests', 'src/intake', 'src/commands'];
  const lost = named
    .filter((file) => !file.endsWith('/NAME.ts'))
    .filter((file) => !roots.some((root) => existsSync(join(root, file))));
  expect(lost).toEqual([]);
});
