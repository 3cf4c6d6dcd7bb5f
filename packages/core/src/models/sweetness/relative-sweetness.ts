import { interpolate } from '../../foundation/numeric/interpolate.js';
import type { Checked, ModelWarning, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import type { Mixture } from '../../matter/mixture/types.js';
import type { SpeciesId } from '../../matter/species.js';
import {
  FRUCTOSE_SWEETNESS_CONSTANTS,
  NOT_SWEET,
  SWEETNESS,
  SYRUP_SWEETNESS_CONSTANTS,
  SYRUP_SWEETNESS_HIGH,
  SYRUP_SWEETNESS_LOW,
  TASTING_TEMPERATURE_DOMAIN_C,
  TASTING_TEMPERATURE_TESTED_C,
} from './parameters.js';

/** How sweet beside sugar. */
export type RelativeSweetness = { readonly relativeSweetness: number; readonly band: Span };

/** How it is tasted. */
export type TastingOptions = {
  /** Of the mouth or the drink, °C; a little above a room where left out. */
  readonly tastingTemperatureC?: number | undefined;
};

type Taste = readonly [value: number, low: number, high: number];

/**
 * How sweet the dry part of a sweet is, weight for weight beside sugar.
 *
 * Sweetness is taken to add up by mass. It is the judgement of a panel and shifts with strength,
 * warmth and company: print two figures, and expect a fifth either way. Glucose syrup is the least
 * agreed on. Intense sweeteners do not add up by mass and are left out with a warning that names
 * their share of the dry solids; so is anything else without a value. Acid counts in the mass and
 * has no sweetness of its own, though it makes a sweet taste less sweet.
 *
 * @equation S = Σ wᵢ·sᵢ over the dry solids; syrup solids s = 0.01335·DE − 0.0000595·DE²;
 *   fructose at T: s = 1.5632·exp(−0.011223·T)
 * @param mixture - What the sweet is made of; its water is ignored.
 * @param options - `tastingTemperatureC`, 0 to 100 °C: fructose then follows its own curve, 1.03
 *   in the mouth and 1.25 in a cool drink; without it fructose is 1.20.
 * @returns `relativeSweetness`, sucrose = 1, and `band`, the sums of all lowest and of all highest
 *   values in print: bounds, not likely errors.
 * @throws {@link ModelRangeError} if the temperature lies outside 0 to 100 or there is nothing dry.
 * @example
 * relativeSweetness(solutionOf('isomalt', { drySolidsMassFraction: 0.98 })).relativeSweetness // 0.5
 * @source chattopadhyay-2014, syrup-sweetness-fit, sweetness-encyclopedia, tsuzuki-yamazaki-1953
 */
export function relativeSweetness(
  mixture: Mixture,
  { tastingTemperatureC }: TastingOptions = {},
): Checked<RelativeSweetness> {
  const warnings: ModelWarning[] = [];
  if (tastingTemperatureC !== undefined) {
    requireWithin('tastingTemperatureC', tastingTemperatureC, TASTING_TEMPERATURE_DOMAIN_C);
    warnings.push(
      ...warnOutside('tastingTemperatureC', tastingTemperatureC, TASTING_TEMPERATURE_TESTED_C),
    );
  }
  const dryG = mixture.massG - mixture.waterG;
  if (!(dryG > 0)) {
    throw new ModelRangeError('Water alone has no sweetness to compare.', {
      code: 'outside-range',
      parameter: 'drySolidsMassFraction',
      received: mixture.drySolidsMassFraction,
    });
  }
  let sum = 0;
  let low = 0;
  let high = 0;
  for (const solid of mixture.solids) {
    const share = solid.massG / dryG;
    const taste =
      solid.kind === 'saccharides'
        ? syrupTaste(solid.dextroseEquivalent)
        : pureTaste(solid.species, tastingTemperatureC);
    if (taste === undefined) {
      warnings.push({
        code: 'species-not-modelled',
        parameter: 'shareOfDrySolids',
        value: share,
        limits: [0, 0],
        subject: solid.kind === 'pure' ? solid.species : 'saccharides',
      });
      continue;
    }
    sum += share * taste[0];
    low += share * taste[1];
    high += share * taste[2];
  }
  return { relativeSweetness: sum, band: [low, high], warnings };
}

function pureTaste(species: SpeciesId, temperatureC: number | undefined): Taste | undefined {
  const known: Readonly<
    Partial<
      Record<SpeciesId, { readonly value: number; readonly low: number; readonly high: number }>
    >
  > = SWEETNESS;
  const taste = known[species];
  if (taste !== undefined) {
    const { value, low, high } = taste;
    const warmth = species === 'fructose' ? fructoseWarmth(temperatureC, value) : 1;
    return [value * warmth, low * warmth, high * warmth];
  }
  const notSweet: readonly SpeciesId[] = NOT_SWEET;
  return notSweet.includes(species) ? [0, 0, 0] : undefined;
}

/** Sweetness of fructose at a temperature, over its usual value. */
function fructoseWarmth(temperatureC: number | undefined, usual: number): number {
  if (temperatureC === undefined) return 1;
  const { at0C, fallPerK } = FRUCTOSE_SWEETNESS_CONSTANTS;
  return (at0C.value * Math.exp(-fallPerK.value * temperatureC)) / usual;
}

function syrupTaste(dextroseEquivalent: number): Taste {
  const { perDextroseEquivalent: a, perDextroseEquivalentSquared: b } = SYRUP_SWEETNESS_CONSTANTS;
  const value = a.value * dextroseEquivalent + b.value * dextroseEquivalent ** 2;
  // The parabola passes 0.003 above the printed high end at DE 36; a band holds its own middle.
  return [
    value,
    Math.min(value, interpolate(SYRUP_SWEETNESS_LOW, dextroseEquivalent)),
    Math.max(value, interpolate(SYRUP_SWEETNESS_HIGH, dextroseEquivalent)),
  ];
}
