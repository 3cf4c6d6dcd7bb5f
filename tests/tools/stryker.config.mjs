export default {
  packageManager: 'pnpm',
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'tests/tools/vitest.mutate.config.ts' },
  // Where the physics stands. A changed sentence or document shape is no mutant of a model.
  mutate: [
    'packages/core/src/{foundation,matter,models}/**/*.ts',
    '!packages/core/src/**/*.{test,fixture}.ts',
    '!packages/core/src/**/types.ts',
  ],
  coverageAnalysis: 'perTest',
  concurrency: 2,
  reporters: ['clear-text', 'progress', 'html'],
  htmlReporter: { fileName: 'reports/mutation.html' },
  thresholds: { high: 90, low: 80, break: 75 },
};
