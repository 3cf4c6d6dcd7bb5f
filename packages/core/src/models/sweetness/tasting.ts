import type { ModelWarning } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import {
  SUCROSE_EQUIVALENCE_DOMAIN,
  SUCROSE_EQUIVALENCE_TESTED,
  SYNERGY_MOST,
  TASTING_CONCENTRATION_DOMAIN,
  TASTING_CONCENTRATION_TESTED,
} from './intense-parameters.js';
import { TASTING_TEMPERATURE_DOMAIN_C, TASTING_TEMPERATURE_TESTED_C } from './parameters.js';

/** How it is tasted. */
export type TastingOptions = {
  /** Of the mouth or the drink, °C, 0 to 100; fructose then follows its own curve. */
  readonly tastingTemperatureC?: number | undefined;
  /**
   * How sweet it is in the mouth, as sugar at so many per cent, 0 to 60; glucose then follows its
   * own curve.
   */
  readonly sucroseEquivalencePercent?: number | undefined;
  /** Grams of the dry sweet in 100 mL of saliva, 0.5 to 50; only intense sweeteners feel it. */
  readonly tastingConcentrationGPer100Ml?: number | undefined;
};

/** How far two sweeteners in company pass their sum at equal parts; 1 where left out. */
export type Synergy = {
  /** 1 to 1.35. */
  readonly acesulfameKWithAspartame?: number | undefined;
  /** 1 to 1.2; 1.05 is typical. */
  readonly xylitolWithSorbitol?: number | undefined;
};

/** Refuses what cannot be meant, and says where a curve is run on. */
export function checkTasting({
  tastingTemperatureC,
  sucroseEquivalencePercent,
  tastingConcentrationGPer100Ml,
}: TastingOptions): readonly ModelWarning[] {
  const warnings: ModelWarning[] = [];
  if (tastingTemperatureC !== undefined) {
    requireWithin('tastingTemperatureC', tastingTemperatureC, TASTING_TEMPERATURE_DOMAIN_C);
    warnings.push(
      ...warnOutside('tastingTemperatureC', tastingTemperatureC, TASTING_TEMPERATURE_TESTED_C),
    );
  }
  if (sucroseEquivalencePercent !== undefined) {
    const value = sucroseEquivalencePercent;
    requireWithin('sucroseEquivalencePercent', value, SUCROSE_EQUIVALENCE_DOMAIN);
    warnings.push(...warnOutside('sucroseEquivalencePercent', value, SUCROSE_EQUIVALENCE_TESTED));
  }
  if (tastingConcentrationGPer100Ml !== undefined) {
    const value = tastingConcentrationGPer100Ml;
    requireWithin('tastingConcentrationGPer100Ml', value, TASTING_CONCENTRATION_DOMAIN);
    warnings.push(
      ...warnOutside('tastingConcentrationGPer100Ml', value, TASTING_CONCENTRATION_TESTED),
    );
  }
  return warnings;
}

/** Refuses more company than anyone has reported, and less than none. */
export function checkSynergy({ acesulfameKWithAspartame, xylitolWithSorbitol }: Synergy): void {
  const most = SYNERGY_MOST;
  if (acesulfameKWithAspartame !== undefined) {
    requireWithin('acesulfameKWithAspartame', acesulfameKWithAspartame, [
      1,
      most.acesulfameKWithAspartame.value,
    ]);
  }
  if (xylitolWithSorbitol !== undefined) {
    requireWithin('xylitolWithSorbitol', xylitolWithSorbitol, [1, most.xylitolWithSorbitol.value]);
  }
}
