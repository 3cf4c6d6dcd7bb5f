import { defineConfig, type Options } from 'tsup';

const shared: Options = {
  entry: {
    index: 'src/index.ts',
    documents: 'src/documents/index.ts',
    words: 'src/words/index.ts',
    sources: 'src/sources/index.ts',
  },
  tsconfig: 'tsconfig.library.json',
  dts: true,
  splitting: true,
  target: 'es2022',
};

// The maps of the CommonJS build would hold the path of the machine they were made on.
export default defineConfig([
  { ...shared, format: ['esm'], sourcemap: true },
  { ...shared, format: ['cjs'], sourcemap: false },
]);
