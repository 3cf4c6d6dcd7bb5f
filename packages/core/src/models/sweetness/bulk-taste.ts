import { interpolate } from '../../foundation/numeric/interpolate.js';
import type { Solid } from '../../matter/mixture/types.js';
import type { SpeciesId } from '../../matter/species.js';
import { GLUCOSE_STRENGTH_CONSTANTS } from './intense-parameters.js';
import {
  FRUCTOSE_SWEETNESS_CONSTANTS,
  NOT_SWEET,
  SWEETNESS,
  SYRUP_SWEETNESS_CONSTANTS,
  SYRUP_SWEETNESS_HIGH,
  SYRUP_SWEETNESS_LOW,
} from './parameters.js';
import type { TastingOptions } from './tasting.js';

/** Sweetness with its lowest and highest value, sucrose = 1. */
export type Taste = readonly [value: number, low: number, high: number];

/** How sweet a sugar, a sugar alcohol or the solids of a syrup are, weight for weight. */
export function bulkTaste(solid: Solid, options: TastingOptions): Taste | undefined {
  return solid.kind === 'saccharides'
    ? syrupTaste(solid.dextroseEquivalent)
    : pureTaste(solid.species, options);
}

/** The same of one pure substance. */
export function pureTaste(species: SpeciesId, options: TastingOptions): Taste | undefined {
  const known: Readonly<
    Partial<
      Record<SpeciesId, { readonly value: number; readonly low: number; readonly high: number }>
    >
  > = SWEETNESS;
  const taste = known[species];
  if (taste !== undefined) {
    const { value, low, high } = taste;
    const shift = shiftOf(species, options, value);
    return [value * shift, low * shift, high * shift];
  }
  const notSweet: readonly SpeciesId[] = NOT_SWEET;
  return notSweet.includes(species) ? [0, 0, 0] : undefined;
}

/** Sweetness at the temperature or the strength it is tasted at, over its usual value. */
function shiftOf(
  species: SpeciesId,
  { tastingTemperatureC, sucroseEquivalencePercent }: TastingOptions,
  usual: number,
): number {
  if (species === 'fructose' && tastingTemperatureC !== undefined) {
    const { at0C, fallPerK } = FRUCTOSE_SWEETNESS_CONSTANTS;
    return (at0C.value * Math.exp(-fallPerK.value * tastingTemperatureC)) / usual;
  }
  if (species === 'glucose' && sucroseEquivalencePercent !== undefined) {
    const { short, fadePerPercent } = GLUCOSE_STRENGTH_CONSTANTS;
    return (1 - short.value * Math.exp(-fadePerPercent.value * sucroseEquivalencePercent)) / usual;
  }
  return 1;
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
