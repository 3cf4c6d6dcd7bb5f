import type { ModelWarning } from '../../foundation/results/types.js';
import { warnOutside } from '../../foundation/validity/check.js';
import type { Mixture, Solid } from '../../matter/mixture/types.js';
import { bulkTaste, type Taste } from './bulk-taste.js';
import {
  INTENSE_RESPONSE,
  type IntenseSweetener,
  SYNERGY_PAIRS,
  TASTING_CONSTANTS,
} from './intense-parameters.js';
import { isIntenseSolid, responsePercent } from './intense-response.js';
import type { Synergy, TastingOptions } from './tasting.js';

/** What one solid adds to the sweetness of the dry sweet, with its lowest and highest. */
export type Contribution = {
  readonly solid: Solid;
  readonly isIntense: boolean;
  readonly taste: Taste;
};

/** What every solid adds, and what has to be said about it. */
export type Contributions = {
  readonly list: readonly Contribution[];
  readonly warnings: readonly ModelWarning[];
};

/** Weighs every solid of a mixture that has something dry. */
export function contributionsOf(mixture: Mixture, options: TastingOptions): Contributions {
  const dryG = mixture.massG - mixture.waterG;
  const strength =
    options.tastingConcentrationGPer100Ml ?? TASTING_CONSTANTS.concentrationGPer100Ml.value;
  const list: Contribution[] = [];
  const warnings: ModelWarning[] = [];
  for (const solid of mixture.solids) {
    const share = solid.massG / dryG;
    if (isIntenseSolid(solid)) {
      const taste = intenseTaste(solid.species, share, strength);
      list.push({ solid, isIntense: true, taste });
      warnings.push(...intenseWarnings(solid.species, taste, strength));
      continue;
    }
    const taste = bulkTaste(solid, options);
    if (taste === undefined) warnings.push(notModelled(solid, share));
    else list.push({ solid, isIntense: false, taste: times(taste, share) });
  }
  return { list, warnings };
}

/** The two of a pair raise each other, most at equal parts: σ = 1 + 4·q·(1 − q)·(most − 1). */
export function withSynergy(
  list: readonly Contribution[],
  { acesulfameKWithAspartame = 1, xylitolWithSorbitol = 1 }: Synergy,
): readonly Contribution[] {
  const intense = raisePair(list, SYNERGY_PAIRS.acesulfameKWithAspartame, acesulfameKWithAspartame);
  return raisePair(intense, SYNERGY_PAIRS.xylitolWithSorbitol, xylitolWithSorbitol);
}

function raisePair(
  list: readonly Contribution[],
  pair: readonly string[],
  most: number,
): readonly Contribution[] {
  const isOfPair = ({ solid }: Contribution) =>
    solid.kind === 'pure' && pair.includes(solid.species);
  const [first, second] = list.filter(isOfPair);
  if (most === 1 || first === undefined || second === undefined) return list;
  const q = first.taste[0] / (first.taste[0] + second.taste[0]);
  const factor = 1 + 4 * q * (1 - q) * (most - 1);
  return list.map((one) => (isOfPair(one) ? { ...one, taste: times(one.taste, factor) } : one));
}

function intenseTaste(sweetener: IntenseSweetener, share: number, strength: number): Taste {
  const factor = INTENSE_RESPONSE[sweetener].rightWithin.value;
  const at = (dose: number) => responsePercent(sweetener, dose, strength) / strength;
  return [at(share), at(share / factor), at(share * factor)];
}

function intenseWarnings(
  sweetener: IntenseSweetener,
  [value, low, high]: Taste,
  strength: number,
): readonly ModelWarning[] {
  const outside = warnOutside(
    'intenseSweetnessPercent',
    value * strength,
    INTENSE_RESPONSE[sweetener].testedPercent,
  );
  return [
    {
      code: 'shown-from-memory',
      parameter: 'addedSweetness',
      value,
      limits: [low, high],
      subject: sweetener,
    },
    ...outside.map((warning) => ({ ...warning, subject: sweetener })),
  ];
}

function notModelled(solid: Solid, share: number): ModelWarning {
  return {
    code: 'species-not-modelled',
    parameter: 'shareOfDrySolids',
    value: share,
    limits: [0, 0],
    subject: solid.kind === 'pure' ? solid.species : 'saccharides',
  };
}

function times([value, low, high]: Taste, factor: number): Taste {
  return [value * factor, low * factor, high * factor];
}
