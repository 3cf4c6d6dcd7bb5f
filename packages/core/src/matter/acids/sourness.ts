import type { Checked, ModelWarning, Span } from '../../foundation/results/types.js';
import { unknownName } from '../../foundation/validity/model-range-error.js';
import type { Mixture } from '../mixture/types.js';
import { EQUAL_SOURNESS, SOURNESS_CONSTANTS } from './taste-constants.js';
import { weighed } from './titratable-acidity.js';
import type { AcidMasses, AcidSpecies } from './types.js';

/** Acids mouths have judged. */
export type SourAcid = keyof typeof EQUAL_SOURNESS;

/**
 * How sour it tastes, counted as citric acid. From memory, and mouths differ by a sixth.
 *
 * Malic acid tastes sourer gram for gram and lingers, tartaric acid is hard, lactic acid mild.
 * Salts, cream of tartar and bicarbonate have no figure: they are left out with a warning. What
 * sweetness and flavour do is left out too.
 *
 * @equation S = Σ mᵢ/fᵢ
 * @param of - A mixture, or g of each acid, dry and without crystal water.
 * @returns `citricEquivalentG` and `band`, g of citric acid without crystal water.
 * @throws {@link ModelRangeError} for a mass that cannot be meant or an acid nothing is known of.
 * @example
 * sourness({ 'citric-acid': 5, 'malic-acid': 4.25 }).citricEquivalentG // 10 g
 * @source recalled-acids
 */
export function sourness(
  of: Mixture | AcidMasses,
): Checked<{ citricEquivalentG: number; band: Span }> {
  const acids = weighed(of);
  const totalG = acids.reduce((sum, { massG }) => sum + massG, 0);
  const warnings: ModelWarning[] = [];
  let citricEquivalentG = 0;
  let low = 0;
  let high = 0;
  for (const { species, massG } of acids) {
    if (massG === 0) continue;
    if (!isSour(species)) {
      warnings.push({
        code: 'species-not-modelled',
        parameter: 'shareOfAcids',
        value: massG / totalG,
        limits: [0, 0],
        subject: species,
      });
      continue;
    }
    const factor = equalSournessOf(species);
    citricEquivalentG += massG / factor.value;
    low += massG / factor.band[1];
    high += massG / factor.band[0];
  }
  return { citricEquivalentG, band: [low, high], warnings };
}

/** Grams as sour as a gram of citric acid; nobody doubts citric acid. */
export function equalSournessOf(acid: SourAcid): { readonly value: number; readonly band: Span } {
  const { value } = EQUAL_SOURNESS[acid];
  const plusMinus = acid === 'citric-acid' ? 0 : SOURNESS_CONSTANTS.plusMinus.value;
  return { value, band: [value * (1 - plusMinus), value * (1 + plusMinus)] };
}

function isSour(species: AcidSpecies): species is SourAcid {
  return Object.hasOwn(EQUAL_SOURNESS, species);
}

/** @throws ModelRangeError for an acid nobody has judged. */
export function requireSour(parameter: string, acid: string): void {
  if (Object.hasOwn(EQUAL_SOURNESS, acid)) return;
  throw unknownName(parameter, acid, 'Only citric, malic, tartaric and lactic acid have figures');
}
