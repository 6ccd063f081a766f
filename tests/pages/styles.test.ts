import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

const sheet = (name: string): string => readFileSync(resolve('src/styles', name), 'utf8');
const tokens = new Set([...sheet('tokens.css').matchAll(/(--[a-z0-9-]+):/g)].map(([, name = '']) => name));

/** Contrast is tested on the tokens; that holds for pages only where pages have no colours but these. */
describe.each([
  'elements.css',
  'navigation.css',
  'statements.css',
  'tables.css',
  'lists.css',
  'print.css',
  'charts.css',
  'kit.css',
  'sideBySide.css',
  'reasons.css',
  'conditions.css',
])('%s', (name) => {
  const css = sheet(name);

  test('takes every colour from the tokens', () => {
    expect(css).not.toMatch(/#[0-9a-f]{3,8}\b|\b(?:rgba?|hsla?|oklch|color-mix)\(|opacity:/i);
    const colours = [...css.matchAll(/(?:^|[\s;{])(?:color|background|border[a-z-]*|outline):([^;]+);/g)].map(
      ([, value = '']) => value.trim(),
    );
    const named = colours.filter(
      (value) => !/var\(--|^0$|none|transparent|currentColor|^collapse$/.test(value),
    );
    expect(named).toEqual([]);
  });

  test('names no token that is not there', () => {
    const used = [...css.matchAll(/var\((--[a-z0-9-]+)/g)].map(([, token = '']) => token);
    expect(used.filter((token) => !tokens.has(token))).toEqual([]);
    expect(used.length).toBeGreaterThan(0);
  });

  test('moves nothing', () => {
    expect(css).not.toMatch(/transition|animation|@keyframes|scroll-behavior/);
  });
});
