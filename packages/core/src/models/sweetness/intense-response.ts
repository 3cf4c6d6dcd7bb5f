import type { Solid } from '../../matter/mixture/types.js';
import { INTENSE_RESPONSE, type IntenseSweetener } from './intense-parameters.js';

/** A part in the dry sweet, dissolved in the mouth: mg/L for each g of it in 100 mL. */
const MG_PER_L_OF_G_PER_100_ML = 10_000;

/** Tells an intense sweetener from everything else. */
export function isIntense(species: string): species is IntenseSweetener {
  return Object.hasOwn(INTENSE_RESPONSE, species);
}

/** The same for a solid of a mixture. */
export function isIntenseSolid(
  solid: Solid,
): solid is Extract<Solid, { kind: 'pure' }> & { readonly species: IntenseSweetener } {
  return solid.kind === 'pure' && isIntense(solid.species);
}

/** How sweet a share of the dry sweet is in the mouth, as sugar at so many per cent. */
export function responsePercent(
  sweetener: IntenseSweetener,
  share: number,
  concentrationGPer100Ml: number,
): number {
  const { maximumPercent, halfMgPerL } = INTENSE_RESPONSE[sweetener];
  const mgPerL = MG_PER_L_OF_G_PER_100_ML * concentrationGPer100Ml * share;
  return (maximumPercent.value * mgPerL) / (halfMgPerL.value + mgPerL);
}

/** The share of the dry sweet that is as sweet as sugar at so many per cent, under the maximum. */
export function shareForResponse(
  sweetener: IntenseSweetener,
  percent: number,
  concentrationGPer100Ml: number,
): number {
  const { maximumPercent, halfMgPerL } = INTENSE_RESPONSE[sweetener];
  const mgPerL = (halfMgPerL.value * percent) / (maximumPercent.value - percent);
  return mgPerL / (MG_PER_L_OF_G_PER_100_ML * concentrationGPer100Ml);
}
