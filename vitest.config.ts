import { defineConfig } from 'vitest/config';
import { isEveryday, notEveryday } from './tests/everyday.ts';
import { LongFirst } from './tests/longFirst.ts';
import { runElsewhere } from './tests/runElsewhere.ts';

const left = isEveryday ? [...notEveryday] : [];

export default defineConfig({
  test: {
    // As many files at a time as there are processors; the default leaves one idle.
    maxWorkers: '100%',
    setupFiles: ['tests/properties.ts'],
    // Asked for by who tries everything: a few files alone run through little.
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      exclude: [...runElsewhere],
      thresholds: { perFile: true, lines: 85 },
      reporter: ['text-summary', 'json'],
      reportsDirectory: '.cache/coverage',
    },
    sequence: { sequencer: LongFirst },
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/site/**', 'tests/commands/**', ...left],
          // Modules are loaded, and the demo reports worked out, once for many files.
          isolate: false,
          // Properties run many cases, and the machine may be slow.
          testTimeout: 120_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'commands',
          include: ['tests/commands/**/*.test.ts'],
          // Modules are loaded once for many files; the whole also shows that no file needs what another one left.
          isolate: !isEveryday,
          exclude: left,
          testTimeout: 1_200_000,
          hookTimeout: 600_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'site',
          include: ['tests/site/**/*.test.ts'],
          exclude: left,
          globalSetup: ['tests/site/globalSetup.ts'],
          isolate: false,
          testTimeout: 1_200_000,
          hookTimeout: 600_000,
        },
      },
    ],
  },
});
