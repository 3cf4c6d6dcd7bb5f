import { fileURLToPath } from 'node:url';

export default {
  packageManager: 'pnpm',
  testRunner: 'vitest',
  plugins: [
    '@stryker-mutator/vitest-runner',
    fileURLToPath(new URL('./stryker-citations.mjs', import.meta.url)),
  ],
  vitest: { configFile: 'tests/tools/vitest.mutate.config.ts' },
  // Where the physics stands. A changed sentence or document shape is no mutant of a model.
  // Numbers and `as const` tables are never mutated: constants, ingredients, measures, sweetness,
  // dry glass and solute rows are held against the printed tables by tests/reference instead.
  mutate: [
    'packages/core/src/{foundation,matter,models}/**/*.ts',
    '!packages/core/src/**/*.{test,fixture}.ts',
    '!packages/core/src/**/types.ts',
  ],
  ignorers: ['citations'],
  coverageAnalysis: 'perTest',
  concurrency: 2,
  // A busy machine is no proof: only a loop without end should count as found by time.
  timeoutMS: 15_000,
  reporters: ['clear-text', 'progress', 'html'],
  htmlReporter: { fileName: 'reports/mutation.html' },
  thresholds: { high: 95, low: 90, break: 85 },
};
