import { combine, mixture } from '../../matter/mixture/index.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { glassTransition } from '../../models/glass/index.js';
import { relativeSweetness } from '../../models/sweetness/index.js';
import type { OpenLine } from '../batch/amounts.js';
import { withDrySolids } from './stop.js';
import { drySolidsG, withoutEthanol } from './without-ethanol.js';

/** A line of the formula with its grams. */
export type WeighedLine = OpenLine & { readonly massG: number };

/** The numbers that follow from what is weighed and from where the base stops. */
export type Outcome = {
  readonly chargeG: number;
  readonly startDrySolids: number;
  readonly boilOffG: number;
  readonly baseG: number;
  readonly finishedG: number;
  readonly moisture: number;
  readonly glassTransitionC: number;
  readonly sweetness: number;
};

/** What goes into the cold pan, and what comes late; alcohol counts as gone in both. */
export type Pots = {
  /** As weighed, alcohol included. */
  readonly charge: Mixture;
  readonly base: Mixture;
  readonly late: Mixture | undefined;
};

/** Fills the pots from weighed lines. */
export function fillPots(lines: readonly WeighedLine[]): Pots | undefined {
  const partsOf = (wanted: readonly WeighedLine[]) =>
    wanted
      .filter(({ massG }) => massG > 0)
      .map(({ part, massG, drySolids, dextroseEquivalent }) => ({
        ...part,
        massG,
        drySolidsMassFraction: part.drySolidsMassFraction ?? drySolids.value,
        ...(part.dextroseEquivalent === undefined &&
        part.profile === undefined &&
        dextroseEquivalent !== undefined
          ? { dextroseEquivalent: dextroseEquivalent.value }
          : {}),
      }));
  const early = partsOf(lines.filter((line) => !line.late));
  const afterwards = partsOf(lines.filter((line) => line.late));
  if (early.length === 0) return undefined;
  const charge = mixture(early);
  return {
    charge,
    base: withoutEthanol(charge),
    late: afterwards.length === 0 ? undefined : withoutEthanol(mixture(afterwards)),
  };
}

/** The sweet as it leaves the pan, all of the late water kept. */
export function finishedMixture({ base, late }: Pots, baseDrySolids: number): Mixture {
  const stopped = withDrySolids(base, baseDrySolids);
  return late === undefined ? stopped : combine([stopped, late]);
}

/** Every number of the outcome for these pots. */
export function outcomeOf(pots: Pots, baseDrySolids: number): Outcome {
  const finished = finishedMixture(pots, baseDrySolids);
  const baseG = drySolidsG(pots.base) / baseDrySolids;
  return {
    chargeG: pots.charge.massG,
    startDrySolids: pots.charge.drySolidsMassFraction,
    boilOffG: pots.charge.massG - baseG,
    baseG,
    finishedG: finished.massG,
    moisture: finished.waterG / finished.massG,
    glassTransitionC: glassTransition(finished).glassTransitionC,
    sweetness: relativeSweetness(finished).relativeSweetness,
  };
}
