import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

// A process of its own: the compiler makes other code of functions that many tests before have called in other ways.
describe('once warm, in milliseconds of a processor', () => {
  const { stdout, stderr } = spawnSync(process.execPath, [resolve('tests/flight/times.ts')], {
    encoding: 'utf8',
  });
  const times: unknown = stderr === '' ? JSON.parse(stdout) : stderr;

  test.each([
    // A drive at 0.05 s.
    ['drive', 0.25],
    // 12 and 12 shots, 2,000 draws, three sets of coefficients.
    ['pair', 100],
    // Three sets of grids around a session.
    ['grids', 250],
  ] as const)('%s: at most %d', (name, most) => {
    expect(times).toEqual(expect.objectContaining({ [name]: expect.any(Number) }));
    expect(Reflect.get(Object(times), name)).toBeLessThan(most);
  });
});
