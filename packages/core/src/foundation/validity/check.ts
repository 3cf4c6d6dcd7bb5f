import type { ModelWarning, Span } from '../results/types.js';
import { ModelRangeError } from './model-range-error.js';

/**
 * Refuses a number that cannot be meant.
 *
 * @throws {@link ModelRangeError} if the value is not a finite number between the limits.
 */
export function requireWithin(parameter: string, value: number, limits: Span): void {
  const [low, high] = limits;
  const isNumber = typeof value === 'number' && !Number.isNaN(value);
  if (isNumber && value >= low && value <= high) return;
  const isPercentage = isNumber && high <= 1 && value > 1 && value <= 100;
  throw new ModelRangeError(
    `${spoken(parameter)} must ${isNumber ? `lie between ${low} and ${high}` : 'be a number'}; received ${String(value)}.${isPercentage ? ' Is this a percentage?' : ''}`,
    { code: isNumber ? 'outside-range' : 'not-a-number', parameter, received: value, limits },
  );
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
  const words = parameter.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);
  return words.charAt(0).toUpperCase() + words.slice(1);
}
