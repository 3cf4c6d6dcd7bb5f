import type { Span } from '../results/types.js';
import { requireWithin } from '../validity/check.js';

/**
 * Where a curve crosses zero between two ends.
 *
 * Chandrupatla's method: inverse quadratic interpolation through the last three points where they
 * lie so that it can be trusted, halving where they do not. It never looks outside its bracket, so
 * an equation of state is never asked beyond its domain, and a cliff cannot make it creep.
 *
 * @param f - The curve; of different sign at the two ends.
 * @param bracket - The two ends.
 * @param options - `tolerance`: the answer lies within this of the crossing, in the unit of `x`.
 *   1e-10 by default; the spacing of floating-point numbers is added.
 * @returns `x` of the crossing.
 * @throws {@link ModelRangeError} if the curve has one sign at both ends, or is NaN at one.
 * @example
 * findRoot((x) => x * x - 2, [1, 2]) // 1.414213562
 * @source chandrupatla-1997
 */
export function findRoot(
  f: (x: number) => number,
  bracket: Span,
  { tolerance = 1e-10 }: { readonly tolerance?: number | undefined } = {},
): number {
  // a: the newest point. b: the other end of the bracket. c: the point dropped last.
  let [a, b] = bracket;
  let fa = f(a);
  let fb = f(b);
  requireWithin('productOfSigns', Math.sign(fa) * Math.sign(fb), [-1, 0]);
  let c = b;
  let fc = fb;
  for (;;) {
    const [best, fBest] = Math.abs(fa) < Math.abs(fb) ? [a, fa] : [b, fb];
    const nearest = (Number.EPSILON * Math.abs(best) + tolerance / 2) / Math.abs(b - a);
    if (fBest === 0 || nearest > 0.5) return best;
    // While nothing was dropped yet, c is b: phi is endless, and the bracket is halved.
    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    const step =
      phi ** 2 < xi && (1 - phi) ** 2 < 1 - xi
        ? (fa / (fb - fa)) * (fc / (fb - fc)) +
          ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
        : 0.5;
    // Not closer to an end than the tolerance: the next point then lands beyond the crossing.
    const x = a + Math.min(1 - nearest, Math.max(nearest, step)) * (b - a);
    const fx = f(x);
    if (fx < 0 === fa < 0) {
      c = a;
      fc = fa;
    } else {
      c = b;
      fc = fb;
      b = a;
      fb = fa;
    }
    a = x;
    fa = fx;
  }
}
