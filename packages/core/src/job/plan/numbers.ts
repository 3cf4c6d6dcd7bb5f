import { joinBands } from '../../foundation/results/band.js';
import type { Span } from '../../foundation/results/types.js';
import { glassTransition } from '../../models/glass/index.js';
import { relativeSweetness } from '../../models/sweetness/index.js';
import { type Ledger, warn } from '../ledger.js';
import { planComposition, planLines } from './composition.js';
import { sucroseG } from './cooking/invert.js';
import { planCooking } from './cooking/plan-cooking.js';
import { planInversion } from './cooking/plan-inversion.js';
import { potLife } from './cooking/pot-life.js';
import { figure } from './figure.js';
import { planGraining } from './keeping/graining.js';
import { planWindows } from './keeping/windows.js';
import { planKeeping } from './keeping.js';
import { planLabel } from './label.js';
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
  | 'cooking'
  | 'inversion'
  | 'keeping'
  | 'graining'
  | 'windows'
  | 'pour'
  | 'taste'
  | 'polyols'
  | 'label'
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
    sugar: sucroseG(finished) > 0,
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
  const lateKinds = lines
    .filter(({ late, massG }) => late && massG > 0)
    .map(({ record }) => record.kind);
  const pieceG = yielded.pieceG?.value;
  const roomC = batch.room?.temperatureC ?? store.storeC;
  const poured = planPour(
    {
      batch,
      glassTransitionC: glass.glassTransitionC,
      isPolyolMass: settled.isPolyolMass,
      stopC: stop.hereC,
      lateKinds,
    },
    ledger,
  );
  const { boil, early } = settled;
  const cooling = { batch, pots, stop, roomC };
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
    cooking:
      boil === undefined
        ? undefined
        : planCooking({ ...cooling, kitchen, boil, pour: poured, lateKinds }),
    inversion:
      early === undefined
        ? undefined
        : planInversion({
            batch,
            lines,
            weighed: settled.asWeighed,
            finished,
            stop,
            early,
            pour: poured,
            pieceG,
            roomC,
          }),
    keeping: planKeeping(
      { batch, store, finished, pieceG, glassTransitionC: glass.glassTransitionC, band: glassBand },
      ledger,
    ),
    graining: planGraining({
      batch,
      finished,
      store,
      stopC: stop.hereC,
    }),
    windows: planWindows(finished),
    pour: { ...poured, ...potLife(poured, cooling) },
    taste: {
      relativeSweetness: figure(sweet.relativeSweetness, sweet.band, 'sweetness'),
      leavesOut: sweet.warnings.flatMap(({ code, subject }) =>
        code === 'species-not-modelled' && subject !== undefined ? [subject] : [],
      ),
    },
    polyols: planPolyols(finished, pieceG),
    label: planLabel(finished, pieceG, ledger),
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
