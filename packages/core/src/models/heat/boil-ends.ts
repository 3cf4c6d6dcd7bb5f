import { requireWithin } from '../../foundation/validity/check.js';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { boilingPointAt } from '../boiling/boiling-point.js';
import { DISSOLVED_DOMAIN } from '../boiling/constants.js';
import { dissolvedAtBoil } from '../boiling/dry-solids-at-boil.js';
import type { BoilDownTarget, NoBoilDown } from './boil-down-types.js';
import type { Knot } from './boil-knots.js';
import { type BoilingMass, dissolvedWith, waterAtDissolved } from './boiling-mass.js';

/** The first boil of a mixture and the end of its boil, or why there is none. */
export function endsOf(
  { waterG }: Mixture,
  mass: BoilingMass,
  target: BoilDownTarget,
): { readonly firstBoil: Knot; readonly end: Knot } | NoBoilDown['reason'] {
  const { targetC, drySolids } = oneTarget(target);
  const endWaterG =
    targetC === undefined ? waterAtSolids(mass, drySolids) : waterAtBoil(mass, targetC);
  if (typeof endWaterG === 'string') return endWaterG;
  if (endWaterG >= waterG) return 'already-past';
  const boilC = (leftG: number): number =>
    boilingPointAt(dissolvedWith(mass, leftG), mass.solute, mass.pressurePa).boilingPointC;
  return {
    firstBoil: { temperatureC: boilC(waterG), waterG },
    end: { temperatureC: targetC ?? boilC(endWaterG), waterG: endWaterG },
  };
}

function oneTarget(target: BoilDownTarget): {
  readonly targetC: number | undefined;
  readonly drySolids: number;
} {
  const targetC = 'targetC' in target ? target.targetC : undefined;
  const drySolids =
    'targetDrySolidsMassFraction' in target ? target.targetDrySolidsMassFraction : undefined;
  if ((targetC === undefined) === (drySolids === undefined)) {
    throw new ModelRangeError(
      'Give the temperature to boil to or the dry solids, one of the two.',
      {
        code: 'not-allowed-together',
        parameter: 'targetC',
        received: targetC,
      },
    );
  }
  return { targetC, drySolids: drySolids ?? Number.NaN };
}

/** Water left when the mass boils at a temperature, g. */
function waterAtBoil(mass: BoilingMass, targetC: number): number | NoBoilDown['reason'] {
  const dissolved = dissolvedAtBoil(mass.solute, targetC, mass.pressurePa);
  if (dissolved === 'below-the-boil') return 'already-past';
  if (dissolved === 'off-scale-dry') return 'never-reaches';
  return dissolved === 'nothing-dissolved' ? dissolved : waterAtDissolved(mass, dissolved);
}

/** Water left at so much dry solids, g; the last trace never leaves. */
function waterAtSolids(mass: BoilingMass, drySolids: number): number | NoBoilDown['reason'] {
  requireWithin('targetDrySolidsMassFraction', drySolids, [0, 1]);
  if (mass.solute.massG === 0) return 'nothing-dissolved';
  const waterG = mass.dryG * (1 / drySolids - 1);
  return dissolvedWith(mass, waterG) > DISSOLVED_DOMAIN[1] ? 'never-reaches' : waterG;
}
