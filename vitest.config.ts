import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          setupFiles: ['tests/properties.ts'],
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/site/**', 'tests/commands/**'],
          // Properties run many cases, and the machine may be slow.
          testTimeout: 120_000,
        },
      },
      {
        test: {
          name: 'site',
          setupFiles: ['tests/properties.ts'],
          include: ['tests/site/**/*.test.ts', 'tests/commands/**/*.test.ts'],
          fileParallelism: false,
          globalSetup: ['tests/site/globalSetup.ts'],
          testTimeout: 1_200_000,
          hookTimeout: 600_000,
        },
      },
    ],
  },
});
