import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

// For Stryker: the tests that read the library itself, without those that take minutes or read its
// text, which a mutant changes.
export default defineConfig({
  root: here('..'),
  resolve: {
    alias: {
      'backhalf/tables': here('../packages/core/src/tables.ts'),
      backhalf: here('../packages/core/src/index.ts'),
    },
  },
  test: {
    include: ['tests/core/**/*.test.ts', 'tests/reference/**/*.test.ts'],
    exclude: [
      'tests/reference/track-record/**',
      'tests/core/any-input.test.ts',
      'tests/core/time/every-hundredth.test.ts',
      'tests/core/**/random-*.test.ts',
    ],
    setupFiles: ['tests/setup.ts'],
  },
});
