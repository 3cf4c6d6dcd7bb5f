import type { ModelWarning } from '../../foundation/results/types.js';
import { warnOutside } from '../../foundation/validity/check.js';
import { vapourPressurePa } from '../../matter/water/vapour-pressure.js';
import { bandPlusMinusK } from './band.js';
import {
  BOIL_TESTED_C,
  BOIL_TESTED_PA,
  DISSOLVED_TESTED,
  SUCROSE_DECOMPOSES_ABOVE_C,
} from './constants.js';
import { lnWaterActivity, lnWaterActivityPlusMinus } from './ln-water-activity.js';
import type { Solute } from './solute.js';

/** Logarithm of the mass's vapour pressure over the pressure at the pan: above 0 it boils. */
export function boilExcess(
  dissolvedMassFraction: number,
  temperatureC: number,
  pressurePa: number,
  solute: Solute,
): number {
  return (
    lnWaterActivity(dissolvedMassFraction, temperatureC, solute) +
    Math.log(vapourPressurePa(temperatureC) / pressurePa)
  );
}

/** Half the width of the band, K, of a boil found at a temperature. */
export function boilPlusMinusK(
  dissolvedMassFraction: number,
  temperatureC: number,
  pressurePa: number,
  solute: Solute,
): number {
  // At the boil the excess is nought, so one look a kelvin further on gives its slope.
  const perK = boilExcess(dissolvedMassFraction, temperatureC + 1, pressurePa, solute);
  const interaction = lnWaterActivityPlusMinus(dissolvedMassFraction, temperatureC, solute);
  return bandPlusMinusK(dissolvedMassFraction, solute, interaction / perK);
}

/** Everything there is to warn of about one boil. */
export function boilWarnings(
  dissolvedMassFraction: number,
  temperatureC: number,
  pressurePa: number,
  solute: Solute,
): readonly ModelWarning[] {
  return [
    ...solute.warnings,
    ...warnOutside('dissolvedMassFraction', dissolvedMassFraction, DISSOLVED_TESTED),
    ...warnOutside('temperatureC', temperatureC, BOIL_TESTED_C),
    ...warnOutside('pressurePa', pressurePa, BOIL_TESTED_PA),
    ...decomposition(temperatureC, solute),
  ];
}

/** Sucrose that is no longer sucrose. */
export function decomposition(temperatureC: number, solute: Solute): readonly ModelWarning[] {
  return solute.holdsSucrose && temperatureC > SUCROSE_DECOMPOSES_ABOVE_C
    ? [
        {
          code: 'sugar-decomposes',
          parameter: 'temperatureC',
          value: temperatureC,
          limits: [BOIL_TESTED_C[0], SUCROSE_DECOMPOSES_ABOVE_C],
          subject: 'sucrose',
        },
      ]
    : [];
}
