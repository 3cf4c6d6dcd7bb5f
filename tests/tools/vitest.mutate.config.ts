import { defineConfig } from 'vitest/config';
import root from '../../vitest.config.js';

// What each mutant is tried on: the unit tests and the published tables. The random documents
// would run again for every mutant and take hours.
export default defineConfig({
  ...root,
  test: {
    projects: [
      {
        extends: true,
        test: { name: 'unit', include: ['packages/core/src/**/*.test.ts'] },
      },
      {
        extends: true,
        test: { name: 'reference', include: ['tests/reference/**/*.test.ts'] },
      },
    ],
  },
});
