import { defineConfig } from 'vitest/config';
import { LongFirst } from './tests/longFirst.ts';

export default defineConfig({
  test: {
    // As many files at a time as there are processors; the default leaves one idle.
    maxWorkers: '100%',
    setupFiles: ['tests/properties.ts'],
    sequence: { sequencer: LongFirst },
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/site/**', 'tests/commands/**'],
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
          testTimeout: 1_200_000,
          hookTimeout: 600_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'site',
          include: ['tests/site/**/*.test.ts'],
          globalSetup: ['tests/site/globalSetup.ts'],
          isolate: false,
          testTimeout: 1_200_000,
          hookTimeout: 600_000,
        },
      },
    ],
  },
});
