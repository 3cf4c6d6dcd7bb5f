import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const core = (path: string): string =>
  fileURLToPath(new URL(`./packages/core/src/${path}`, import.meta.url));

export default defineConfig({
  resolve: {
    // Tests import `vitrose` as users do, and run on its source: no build to wait for,
    // coverage and mutation see the files one edits. Only tests/package and the parts of
    // tests/surface that read dist/ look at what is built.
    alias: [
      { find: /^vitrose$/, replacement: core('index.ts') },
      { find: /^vitrose\/(documents|words|sources)$/, replacement: core('$1/index.ts') },
    ],
  },
  test: {
    projects: [
      {
        extends: true,
        test: { name: 'unit', include: ['packages/*/src/**/*.test.ts'] },
      },
      {
        extends: true,
        test: {
          name: 'tests',
          include: ['tests/**/*.test.ts'],
          setupFiles: ['tests/tools/random-runs.ts'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
    coverage: {
      provider: 'v8',
      include: ['packages/core/src/**/*.ts'],
      exclude: ['**/*.test.ts', '**/*.fixture.ts'],
      reporter: ['text-summary', 'html'],
    },
  },
});
