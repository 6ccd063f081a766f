import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { commandHelp, helpText } from '../../src/commands/helpText.ts';

const { scripts }: { scripts: Record<string, string> } = JSON.parse(readFileSync('package.json', 'utf8'));

test('every command of package.json has a line, and every line a command', () => {
  expect(Object.keys(commandHelp).sort()).toEqual(Object.keys(scripts).sort());
});

test('commands are single words, and a line fits a terminal', () => {
  for (const name of Object.keys(scripts)) expect(name).toMatch(/^[a-z]+$/);
  const lines = helpText().trim().split('\n');
  for (const line of lines) expect(line.length).toBeLessThanOrEqual(160);
  for (const name of Object.keys(scripts))
    expect(lines.filter((line) => line.startsWith(`npm run ${name} `))).toHaveLength(1);
});
