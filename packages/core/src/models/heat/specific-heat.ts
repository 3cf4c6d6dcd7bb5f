import { around } from '../../foundation/results/band.js';
import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import {
  DRY_MELT_CONSTANTS,
  HEAT_DOMAIN_C,
  SPECIFIC_HEAT_CONSTANTS,
  SUGAR_CRYSTAL_CONSTANTS,
} from './constants.js';

/** Heat a kilogram takes for one kelvin. */
export type SpecificHeat = Checked<{
  /** kJ/(kg K). */
  specificHeatKJPerKgK: number;
  /** kJ/(kg K). */
  band: Span;
}>;

/**
 * Heat it takes to make a kilogram of syrup one kelvin hotter.
 *
 * Over 85 % of solids the law of solutions is not run on: near dryness it would lie 40 % above what
 * a sugar melt takes. A straight line leads to the melt at 98 %. All solids count as sugar.
 *
 * @equation c = 4.1868 − 0.0297·B + 4.6·10⁻⁵·B·P + 7.5·10⁻⁵·B·T; from 85 Brix (1 − x)·c + 2.0·x,
 *   x = (B − 85)/13
 * @param input - `brix`: dry solids, g per 100 g, 0 to 100. `temperatureC`: °C, 0 to 250. `purity`:
 *   sucrose in the solids, %, 0 to 100; 100 if left out. For glucose syrup 0 to 40.
 * @returns `specificHeatKJPerKgK` and `band`, kJ/(kg K): 10 % either way to 90 Brix, 15 above.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * specificHeat({ brix: 80, temperatureC: 80 }).specificHeatKJPerKgK // 2.6588
 * @source bubnik-1995, dry-melt-heat
 */
export function specificHeat({
  brix,
  temperatureC,
  purity = 100,
}: {
  readonly brix: number;
  readonly temperatureC: number;
  readonly purity?: number | undefined;
}): SpecificHeat {
  requireWithin('brix', brix, [0, 100]);
  requireWithin('temperatureC', temperatureC, HEAT_DOMAIN_C);
  requireWithin('purity', purity, [0, 100]);
  const specificHeatKJPerKgK = specificHeatKJPerKgKAt(brix, temperatureC, purity);
  const { spreadTo90Brix, spreadAbove90Brix } = DRY_MELT_CONSTANTS;
  const spread = brix > 90 ? spreadAbove90Brix : spreadTo90Brix;
  return {
    specificHeatKJPerKgK,
    band: around(specificHeatKJPerKgK, spread * specificHeatKJPerKgK),
    warnings: [],
  };
}

/** The same, unchecked, for a loop over a whole boil. */
export function specificHeatKJPerKgKAt(brix: number, temperatureC: number, purity = 100): number {
  const { waterKJPerKgK, perBrix, perBrixPurity, perBrixC } = SPECIFIC_HEAT_CONSTANTS;
  const {
    lawEndsAtMassFraction: lawEnds,
    meltFromMassFraction: meltFrom,
    meltKJPerKgK,
  } = DRY_MELT_CONSTANTS;
  const law = waterKJPerKgK + brix * (perBrix + perBrixPurity * purity + perBrixC * temperatureC);
  const melt = Math.min(1, Math.max(0, (brix / 100 - lawEnds) / (meltFrom - lawEnds)));
  return (1 - melt) * law + melt * meltKJPerKgK;
}

/**
 * Heat it takes to make a kilogram of dry sugar crystals one kelvin hotter.
 *
 * @equation c = 1.1355 + 0.004312·T
 * @param temperatureC - °C, 0 to 100, where the line was drawn.
 * @returns `specificHeatKJPerKgK`, kJ/(kg K).
 * @throws {@link ModelRangeError} outside the line.
 * @example
 * sucroseCrystalSpecificHeat(50).specificHeatKJPerKgK // 1.3511
 * @source mohos-2010
 */
export function sucroseCrystalSpecificHeat(temperatureC: number): Checked<{
  specificHeatKJPerKgK: number;
}> {
  requireWithin('temperatureC', temperatureC, [0, 100]);
  const { at0CKJPerKgK, perC } = SUGAR_CRYSTAL_CONSTANTS;
  return { specificHeatKJPerKgK: at0CKJPerKgK + perC * temperatureC, warnings: [] };
}
