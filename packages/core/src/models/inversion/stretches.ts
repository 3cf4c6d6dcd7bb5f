import { requireWithin } from '../../foundation/validity/check.js';
import { acidsByName, acidsOfMixture, type WeighedAcid } from '../../matter/acids/acid-masses.js';
import type { AcidSystem } from '../../matter/acids/charge-balance.js';
import type { AcidMasses } from '../../matter/acids/types.js';
import { systemInWater } from '../../matter/acids/water-and-system.js';
import { totalG } from '../../matter/mixture/assemble.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { INVERSION_STEPS, STEPS_BEFORE_LATE_ACID } from './constants.js';
import { type WaterPath, walkAlong } from './path.js';
import type { Stretch } from './run-law.js';
import { stepsOf } from './steps.js';

/** What acid there is, and when it joins. */
export type AcidOptions = {
  /** Acid on top of what the mixture holds, g of each, dry and without crystal water. */
  readonly acids?: AcidMasses | undefined;
  /** When that acid joins, in the time of the path, s; at its start by default. */
  readonly acidsFromS?: number | undefined;
  /** Alkalinity of the tap water, mmol/L, 0 to 50; none by default. */
  readonly alkalinityMmolPerL?: number | undefined;
  /** Tap water that went in, g; all the water of the mixture by default. */
  readonly tapWaterG?: number | undefined;
};

/**
 * The path in one part, or in two where acid joins on the way.
 *
 * @throws ModelRangeError if the acid joins before the path begins or after it ends.
 */
export function stretchesOf(
  of: Mixture,
  path: WaterPath,
  options: AcidOptions,
): readonly Stretch[] {
  const [{ timeS: fromS }] = path;
  const toS = (path[path.length - 1] ?? path[0]).timeS;
  const { acids = {}, acidsFromS = fromS } = options;
  requireWithin('acidsFromS', acidsFromS, [fromS, toS]);
  const early = acidsOfMixture(of);
  const all = [...early, ...acidsByName(acids)];
  const system = (weighed: readonly WeighedAcid[]): AcidSystem | undefined => {
    const ready = systemInWater(weighed, of.waterG, options);
    return ready.anions.length > 0 || ready.tartrate.mol > 0 ? ready : undefined;
  };
  const dissolvedG = totalG(of.solids);
  const stretch = (
    span: readonly [number, number],
    count: number,
    weighed: readonly WeighedAcid[],
  ): Stretch => ({
    fromWaterG: walkAlong(path)(span[0]).waterG,
    steps: stepsOf(path, dissolvedG, span, count),
    system: system(weighed),
  });
  const rest = stretch([acidsFromS, toS], INVERSION_STEPS, all);
  if (acidsFromS === fromS) return [rest];
  return [stretch([fromS, acidsFromS], STEPS_BEFORE_LATE_ACID, early), rest];
}

/** The mixture with its late acid. */
export function withAcids(of: Mixture, acids: AcidMasses | undefined): Mixture {
  const solids = acidsByName(acids ?? {}).map(
    ({ species, massG }) => ({ kind: 'pure', species, massG }) as const,
  );
  return solids.length === 0 ? of : { ...of, solids: [...of.solids, ...solids] };
}
