import type { CookTimeState } from '@vitrose/figures';
import type { PlanDocument } from 'vitrose';
import type { Manner } from '../../state/read/types.js';

/** The boil as the figure draws it: what this thermometer shows, not what the mass is. */
export function cookState(
  { path, moments, toStopMin }: NonNullable<PlanDocument['cooking']>,
  manner: Manner,
): Omit<CookTimeState, 'id'> {
  return {
    path: path.map(({ minutes, readingC }) => ({ minutes, temperatureC: readingC })),
    moments: moments.map(({ id, atMin, readingC }) => ({
      id,
      minutes: atMin.value,
      temperatureC: readingC,
    })),
    bandMinutes: toStopMin.band,
    units: manner.units === 'us' ? 'f' : 'c',
  };
}
