import { type AcidSystem, balancedLnH } from '../../matter/acids/charge-balance.js';
import { INVERSION_CONSTANTS } from './constants.js';
import { dryEnd, type Law } from './dry-end.js';
import type { Step } from './steps.js';

/** What inversion changes in the pan, g. */
export type PanState = { readonly sucroseG: number; readonly waterG: number };

/** A part of the path over which the acid in the pan stays the same. */
export type Stretch = {
  /** Water of the path where it begins, g. */
  readonly fromWaterG: number;
  readonly steps: readonly Step[];
  /** Nothing where there is no acid. */
  readonly system: AcidSystem | undefined;
};

/**
 * Sucrose and water stepped together by one law, the pH solved again in the water of each step.
 *
 * Inversion takes its water from the steam first: while the path gives off more than that, the pan
 * holds what the path says, and only less steams away. Once it does not, inversion eats what is
 * there, and stops where there is none.
 *
 * @param syrupPH - The syrup is never less sour than this.
 */
export function runLaw(
  law: Law,
  { fromWaterG, steps, system }: Stretch,
  start: PanState,
  syrupPH: number,
): PanState {
  const { value: waterPerSucrose } = INVERSION_CONSTANTS.waterPerSucrose;
  const syrupLnH = -syrupPH * Math.LN10;
  let { sucroseG, waterG } = start;
  let pathWaterG = fromWaterG;
  let lnH = syrupLnH;
  for (const step of steps) {
    const inWaterG = Math.min(step.waterG, waterG);
    if (inWaterG > 0 && sucroseG > 0) {
      if (system !== undefined) {
        lnH = balancedLnH(system, inWaterG / 1_000, step.temperatureC, lnH);
      }
      const perMin =
        step.perMinAndG *
        inWaterG *
        Math.exp(Math.max(lnH, syrupLnH)) *
        dryEnd(law, 1 - inWaterG / step.solutionG);
      const splitG = Math.min(
        -sucroseG * Math.expm1(-perMin * step.minutes),
        waterG / waterPerSucrose,
      );
      sucroseG -= splitG;
      waterG = Math.max(0, waterG - splitG * waterPerSucrose);
    }
    const addedG = Math.max(0, step.aheadWaterG - pathWaterG);
    waterG = Math.min(step.aheadWaterG, waterG + addedG);
    pathWaterG = step.aheadWaterG;
  }
  return { sucroseG, waterG };
}
