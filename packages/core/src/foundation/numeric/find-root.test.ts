import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../validity/model-range-error.js';
import { findRoot } from './find-root.js';

const { cos, exp, log, PI, sin } = Math;

/**
 * Twelve functions root finders are compared on. 1 to 3: Newton's cubic, Chandrupatla's and the
 * cosine's fixed point. 4 to 9: the set of Alefeld, Potra and Shi (1995) with n = 5. 10 and 11:
 * textbook examples (Burden and Faires; Weerakoon and Fernando 2000). 12: Kepler's equation for an
 * eccentric orbit. The brackets are those of the sources, or whole units that hold one crossing.
 */
const STANDARD = [
  { name: 'x³ − 2x − 5', f: (x: number) => x ** 3 - 2 * x - 5, bracket: [2, 3] },
  { name: '1 − 1/x²', f: (x: number) => 1 - 1 / x ** 2, bracket: [0.5, 1.51] },
  { name: 'cos x − x', f: (x: number) => cos(x) - x, bracket: [0, 1] },
  { name: 'sin x − x/2', f: (x: number) => sin(x) - x / 2, bracket: [PI / 2, PI] },
  {
    name: '2x·e⁻ⁿ + 1 − 2e⁻ⁿˣ',
    f: (x: number) => 2 * x * exp(-5) + 1 - 2 * exp(-5 * x),
    bracket: [0, 1],
  },
  { name: '(1 + (1−n)²)x − (1−nx)²', f: (x: number) => 17 * x - (1 - 5 * x) ** 2, bracket: [0, 1] },
  { name: 'x² − (1−x)ⁿ', f: (x: number) => x ** 2 - (1 - x) ** 5, bracket: [0, 1] },
  {
    name: 'e⁻ⁿˣ(x−1) + xⁿ',
    f: (x: number) => exp(-5 * x) * (x - 1) + x ** 5,
    bracket: [0, 1],
  },
  { name: '(nx−1)/((n−1)x)', f: (x: number) => (5 * x - 1) / (4 * x), bracket: [0.01, 1] },
  { name: 'x³ + 4x² − 10', f: (x: number) => x ** 3 + 4 * x ** 2 - 10, bracket: [1, 2] },
  { name: 'x·eˣ − 1', f: (x: number) => x * exp(x) - 1, bracket: [0, 1] },
  { name: 'x − 0.8·sin x − 1', f: (x: number) => x - 0.8 * sin(x) - 1, bracket: [0, PI] },
] as const satisfies readonly {
  name: string;
  f: (x: number) => number;
  bracket: readonly [number, number];
}[];

describe('findRoot', () => {
  it.each(STANDARD)('needs no more than 14 looks at $name', ({ f, bracket }) => {
    let looks = 0;
    const root = findRoot((x) => {
      looks += 1;
      return f(x);
    }, bracket);
    expect(looks).toBeLessThanOrEqual(14);
    // The curve changes sign within the tolerance, so a crossing lies there.
    expect(Math.sign(f(root - 1e-10)) * Math.sign(f(root + 1e-10))).toBe(-1);
  });

  it.each([
    { name: 'a cliff', f: (x: number) => exp(50 * x) - 1, bracket: [-1, 1], root: 0 },
    { name: 'a higher one', f: (x: number) => 1 - exp(-20 * x), bracket: [-2.9, 4.7], root: 0 },
    { name: 'a pole nearby', f: (x: number) => log(x), bracket: [1e-9, 10], root: 1 },
    { name: 'a flat crossing', f: (x: number) => (x - 0.3) ** 3, bracket: [0, 1], root: 0.3 },
    { name: 'a step', f: (x: number) => (x < 0.7 ? -1 : 2), bracket: [0, 1], root: 0.7 },
  ] as const)('is not deceived by $name', ({ f, bracket, root }) => {
    expect(Math.abs(findRoot(f, bracket) - root)).toBeLessThanOrEqual(1e-10);
  });

  it('takes an end that is the crossing', () => {
    expect(findRoot((x) => x, [0, 1])).toBe(0);
    expect(findRoot((x) => x - 1, [0, 1])).toBe(1);
  });

  it('looks no closer than it is asked to', () => {
    const looksFor = (tolerance: number): number => {
      let looks = 0;
      findRoot(
        (x) => {
          looks += 1;
          return cos(x) - x;
        },
        [0, 1],
        { tolerance },
      );
      return looks;
    };
    expect(looksFor(0.1)).toBeLessThan(looksFor(1e-12));
  });

  it.each([
    ['one sign', (x: number) => x ** 2 + 1],
    ['not a number', () => Number.NaN],
  ])('refuses ends that hold no crossing: %s', (_, f) => {
    expect(() => findRoot(f, [-1, 1])).toThrow(ModelRangeError);
  });
});
