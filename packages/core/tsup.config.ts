import { defineConfig } from 'tsup';

export default defineConfig({
  entry: ['src/index.ts', 'src/tables.ts'],
  // The parser of `backhalf/tables` is built in, so that the package depends on nothing.
  noExternal: ['papaparse'],
  format: ['esm', 'cjs'],
  target: 'es2022',
  dts: true,
  clean: true,
  treeshake: true,
});
