// Messy session files with their expected results: tests/fixtures/csv/README.md states the policy they follow.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { dryRunJson } from '../../../src/intake/shots/outcome.ts';
import { readShotFile } from '../../../src/intake/shots/readShotFile.ts';

interface Place {
  readonly line: number | null;
  readonly column: number | null;
  readonly kind: string;
  readonly scope: 'cell' | 'row' | 'column' | 'file';
}

interface Expected {
  readonly outcome: string;
  readonly alsoAcceptable?: readonly string[];
  readonly canonicalRows?: readonly Readonly<Record<string, unknown>>[];
  readonly warnings: readonly string[];
  readonly errors: readonly Place[];
}

const folder = new URL('../../fixtures/csv/', import.meta.url);
const names = readdirSync(folder)
  .filter((name) => name.endsWith('.csv'))
  .map((name) => name.replace(/\.csv$/, ''));

const level = (value: unknown): unknown =>
  typeof value === 'string' ? value.replace(/\r\n|\r/g, '\n') : value;

function sameCell(found: unknown, wanted: unknown): boolean {
  if (typeof wanted === 'number') return typeof found === 'number' && Math.abs(found - wanted) <= 1e-4;
  return level(found) === level(wanted);
}

function placed(
  error: Place,
  found: { readonly line: number | null; readonly column: number | null },
): boolean {
  switch (error.scope) {
    case 'cell':
      return found.line === error.line && found.column === error.column;
    case 'row':
      return found.line === error.line;
    case 'column':
      return found.column === error.column;
    case 'file':
      return true;
  }
}

describe.each(names)('%s', (name) => {
  const expected: Expected = JSON.parse(readFileSync(new URL(`${name}.expected.json`, folder), 'utf8'));
  const { outcome, shots, problems } = dryRunJson(
    readShotFile(`${name}.csv`, readFileSync(new URL(`${name}.csv`, folder))),
  );

  it('has the expected outcome', () => {
    expect(
      [expected.outcome, ...(expected.alsoAcceptable ?? [])],
      JSON.stringify(problems, null, 1),
    ).toContain(outcome);
  });

  it('has the expected shots', () => {
    if (expected.canonicalRows === undefined) return;
    expect(shots).toHaveLength(expected.canonicalRows.length);
    for (const [index, wanted] of expected.canonicalRows.entries()) {
      const shot = shots[index] ?? {};
      const wrong = Object.keys(wanted).filter((key) => !sameCell(shot[key], wanted[key]));
      expect(wrong, `${JSON.stringify(shot)} for ${JSON.stringify(wanted)}`).toEqual([]);
    }
  });

  it('reports the listed kinds', () => {
    const kinds = problems.map(({ kind }) => kind);
    expect(kinds).toEqual(expect.arrayContaining([...expected.warnings]));
    for (const error of expected.errors.slice(0, 1)) expect(kinds).toContain(error.kind);
  });

  it('places an error where it is', () => {
    const [first] = expected.errors;
    if (first === undefined) return;
    const wanted = first.scope === 'column' ? expected.errors : [first];
    const errors = problems.filter(({ severity }) => severity === 'error');
    expect(
      wanted.some((error) => errors.some((found) => placed(error, found))),
      JSON.stringify(errors),
    ).toBe(true);
  });
});
