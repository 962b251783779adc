import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

// Tests read the library's source, so that a failing line is a line of ours. What was built and
// packed is tested apart, in tests/package.
const alias = {
  'backhalf/tables': here('./packages/core/src/tables.ts'),
  backhalf: here('./packages/core/src/index.ts'),
  '~': here('./docs-site/src'),
};

export default defineConfig({
  test: {
    projects: [
      {
        resolve: { alias },
        test: {
          name: 'core',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/site/**', 'tests/package/**'],
          setupFiles: ['tests/setup.ts'],
          globalSetup: ['tests/setup.ts'],
        },
      },
      {
        resolve: { alias },
        test: {
          name: 'package',
          include: ['tests/package/**/*.test.ts'],
          globalSetup: ['tests/package/pack.ts'],
          testTimeout: 240_000,
          hookTimeout: 240_000,
        },
      },
      {
        resolve: { alias },
        test: {
          name: 'site',
          include: ['tests/site/**/*.test.ts'],
          globalSetup: ['tests/site/serve.ts'],
          // Chromium is the load here, not Vitest: two files at once is what two cores carry.
          maxWorkers: 2,
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
