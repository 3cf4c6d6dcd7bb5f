import type { None } from '../../foundation/results/types.js';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import type { BoilDownPoint } from './boil-down-types.js';

/** What a moment of a boil is found by: its temperature or its time. */
export type BoilDownMoment =
  | { readonly temperatureC: number; readonly timeS?: undefined }
  | { readonly timeS: number; readonly temperatureC?: undefined };

/**
 * One moment of a boil: when it passed a temperature, or how hot it was at a time.
 *
 * A ruler is laid between the two points beside it, which stand a kelvin or two apart.
 *
 * @param path - The `path` of `boilDown`.
 * @param moment - `temperatureC`, °C, or `timeS`, s from the start.
 * @returns the point there; or none where the path does not pass, `off-the-path`.
 * @throws {@link ModelRangeError} for a moment that is not a number.
 * @example
 * const path = [
 *   { timeS: 0, temperatureC: 110, drySolidsMassFraction: 0.8, waterG: 250, rateKPerMin: 1 },
 *   { timeS: 60, temperatureC: 112, drySolidsMassFraction: 0.83, waterG: 205, rateKPerMin: 2 },
 * ];
 * boilDownPoint(path, { temperatureC: 111 }) // { timeS: 30, temperatureC: 111, … }
 */
export function boilDownPoint(
  path: readonly BoilDownPoint[],
  moment: BoilDownMoment,
): BoilDownPoint | None<'off-the-path'> {
  const key = moment.timeS === undefined ? 'temperatureC' : 'timeS';
  const wanted = moment.timeS ?? moment.temperatureC;
  if (typeof wanted !== 'number' || Number.isNaN(wanted)) {
    throw new ModelRangeError(`A moment of a boil must be a number; received ${String(wanted)}.`, {
      code: 'not-a-number',
      parameter: key,
      received: wanted,
    });
  }
  let before: BoilDownPoint | undefined;
  for (const after of path) {
    if (after[key] === wanted) return after;
    if (before !== undefined && before[key] < wanted && wanted < after[key]) {
      return between(before, after, (wanted - before[key]) / (after[key] - before[key]));
    }
    before = after;
  }
  return { kind: 'none', reason: 'off-the-path' };
}

function between(before: BoilDownPoint, after: BoilDownPoint, share: number): BoilDownPoint {
  const at = (key: keyof BoilDownPoint): number => before[key] + share * (after[key] - before[key]);
  return {
    timeS: at('timeS'),
    temperatureC: at('temperatureC'),
    drySolidsMassFraction: at('drySolidsMassFraction'),
    waterG: at('waterG'),
    rateKPerMin: at('rateKPerMin'),
  };
}
