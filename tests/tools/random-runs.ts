import fc from 'fast-check';

// Random tests draw anew in every run; a failure prints its seed. To repeat it:
//   VITROSE_SEED=-1234567 npx vitest run tests/properties/that.test.ts
// VITROSE_RUNS sets how many draws each property makes where the test does not say.

const whole = (name: string): number | undefined => {
  const text = process.env[name];
  if (text === undefined || text === '') return undefined;
  const value = Number(text);
  if (!Number.isInteger(value)) throw new Error(`${name} must be a whole number; received ${text}`);
  return value;
};

const seed = whole('VITROSE_SEED');
const numRuns = whole('VITROSE_RUNS');

fc.configureGlobal({
  ...(seed === undefined ? {} : { seed }),
  ...(numRuns === undefined ? {} : { numRuns }),
});
