import { defineConfig } from 'tsup';

export default defineConfig({
  entry: {
    index: 'src/index.ts',
    documents: 'src/documents/index.ts',
    words: 'src/words/index.ts',
    sources: 'src/sources/index.ts',
  },
  format: ['esm', 'cjs'],
  tsconfig: 'tsconfig.library.json',
  dts: true,
  splitting: true,
  target: 'es2022',
  sourcemap: true,
  clean: true,
});
