import { interpolate } from '../../foundation/numeric/interpolate.js';
import { joinBands } from '../../foundation/results/band.js';
import type { Checked, None, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { CitedRange } from '../../foundation/validity/constants.js';
import type { Mixture, Solid } from '../../matter/mixture/types.js';
import {
  GLYCAEMIC_CONSTANTS,
  GLYCAEMIC_INDEX,
  SYRUP_GLYCAEMIC_HIGH,
  SYRUP_GLYCAEMIC_INDEX,
  SYRUP_GLYCAEMIC_LOW,
} from './glycaemic-parameters.js';
import { PORTION_DOMAIN_G } from './nutrition.js';

/** An estimate of a glycaemic index. Information about a mixture, never about a person. */
export type GlycaemicIndex = {
  readonly glycaemicIndex: number;
  readonly band: Span;
  /** The caution that belongs beside it. */
  readonly caution: 'not-for-illness';
};

/** An estimate of the glycaemic load of a piece. */
export type GlycaemicLoad = {
  readonly glycaemicLoad: number;
  readonly band: Span;
  /** Sugars, syrup solids, sugar alcohols and fibres in the piece, g. */
  readonly carbohydrateG: number;
  /** The caution that belongs beside it. */
  readonly caution: 'not-for-illness';
};

/**
 * About how high the sugar in the blood rises after this sweet, beside glucose.
 *
 * Information, never a claim and never advice for an illness: a glycaemic index is measured on
 * people, this is a sum. Quote it as a whole number with its band and call it an estimate.
 *
 * @equation GI = Σ gᵢ·GIᵢ / Σ gᵢ over the carbohydrate, sugar alcohols at full weight
 * @param mixture - The sweet; water, acid, fat and protein do not count.
 * @returns `glycaemicIndex`, glucose = 100, and `band`: ten either way, joined with what is in
 *   print; `none` where there is no carbohydrate.
 * @example
 * glycaemicIndex(solutionOf('isomalt', { drySolidsMassFraction: 0.98 })).glycaemicIndex // 9
 * @source livesey-2003, chattopadhyay-2014, gi-lists
 */
export function glycaemicIndex(
  mixture: Mixture,
): Checked<GlycaemicIndex> | None<'no-carbohydrate'> {
  const summed = overCarbohydrate(mixture);
  if (summed === undefined) return { kind: 'none', reason: 'no-carbohydrate' };
  const { index, band } = summed;
  return { glycaemicIndex: index, band, caution: 'not-for-illness', warnings: [] };
}

/**
 * Glycaemic load of one piece: its index times the grams of carbohydrate in it.
 *
 * Information, never a claim and never advice for an illness.
 *
 * @equation GL = GI·g/100
 * @param mixture - The sweet.
 * @param options - `pieceG`: mass of a piece or a portion, 0.01 to 100 000 g.
 * @returns `glycaemicLoad`, its `band`, and the carbohydrate it counts; `none` where there is none.
 * @throws {@link ModelRangeError} if the piece weighs nothing or too much.
 * @example
 * glycaemicLoad(solutionOf('sucrose', { drySolidsMassFraction: 1 }), { pieceG: 4 }).glycaemicLoad // 2.6
 * @source livesey-2003
 */
export function glycaemicLoad(
  mixture: Mixture,
  { pieceG }: { readonly pieceG: number },
): Checked<GlycaemicLoad> | None<'no-carbohydrate'> {
  requireWithin('pieceG', pieceG, PORTION_DOMAIN_G);
  const summed = overCarbohydrate(mixture);
  if (summed === undefined) return { kind: 'none', reason: 'no-carbohydrate' };
  const { index, band, grams } = summed;
  const carbohydrateG = (grams / mixture.massG) * pieceG;
  const load = (of: number) => (of * carbohydrateG) / 100;
  return {
    glycaemicLoad: load(index),
    band: [load(band[0]), load(band[1])],
    carbohydrateG,
    caution: 'not-for-illness',
    warnings: [],
  };
}

type Summed = { readonly index: number; readonly band: Span; readonly grams: number };

function overCarbohydrate({ solids }: Mixture): Summed | undefined {
  let grams = 0;
  let sum = 0;
  let low = 0;
  let high = 0;
  for (const solid of solids) {
    const one = indexOf(solid);
    if (one === undefined) continue;
    grams += solid.massG;
    sum += solid.massG * one.value;
    low += solid.massG * one.low;
    high += solid.massG * one.high;
  }
  if (!(grams > 0)) return undefined;
  const index = sum / grams;
  const { value: plusMinus } = GLYCAEMIC_CONSTANTS.plusMinus;
  const band = joinBands(
    index,
    [index - plusMinus, index + plusMinus],
    [low / grams, high / grams],
  );
  // Nothing lowers the sugar in the blood: the scale ends at nought.
  return { index, band: [Math.max(0, band[0]), band[1]], grams };
}

function indexOf(solid: Solid): Required<Pick<CitedRange, 'value' | 'low' | 'high'>> | undefined {
  if (solid.kind === 'saccharides') {
    const { dextroseEquivalent } = solid;
    return {
      value: interpolate(SYRUP_GLYCAEMIC_INDEX, dextroseEquivalent),
      low: interpolate(SYRUP_GLYCAEMIC_LOW, dextroseEquivalent),
      high: interpolate(SYRUP_GLYCAEMIC_HIGH, dextroseEquivalent),
    };
  }
  const known: Readonly<Partial<Record<string, CitedRange>>> = GLYCAEMIC_INDEX;
  const found = known[solid.species];
  if (found === undefined) return undefined;
  const { value, low = value, high = value } = found;
  return { value, low, high };
}
