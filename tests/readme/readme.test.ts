import { existsSync, readFileSync, statSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const { scripts }: { scripts: Record<string, string> } = JSON.parse(readFileSync('package.json', 'utf8'));
const flagsOf: Readonly<Record<string, string>> = {
  plan: readFileSync('src/commands/plan/planOptions.ts', 'utf8'),
  draft: readFileSync('src/commands/cli/draft.ts', 'utf8'),
  dev: readFileSync('src/commands/cli/dev.ts', 'utf8'),
  check: readFileSync('src/commands/cli/check.ts', 'utf8'),
  record: readFileSync('src/commands/cli/record.ts', 'utf8'),
};

describe.each(['README.md', 'DEVELOPERS.md'])('%s', (name) => {
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

  test('leads to files that there are, and to headings of its own', () => {
    const links = [...outsideCode.matchAll(/\]\(([^)\s]+)\)/g)].map(([, to = '']) => to);
    const headings = [...text.matchAll(/^#+ (.*)$/gm)].map(([, heading = '']) =>
      heading
        .toLowerCase()
        .replace(/[^\p{L}\p{N} _-]/gu, '')
        .replaceAll(' ', '-'),
    );
    const lost = links.filter((to) =>
      to.startsWith('#') ? !headings.includes(to.slice(1)) : !/^https:/.test(to) && !existsSync(to),
    );
    expect(lost).toEqual([]);
  });

  test('shows no picture that is large or says nothing to those who do not see it', () => {
    for (const [, alternative = '', file = ''] of outsideCode.matchAll(/!\[([^\]]*)\]\(([^)\s]+)\)/g)) {
      expect(statSync(file).size).toBeLessThan(150_000);
      expect(alternative.length).toBeGreaterThan(100);
    }
  });
});
