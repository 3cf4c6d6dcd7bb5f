import type { Span } from '../results/types.js';
import { requireWithin } from '../validity/check.js';

/**
 * Where a curve crosses zero between two ends.
 *
 * Anderson and Björck's chord: a straight line through both ends of the bracket gives the next
 * point, and the height of an end that stays put is cut down so that the other end must move too.
 * Where that fails the bracket is halved.
 * It never looks outside its bracket, so an equation of state is never asked beyond its domain.
 *
 * @param f - The curve; of different sign at the two ends.
 * @param bracket - The two ends.
 * @param options - `tolerance`: the answer lies within this of the crossing, in the unit of `x`.
 *   1e-10 by default; the spacing of floating-point numbers is added.
 * @returns `x` of the crossing.
 * @throws {@link ModelRangeError} if the curve has one sign at both ends, or is NaN at one.
 * @example
 * findRoot((x) => x * x - 2, [1, 2]) // 1.414213562
 * @source anderson-bjorck-1973
 */
export function findRoot(
  f: (x: number) => number,
  bracket: Span,
  { tolerance = 1e-10 }: { readonly tolerance?: number | undefined } = {},
): number {
  let [a, b] = bracket;
  let fa = f(a);
  let fb = f(b);
  requireWithin('productOfSigns', Math.sign(fa) * Math.sign(fb), [-1, 0]);
  let stayed = 0;
  for (;;) {
    // b is the newest point, a the end on the other side of the crossing.
    const width = Math.abs(b - a);
    const least = tolerance / 2 + Number.EPSILON * Math.abs(b);
    if (fb === 0 || width <= 2 * least) return Math.abs(fa) < Math.abs(fb) ? a : b;
    // Beside a cliff chords creep: when an end has stayed three times, the bracket is halved.
    const chord = stayed > 2 ? width / 2 : (fb / (fb - fa)) * width;
    // A step shorter than the tolerance is stretched to it: it then lands beyond the crossing.
    const step = Math.max(least, chord);
    const x = step < width ? b + Math.sign(a - b) * step : a;
    const fx = f(x);
    if (fx < 0 === fb < 0) {
      const bend = 1 - fx / fb;
      fa *= bend > 0 ? bend : 0.5;
      stayed++;
    } else {
      a = b;
      fa = fb;
      stayed = 0;
    }
    b = x;
    fb = fx;
  }
}
