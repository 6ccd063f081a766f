import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { loaders } from '../../src/commands/cli/straightface.ts';
import { developerCommands, helpText, shopCommands, shopHelp } from '../../src/commands/helpText.ts';

const { scripts }: { scripts: Record<string, string> } = JSON.parse(readFileSync('package.json', 'utf8'));

/** Started by npm itself while it packs. */
const byNpm = ['prepack', 'postpack'];
const typed = Object.keys(scripts).filter((name) => !byNpm.includes(name));

test('every command of package.json has a line, and every line a command', () => {
  expect([...Object.keys(shopCommands), ...Object.keys(developerCommands)].sort()).toEqual(typed.sort());
});

test('straightface has every command of a shop, and besides them the one that comes first', () => {
  expect(['help', ...Object.keys(loaders)].sort()).toEqual(['init', ...Object.keys(shopCommands)].sort());
});

test('commands are single words, and a line fits a terminal', () => {
  for (const name of typed) expect(name).toMatch(/^[a-z]+$/);
  const lines = helpText().trim().split('\n');
  for (const line of [...lines, ...shopHelp().trim().split('\n')])
    expect(line.length).toBeLessThanOrEqual(160);
  for (const name of typed)
    expect(lines.filter((line) => line.startsWith(`npm run ${name} `))).toHaveLength(1);
});

test('a shop is told of its own commands, and not of those for who keeps the code', () => {
  const lines = shopHelp().split('\n');
  const told = lines.flatMap((line) => /^npm run (\S+)/.exec(line)?.[1] ?? []);
  expect(told).toEqual(Object.keys(shopCommands));
  expect(lines.filter((line) => line.startsWith('npx straightface init FOLDER '))).toHaveLength(1);
});
