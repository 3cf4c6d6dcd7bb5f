import type { Span } from '../../foundation/results/types.js';
import type { Solid } from '../../matter/mixture/types.js';
import { type DoseQuestion, intenseDoseBand } from './booster-intense.js';
import type { Rest } from './booster-rest.js';
import type { BoosterSweetener } from './booster-types.js';
import { TASTING_CONSTANTS } from './intense-parameters.js';
import { relativeSweetness } from './relative-sweetness.js';
import type { TastingOptions } from './tasting.js';

/** Bands of the dry shares, as sweet as the rest may be and as strong as it may be tasted. */
export function doseBands(
  question: DoseQuestion,
  rest: Rest,
  tasting: TastingOptions,
): readonly Span[] {
  const given = tasting.tastingConcentrationGPer100Ml;
  const { boosterLowGPer100Ml, concentrationGPer100Ml } = TASTING_CONSTANTS;
  const concentrations: Span =
    given === undefined
      ? [boosterLowGPer100Ml.value, concentrationGPer100Ml.value]
      : [given, given];
  const at = (tastingConcentrationGPer100Ml: number): Span => {
    const [, low, high] = sweetnessOf(rest, { ...tasting, tastingConcentrationGPer100Ml });
    return [low, high];
  };
  return intenseDoseBand(
    question,
    { weak: at(concentrations[0]), strong: at(concentrations[1]) },
    concentrations,
  );
}

/** Middle, lowest and highest sweetness of what the sweeteners are added to. */
export function sweetnessOf(
  { mixture }: Rest,
  tasting: TastingOptions,
): readonly [value: number, low: number, high: number] {
  if (mixture === undefined) return [0, 0, 0];
  const { relativeSweetness: value, band } = relativeSweetness(mixture, tasting);
  return [value, ...band];
}

/** What was given, or the usual. */
export function usualConcentration({ tastingConcentrationGPer100Ml }: TastingOptions): number {
  return tastingConcentrationGPer100Ml ?? TASTING_CONSTANTS.concentrationGPer100Ml.value;
}

/** A grain of it, to be weighed by whoever adds it. */
export function solidOf(sweetener: BoosterSweetener): Solid {
  return { kind: 'pure', species: sweetener, massG: 1 };
}
