import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { HOB_DOMAIN_W, PAN_ASSUMPTIONS, PAN_CONSTANTS } from './constants.js';
import type { HeatSource } from './hob-power.js';

/** What an open pan gives to the air: the size it is estimated from, or the watts themselves. */
export type PanLossOptions = {
  /** Inside diameter, mm, 20 to 2 000; without it nothing is lost. */
  readonly panDiameterMm?: number | undefined;
  /** Taken off at every temperature, W, 0 to 1 000 000; it replaces the estimate by diameter. */
  readonly surfaceLossW?: number | undefined;
};

/** From a ladle to a factory kettle, mm. */
export const PAN_DIAMETER_DOMAIN_MM: Span = [20, 2_000];

/** A loss that grows evenly with temperature. */
export type PanLoss = { readonly atZeroCW: number; readonly perKW: number };

/** Nothing is lost. */
export const NO_LOSS: PanLoss = { atZeroCW: 0, perKW: 0 };

/** Watts lost at a temperature. */
export function lossW({ atZeroCW, perKW }: PanLoss, temperatureC: number): number {
  return atZeroCW + perKW * temperatureC;
}

/**
 * Loss of a pan. A kettle test has paid for the loss at its own mean temperature already, so only
 * what a hotter pan loses beyond that counts; watts that are given are taken off as they are.
 *
 * @param chargeG - What stands in the pan, g.
 * @param waterBoilsAtC - Where the kettle test ended, °C.
 */
export function panLoss(
  { panDiameterMm, surfaceLossW }: PanLossOptions,
  chargeG: number,
  hob: HeatSource | undefined,
  waterBoilsAtC: number,
): PanLoss {
  if (surfaceLossW !== undefined) {
    requireWithin('surfaceLossW', surfaceLossW, HOB_DOMAIN_W);
    return { atZeroCW: surfaceLossW, perKW: 0 };
  }
  if (panDiameterMm === undefined) return NO_LOSS;
  const perKW = PAN_CONSTANTS.surfaceWPerM2K * wettedAreaM2(panDiameterMm, chargeG);
  const noLossAtC =
    hob?.kind === 'timed' ? (hob.fromC + waterBoilsAtC) / 2 : PAN_ASSUMPTIONS.kitchenC;
  return { atZeroCW: -perKW * noLossAtC, perKW };
}

/** Open surface and wetted side of a pan, m²; its base stands on the hob. */
export function wettedAreaM2(panDiameterMm: number, chargeG: number): number {
  requireWithin('panDiameterMm', panDiameterMm, PAN_DIAMETER_DOMAIN_MM);
  const diameterM = panDiameterMm / 1_000;
  const surfaceM2 = (Math.PI * diameterM ** 2) / 4;
  const volumeM3 = chargeG / PAN_ASSUMPTIONS.chargeGPerMl / 1e6;
  // Side over base: π·d·depth with depth = V/(π·d²/4).
  return surfaceM2 + (4 * volumeM3) / diameterM;
}
