import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { ACID_WATER_DOMAIN_G, acidsOf } from './acid-masses.js';
import { balancedPH, dissolvedTartrateMol } from './charge-balance.js';
import {
  ACIDITY_CONSTANTS,
  ACIDITY_DOMAIN_C,
  ACIDS,
  SYRUP_PH,
  SYRUP_PH_DOMAIN,
} from './constants.js';
import type { AcidityOptions, AcidSource } from './types.js';
import { systemInWater } from './water-and-system.js';

/** How sour the water of a mass is. */
export type Acidity = {
  /** Of the water in the mass, however much sugar stands in it. */
  readonly pH: number;
  readonly band: Span;
  /** Whether what was weighed in makes the pH, or the syrup is sourer than that by itself. */
  readonly from: 'acid' | 'syrup';
  /** Cream of tartar that does not dissolve, g. */
  readonly undissolvedG: number;
};

/**
 * How sour the water in a syrup is: what acid, cream of tartar and buffers do together.
 *
 * Acid counts per kilogram of **water**, not of syrup: sugar takes up room and does not thin it. So
 * a syrup turns sourer as it boils down, and a pinch in a cooked mass is strong acid. Hard water
 * eats acid: give its alkalinity. Cream of tartar is its own buffer, near 3.7 whatever the dose,
 * and cold water holds little of it. Nothing is sweeter-tempered than the syrup itself: where the
 * balance comes out above the syrup's own pH, that one is given, and what soda does beyond it is
 * not followed. Sourness on the tongue is another matter: `sourness`.
 *
 * @equation [H] + [Na, K] = Kw/[H] + Σ c·z(pH), mol per kg of water, activities 1, pKa at 25 °C
 * @param of - A mixture, or `waterG` with `acids`: g of each, dry and without crystal water.
 * @param options - `alkalinityMmolPerL` 0 to 50, of `tapWaterG` (all the water by default);
 *   `temperatureC` 0 to 200, 25 by default; `syrupPH` 2 to 9: pH without the cook's acid, 5.0 by
 *   default, between 4.5 and 5.5; 3.9 where much honey is in.
 * @returns `pH` of the water with its `band`, `from`, and `undissolvedG`, g of cream of tartar.
 * @throws {@link ModelRangeError} outside the domains, without water, or for an acid nothing is
 *   known of.
 * @example
 * acidity({ waterG: 100, acids: { 'citric-acid': 1.9212 } }).pH // 2.08
 * @source bates-pinching-1949, acid-constant-tables, merck-index-tartrate
 */
export function acidity(
  of: AcidSource,
  options: AcidityOptions & { readonly syrupPH?: number | undefined } = {},
): Acidity {
  const { waterG } = of;
  const { temperatureC = 25, syrupPH } = options;
  requireWithin('waterG', waterG, ACID_WATER_DOMAIN_G);
  requireWithin('temperatureC', temperatureC, ACIDITY_DOMAIN_C);
  const own = syrupsOwnPH(syrupPH);
  const system = systemInWater(acidsOf(of), waterG, options);
  const waterKg = waterG / 1_000;
  const balanced = balancedPH(system, waterKg, temperatureC);
  const undissolvedMol = system.tartrate.mol - dissolvedTartrateMol(system, waterKg, temperatureC);
  const plusMinus = ACIDITY_CONSTANTS.plusMinusPH.value;
  return {
    pH: Math.min(balanced, own.pH),
    band: [
      Math.min(balanced - plusMinus, own.band[0]),
      Math.min(balanced + plusMinus, own.band[1]),
    ],
    from: balanced < own.pH ? 'acid' : 'syrup',
    undissolvedG: undissolvedMol * ACIDS['potassium-hydrogen-tartrate'].molarMassGPerMol.value,
  };
}

/**
 * pH of a syrup without acid of the cook's: what is given, or the usual one with its spread.
 *
 * @throws ModelRangeError outside 2 to 9.
 */
export function syrupsOwnPH(given: number | undefined): {
  readonly pH: number;
  readonly band: Span;
} {
  const { value, low, high } = SYRUP_PH.syrup;
  if (given === undefined) return { pH: value, band: [low, high] };
  requireWithin('syrupPH', given, SYRUP_PH_DOMAIN);
  return { pH: given, band: [given, given] };
}
