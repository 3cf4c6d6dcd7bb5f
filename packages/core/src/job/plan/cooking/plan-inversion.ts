import { isNone } from '../../../foundation/results/is-none.js';
import type { Span } from '../../../foundation/results/types.js';
import { acidity, bufferForPH, sourness } from '../../../matter/acids/index.js';
import type { Mixture } from '../../../matter/mixture/types.js';
import { glassTransition } from '../../../models/glass/index.js';
import { coolingTime, PIECE_MASS_DOMAIN_G } from '../../../models/heat/index.js';
import { type HeatPath, inversion, invertedMixture } from '../../../models/inversion/index.js';
import type { BatchDocument } from '../../batch/types.js';
import { figure } from '../figure.js';
import { finishedMixture, type Pots, type WeighedLine } from '../outcome.js';
import type { Stop } from '../stop.js';
import type { PlannedInversion, PlannedPour } from '../types.js';
import { type EarlyInversion, ownPH, waterOf, withoutHoneyAcid } from './invert.js';

/** Stirring in and pouring take about this long; then each piece cools on its own. */
export const ACID_TO_MOULD_MIN = {
  value: 2,
  source: 'common-practice',
  grade: 'practice',
} as const;

/** A piece nobody weighed, g: it decides only how fast it cools. */
export const USUAL_PIECE_G = { value: 6, source: 'assumption', grade: 'assumed' } as const;

/** How far the mould cools before nothing happens any more, °C. */
const QUIET_BELOW_C = 80;

/** What the inversion of a plan is told from. */
export type InversionQuestion = {
  readonly batch: BatchDocument;
  readonly lines: readonly WeighedLine[];
  /** The pots as weighed. */
  readonly weighed: Pots;
  /** The sweet as it leaves the pan, early inversion in it. */
  readonly finished: Mixture;
  readonly stop: Stop;
  readonly early: EarlyInversion;
  readonly pour: PlannedPour;
  readonly pieceG: number | undefined;
  readonly roomC: number;
};

/** What acid and heat do to the sucrose, early and late, and what it costs. */
export function planInversion(question: InversionQuestion): PlannedInversion {
  const { batch, lines, weighed, finished, stop, early, pour } = question;
  const water = waterOf(batch, lines);
  const syrupPH = ownPH(lines);
  const atBoil = acidity(withoutHoneyAcid(weighed.base, lines), { ...water, syrupPH });
  const asWeighed = finishedMixture(weighed, stop.baseDrySolids);
  const glassC = (mixed: Mixture) => glassTransition(mixed).glassTransitionC;
  const lateAcid = lines.some(
    ({ record, late, massG }) => record.kind === 'acid' && late && massG > 0,
  );
  const path = lateAcid
    ? fromAcidToMould(question, (pour.acidBetweenC[0] + pour.acidBetweenC[1]) / 2)
    : undefined;
  const late = path === undefined ? undefined : inversion(finished, { path, syrupPH });
  const lateFraction = late === undefined || isNone(late) ? 0 : late.invertedFraction;
  const lateBand: Span = late === undefined || isNone(late) ? [0, 0] : late.band;
  const wetAgain = invertedMixture(finished, {
    invertedFraction: lateFraction,
    takesWaterBack: true,
  });
  const sour = sourness(finished);
  const finishedPH = acidity(finished, { syrupPH });
  return {
    pH: figure(atBoil.pH, atBoil.band, 'inversion'),
    earlyFraction: figure(early.fraction, early.band, 'inversion'),
    lateFraction: figure(lateFraction, lateBand, 'inversion'),
    earlyCostsK: early.byAcid === 0 ? 0 : glassC(asWeighed) - glassC(finished),
    lateCostsK: isNone(wetAgain) || lateFraction === 0 ? 0 : glassC(finished) - glassC(wetAgain),
    limitedByWater:
      early.limitedByWater || (late !== undefined && !isNone(late) && late.limitedByWater),
    sournessMassFraction:
      sour.citricEquivalentG === 0
        ? undefined
        : figure(
            sour.citricEquivalentG / finished.massG,
            [sour.band[0] / finished.massG, sour.band[1] / finished.massG],
            'sourness',
          ),
    finishedPH: lateAcid ? figure(finishedPH.pH, finishedPH.band, 'inversion') : undefined,
    buffer: path === undefined ? undefined : buffered(finished, path, syrupPH),
  };
}

/** Held a moment while it is stirred and poured, then cooling in the mould piece by piece. */
function fromAcidToMould({ finished, pieceG, roomC }: InversionQuestion, acidC: number): HeatPath {
  const { drySolidsMassFraction } = finished;
  const heldS = ACID_TO_MOULD_MIN.value * 60;
  const cooling = coolingTime({
    massG: Math.max(PIECE_MASS_DOMAIN_G[0], pieceG ?? USUAL_PIECE_G.value),
    fromC: acidC,
    toC: Math.max(QUIET_BELOW_C, roomC + 5),
    airC: roomC,
  });
  const point = (timeS: number, temperatureC: number) => ({
    timeS,
    temperatureC,
    drySolidsMassFraction,
  });
  const held = [point(0, acidC), point(heldS, acidC)];
  if (isNone(cooling)) return held;
  const { timeConstantS, minutes } = cooling;
  const STEPS = 8;
  const falling = Array.from({ length: STEPS }, (_, index) => {
    const afterS = ((index + 1) / STEPS) * minutes * 60;
    return point(heldS + afterS, roomC + (acidC - roomC) * Math.exp(-afterS / timeConstantS));
  });
  return [...held, ...falling];
}

function buffered(
  finished: Mixture,
  path: HeatPath,
  syrupPH: number | undefined,
): PlannedInversion['buffer'] {
  const buffer = bufferForPH(finished);
  if (isNone(buffer)) return undefined;
  const calmer = inversion(finished, {
    path,
    syrupPH,
    acids: { 'sodium-citrate': buffer.sodiumCitrateG },
  });
  return isNone(calmer)
    ? undefined
    : {
        sodiumCitrateG: buffer.dihydrateG,
        lateFraction: calmer.invertedFraction,
        band: calmer.band,
      };
}
