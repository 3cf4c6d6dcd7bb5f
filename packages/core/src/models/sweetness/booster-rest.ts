import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { SMALL_DOSES } from '../../matter/ingredients/small-doses.js';
import { assemble, totalG } from '../../matter/mixture/assemble.js';
import type { Mixture, Solid } from '../../matter/mixture/types.js';
import {
  ADDED_AT_DOMAIN_C,
  type Booster,
  type BoosterOptions,
  TARGET_SWEETNESS_DOMAIN,
} from './booster-types.js';
import {
  EU_SWEETENER_CAPS,
  INTENSE_RESPONSE,
  type IntenseSweetener,
  LINGERING,
} from './intense-parameters.js';

const MG_PER_KG = 1_000_000;

/** A mixture without some of its sweeteners, and how much of them was in it. */
export type Rest = {
  readonly mixture: Mixture | undefined;
  readonly dryG: number;
  readonly massG: number;
  readonly takenOutG: (sweetener: string) => number;
};

/** What is left when these are taken out. */
export function restOf(mixture: Mixture, sweeteners: readonly string[]): Rest {
  const isTaken = (solid: Solid) => solid.kind === 'pure' && sweeteners.includes(solid.species);
  const taken = mixture.solids.filter(isTaken);
  const massG = mixture.massG - totalG(taken);
  const dryG = massG - mixture.waterG;
  return {
    mixture:
      dryG > 0
        ? assemble(
            mixture.waterG,
            mixture.solids.filter((solid) => !isTaken(solid)),
            mixture.apart,
          )
        : undefined,
    dryG,
    massG,
    takenOutG: (sweetener) =>
      totalG(taken.filter((solid) => solid.kind === 'pure' && solid.species === sweetener)),
  };
}

/** The mixture with more of some pure substances. */
export function withMore(mixture: Mixture, more: readonly (readonly [Solid, number])[]): Mixture {
  const added = more.map(([solid, massG]) => ({ ...solid, massG }));
  return assemble(mixture.waterG, [...mixture.solids, ...added], mixture.apart);
}

/** Refuses a target that is no sweetness, and a heat that is none. */
export function checkBooster({ targetRelativeSweetness, addedAtC }: BoosterOptions): void {
  requireWithin('targetRelativeSweetness', targetRelativeSweetness, TARGET_SWEETNESS_DOMAIN);
  if (addedAtC !== undefined) requireWithin('addedAtC', addedAtC, ADDED_AT_DOMAIN_C);
}

/** Hottest mass an intense sweetener may go into, °C; nothing where it stands the boil. */
export function heatLimitC(sweetener: IntenseSweetener): number | undefined {
  const dose = SMALL_DOSES[sweetener];
  return 'maxAdditionC' in dose ? dose.maxAdditionC.value : undefined;
}

/** What is known of an intense sweetener besides its dose. */
export function intenseFacts(
  sweetener: IntenseSweetener,
  massFraction: number,
): Omit<Booster, 'massFraction' | 'massG' | 'band'> {
  const caps: Readonly<Partial<Record<IntenseSweetener, { readonly value: number }>>> =
    EU_SWEETENER_CAPS;
  const cap = caps[sweetener];
  const hottestC = heatLimitC(sweetener);
  return {
    rightWithin: INTENSE_RESPONSE[sweetener].rightWithin.value,
    ...(cap === undefined ? {} : underCap(massFraction, cap.value / MG_PER_KG)),
    ...(hottestC === undefined ? {} : { heatLimitC: hottestC }),
    lingersAlone: LINGERING.includes(sweetener),
  };
}

function underCap(massFraction: number, legalCapMassFraction: number) {
  return { legalCapMassFraction, aboveLegalCap: massFraction > legalCapMassFraction };
}

/** Shares of the dry sweet as grams and as shares of the finished sweet, water and all. */
export function inFinished(
  { dryG, massG }: Rest,
  shares: readonly number[],
): readonly { readonly massG: number; readonly massFraction: number }[] {
  const all = shares.reduce((sum, share) => sum + share, 0);
  const newDryG = dryG / (1 - all);
  const finishedG = massG + newDryG * all;
  return shares.map((share) => ({
    massG: newDryG * share,
    massFraction: (newDryG * share) / finishedG,
  }));
}

/** A band of shares of the dry sweet, of the finished one; 1 stays 1. */
export function bandInFinished(rest: Rest, [low, high]: Span): Span {
  const one = (share: number) =>
    share >= 1 ? 1 : (inFinished(rest, [share])[0]?.massFraction ?? 1);
  return [one(low), one(high)];
}
