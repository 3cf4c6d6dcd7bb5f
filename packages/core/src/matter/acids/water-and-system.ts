import { requireWithin } from '../../foundation/validity/check.js';
import { ACID_MASS_DOMAIN_G, type WeighedAcid } from './acid-masses.js';
import { type AcidSystem, acidSystem } from './charge-balance.js';
import { ALKALINITY_DOMAIN_MMOL_PER_L } from './constants.js';

/** Acids ready for the balance, with the cations the tap water brought: a litre weighs a kilogram. */
export function systemInWater(
  acids: readonly WeighedAcid[],
  waterG: number,
  {
    alkalinityMmolPerL = 0,
    tapWaterG = waterG,
  }: {
    readonly alkalinityMmolPerL?: number | undefined;
    readonly tapWaterG?: number | undefined;
  },
): AcidSystem {
  requireWithin('alkalinityMmolPerL', alkalinityMmolPerL, ALKALINITY_DOMAIN_MMOL_PER_L);
  requireWithin('tapWaterG', tapWaterG, ACID_MASS_DOMAIN_G);
  return acidSystem(acids, (alkalinityMmolPerL * tapWaterG) / 1_000_000);
}
