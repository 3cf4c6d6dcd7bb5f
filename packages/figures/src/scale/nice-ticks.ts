/** The smallest of 1, 2 and 5 times a power of ten that parts a span into no more than so many steps. */
export function niceStep(span: number, mostSteps: number): number {
  const least = span / mostSteps;
  const power = 10 ** Math.floor(Math.log10(least));
  for (const times of [1, 2, 5]) {
    if (power * times >= least * (1 - 1e-9)) return power * times;
  }
  return power * 10;
}

/** Every multiple of a step from one value to another, both counted in. */
export function multiples(low: number, high: number, step: number): readonly number[] {
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  const found: number[] = [];
  // Counted, not added up: a tick at 0.3 is 3 × 0.1 and not 0.1 + 0.1 + 0.1.
  for (let count = first; count <= last; count += 1) found.push(roundTo12(count * step));
  return found;
}

/**
 * Round values between two, to write along an axis.
 *
 * @param low - The lower end.
 * @param high - The upper end, above it.
 * @param mostSteps - How many steps there is room for, 1 or more.
 */
export function niceTicks(low: number, high: number, mostSteps: number): readonly number[] {
  return multiples(low, high, niceStep(high - low, mostSteps));
}

function roundTo12(value: number): number {
  return Number(value.toPrecision(12));
}
