import { joinBands } from '../../foundation/results/band.js';
import type { Span } from '../../foundation/results/types.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { glassTransition } from '../../models/glass/index.js';
import { relativeSweetness } from '../../models/sweetness/index.js';
import { type Ledger, warn } from '../ledger.js';
import { planComposition, planLines } from './composition.js';
import { figure } from './figure.js';
import { planKeeping } from './keeping.js';
import { planPan } from './pan.js';
import { planPolyols } from './polyols.js';
import { planPour } from './pour.js';
import type { Settled } from './settle.js';
import { causeMattersK, planTarget } from './target.js';
import type { PlanDocument } from './types.js';
import { goodWindow } from './window.js';
import { planYield } from './yield.js';

/** The part of a plan that is numbers. */
export type PlanNumbers = Pick<
  PlanDocument,
  | 'kitchen'
  | 'target'
  | 'formula'
  | 'composition'
  | 'pan'
  | 'yield'
  | 'lateWater'
  | 'keeping'
  | 'pour'
  | 'taste'
  | 'polyols'
>;

/** Every number of the plan of a settled batch. */
export function planNumbers(settled: Settled, ledger: Ledger): PlanNumbers {
  const {
    batch,
    kitchen,
    wanted,
    store,
    lines,
    pots,
    stop,
    finished,
    firstBoil,
    curve,
    outcome,
    inputs,
  } = settled;
  const glass = glassTransition(finished);
  const sweet = relativeSweetness(finished);
  warn(ledger, [...glass.warnings, ...sweet.warnings]);
  const window = goodWindow({
    base: pots.base,
    late: pots.late,
    cook: batch.cook,
    stop,
    pressurePa: kitchen.pressureInPanPa,
    storeC: store.storeC,
    kneeC: curve?.knee.hereC,
    sugar: holdsSucrose(finished),
  });
  const lateWaterG = pots.late?.waterG ?? 0;
  const risePoints = (100 * lateWaterG) / outcome.finishedG;
  const composition = planComposition({ outcome, inputs, stop, firstBoil, finished, lateWaterG });
  const yielded = planYield(
    batch,
    wanted,
    outcome.finishedG,
    finishedBand(composition, settled),
    ledger,
  );
  const glassBand = joinBands(glass.glassTransitionC, glass.band, inputs.glassTransitionC);
  const lateLines = lines.filter(({ late, massG }) => late && massG > 0);
  return {
    kitchen: { ...kitchen.planned, causeMattersK: causeMattersK(batch, stop) },
    target: planTarget({ batch, kitchen, pots, stop, window, curve, inputs }, ledger),
    formula: planLines(lines),
    composition,
    pan: planPan(batch, outcome, inputs, composition.baseG, ledger),
    yield: yielded,
    lateWater: {
      massG: lateWaterG,
      moistureRisePoints: figure(risePoints, [0, risePoints], 'mass-balance'),
    },
    keeping: planKeeping(store, glass.glassTransitionC, glassBand),
    pour: planPour(
      {
        batch,
        glassTransitionC: glass.glassTransitionC,
        isPolyolMass: settled.isPolyolMass,
        stopC: stop.hereC,
        lateKinds: lateLines.map(({ record }) => record.kind),
      },
      ledger,
    ),
    taste: {
      relativeSweetness: figure(sweet.relativeSweetness, sweet.band, 'sweetness'),
      leavesOut: sweet.warnings.flatMap(({ code, subject }) =>
        code === 'species-not-modelled' && subject !== undefined ? [subject] : [],
      ),
    },
    polyols: planPolyols(finished, yielded.pieceG?.value),
  };
}

/** The finished mass is off by what its inputs and the water of its base are off by. */
function finishedBand({ baseG }: PlanDocument['composition'], { outcome, inputs }: Settled): Span {
  const { finishedG } = outcome;
  const carried: Span = [
    finishedG + baseG.band[0] - baseG.value,
    finishedG + baseG.band[1] - baseG.value,
  ];
  return joinBands(finishedG, inputs.finishedG, carried);
}

function holdsSucrose({ solids }: Mixture): boolean {
  return solids.some((solid) => solid.kind === 'pure' && solid.species === 'sucrose');
}
