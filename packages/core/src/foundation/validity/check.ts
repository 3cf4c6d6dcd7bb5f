import type { ModelWarning, Span } from '../results/types.js';
import { ModelRangeError } from './model-range-error.js';

/**
 * Refuses a number that cannot be meant.
 *
 * @throws {@link ModelRangeError} if the value is not a finite number between the limits.
 */
export function requireWithin(parameter: string, value: number, limits: Span): void {
  const [low, high] = limits;
  if (typeof value !== 'number' || Number.isNaN(value)) {
    throw new ModelRangeError(`${spoken(parameter)} must be a number; received ${String(value)}.`, {
      code: 'not-a-number',
      parameter,
      received: value,
      limits,
    });
  }
  if (value < low || value > high) {
    const hint = high <= 1 && value > 1 && value <= 100 ? ' Is this a percentage?' : '';
    throw new ModelRangeError(
      `${spoken(parameter)} must lie between ${low} and ${high}; received ${value}.${hint}`,
      { code: 'outside-range', parameter, received: value, limits },
    );
  }
}

/** Warns when a possible number lies outside what was tested. */
export function warnOutside(
  parameter: string,
  value: number,
  limits: Span,
): readonly ModelWarning[] {
  return value < limits[0] || value > limits[1]
    ? [{ code: 'outside-tested-range', parameter, value, limits }]
    : [];
}

/** `drySolidsMassFraction` → `Dry solids mass fraction`. */
function spoken(parameter: string): string {
  const words = parameter.replace(
    /([a-z])([A-Z])/g,
    (_, a: string, b: string) => `${a} ${b.toLowerCase()}`,
  );
  return words.charAt(0).toUpperCase() + words.slice(1);
}
