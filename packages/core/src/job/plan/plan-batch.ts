import { joinBands } from '../../foundation/results/band.js';
import type { Span } from '../../foundation/results/types.js';
import { totalG } from '../../matter/mixture/assemble.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { boilingPoint } from '../../models/boiling/index.js';
import { glassTransition } from '../../models/glass/index.js';
import { relativeSweetness } from '../../models/sweetness/index.js';
import { adviseOn } from '../advice/index.js';
import { checkNumbers } from '../batch/limits.js';
import { readPieces } from '../batch/pieces.js';
import type { Problem } from '../batch/problems.js';
import type { BatchDocument } from '../batch/types.js';
import { assume, leaveOut, newLedger, warn } from '../ledger.js';
import { planCautions } from './cautions.js';
import { planComposition, planLines } from './composition.js';
import { hardnessCurve } from './curve.js';
import { figure } from './figure.js';
import { type InputBands, inputBands, type Moved } from './input-bands.js';
import { planKeeping, readStore } from './keeping.js';
import { readKitchen } from './kitchen.js';
import { modelNotes, modelsNamed } from './model-notes.js';
import { finishedMixture, outcomeOf } from './outcome.js';
import { planPan } from './pan.js';
import { planPolyols } from './polyols.js';
import { planPour } from './pour.js';
import { refusals } from './refusals.js';
import { planSteps } from './steps.js';
import { causeMattersK, planTarget } from './target.js';
import type { PlanDocument } from './types.js';
import { weighBatch } from './weigh-batch.js';
import { goodWindow } from './window.js';
import { planYield } from './yield.js';

/** From this share of the dry solids on a mass is a polyol's, not a sugar's. */
const POLYOL_MASS_SHARE = 0.5;

/** What `planBatch` answers. */
export type PlanResult =
  | { readonly kind: 'plan'; readonly plan: PlanDocument }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

/**
 * Plans a batch: where to stop on this thermometer, what the pan then weighs, how many pieces it
 * makes, whether they keep, in which order to do it, and what may go wrong.
 *
 * The plan holds no clock: the same batch gives the same plan. Every default it took is listed in
 * `defaults`. Late water is counted as kept, the wet bound; its band reaches down to none kept.
 *
 * @param batch - What the cook has and wants, as `readBatch` of `vitrose/documents` returns it.
 * @returns the plan, or every problem that stands in the way, each with its path.
 * @example
 * const result = planBatch({
 *   format: 'vitrose.batch/1',
 *   formula: [
 *     { ingredient: 'sucrose', massG: 240 },
 *     { ingredient: 'glucose-syrup', massG: 200 },
 *     { ingredient: 'water', massG: 80 },
 *   ],
 *   cook: { toSeaLevelC: 148 },
 *   kitchen: { elevationM: 1500 },
 * });
 * result.kind === 'plan' && Math.round(result.plan.target.readingC.value) // 142
 */
export function planBatch(batch: BatchDocument): PlanResult {
  const ledger = newLedger();
  ledger.problems.push(...checkNumbers(batch));
  if (ledger.problems.length > 0) return refused(ledger.problems);
  const kitchen = readKitchen(batch, ledger);
  const wanted = readPieces(batch, ledger);
  const store = readStore(batch, ledger);
  const weighed = weighBatch(batch, kitchen, wanted, ledger);
  if (kitchen === undefined || weighed === undefined || ledger.problems.length > 0)
    return refused(ledger.problems);
  const { lines, pots, stop } = weighed;
  const pressurePa = kitchen.pressureInPanPa;
  const finished = finishedMixture(pots, stop.baseDrySolids);
  const firstBoil = boilingPoint(pots.charge, { pressurePa });
  const polyolShare = planPolyols(finished, undefined)?.massFraction ?? 0;
  const isPolyolMass = polyolShare > POLYOL_MASS_SHARE;
  const curve =
    isPolyolMass || stop.asked === 'glass-transition'
      ? hardnessCurve(pots.base, pots.late, pressurePa)
      : undefined;
  ledger.problems.push(
    ...refusals({ batch, pots, stop, curve, firstBoilC: firstBoil.boilingPointC, store, lines }),
  );
  if (ledger.problems.length > 0) return refused(ledger.problems);

  const outcome: Moved = {
    ...outcomeOf(pots, stop.baseDrySolids),
    hereC: stop.hereC,
    seaLevelC: stop.seaLevelC,
    baseMoisture: 1 - stop.baseDrySolids,
  };
  const inputs = inputBands(lines, stop, { cook: batch.cook, pressurePa }, outcome);
  const glass = glassTransition(finished);
  const sweet = relativeSweetness(finished);
  warn(ledger, [...glass.warnings, ...sweet.warnings, ...firstBoil.warnings]);
  const window = goodWindow({
    base: pots.base,
    late: pots.late,
    cook: batch.cook,
    stop,
    pressurePa,
    storeC: store.storeC,
    sugar: holdsSucrose(finished),
  });
  const target = planTarget({ batch, kitchen, pots, stop, window, curve, inputs }, ledger);
  const causeK = causeMattersK(batch, stop);
  const lateWaterG = pots.late?.waterG ?? 0;
  const risePoints = (100 * lateWaterG) / outcome.finishedG;
  const composition = planComposition({ outcome, inputs, stop, firstBoil, finished, lateWaterG });
  const pan = planPan(batch, outcome, inputs, composition.baseG, ledger);
  const yielded = planYield(
    batch,
    wanted,
    outcome.finishedG,
    finishedBand(composition, outcome, inputs),
    ledger,
  );
  const keeping = planKeeping(
    store,
    glass.glassTransitionC,
    joinBands(glass.glassTransitionC, glass.band, inputs.glassTransitionC),
  );
  const pour = planPour(
    {
      batch,
      glassTransitionC: glass.glassTransitionC,
      isPolyolMass,
      stopC: stop.hereC,
      lateKinds: lines
        .filter(({ late, massG }) => late && massG > 0)
        .map(({ record }) => record.kind),
    },
    ledger,
  );
  const polyols = planPolyols(finished, yielded.pieceG?.value);
  noteUnused(batch, ledger);
  const advice = adviseOn({
    batch,
    lines,
    pots,
    finished,
    kitchen,
    stop,
    curve,
    outcome,
    target,
    pan,
    yield: yielded,
    keeping,
    pour,
    firstBoilC: firstBoil.boilingPointC,
    lateWaterG,
    causeMattersK: causeK,
    isPolyolMass,
  });
  const acidG = totalG(lines.filter(({ record }) => record.kind === 'acid'));
  const cautions = planCautions({
    lines,
    finished,
    stopC: stop.hereC,
    underVacuum: batch.cook.underVacuumPa !== undefined && batch.cook.underVacuumPa > 0,
    polyolShare,
    acidShare: acidG / outcome.finishedG,
    childShare: polyols?.childShare?.value,
  });
  const steps = planSteps({
    lines,
    pour,
    firstBoilC: firstBoil.boilingPointC,
    stopReadingC: target.readingC.value,
    weighsAtStopG: pan.weighsAtStopG.value,
    grossAtStopG: pan.grossAtStopG?.value,
    glassTransitionC: glass.glassTransitionC,
    storeC: store.storeC,
    roomC: batch.room?.temperatureC ?? store.storeC,
    onSlab: batch.mould?.kind === 'slab',
    cautions: new Set(cautions.map(({ id }) => id)),
  });
  const numbers = {
    kitchen: { ...kitchen.planned, causeMattersK: causeK },
    target,
    formula: planLines(lines),
    composition,
    pan,
    yield: yielded,
    lateWater: {
      massG: lateWaterG,
      moistureRisePoints: figure(risePoints, [0, risePoints], 'mass-balance'),
    },
    keeping,
    pour,
    taste: {
      relativeSweetness: figure(sweet.relativeSweetness, sweet.band, 'sweetness'),
      leavesOut: sweet.warnings.flatMap(({ code, subject }) =>
        code === 'species-not-modelled' && subject !== undefined ? [subject] : [],
      ),
    },
    polyols,
  };
  return {
    kind: 'plan',
    plan: {
      format: 'vitrose.plan/1',
      name: batch.name,
      ...numbers,
      steps,
      cautions,
      advice,
      warnings: ledger.warnings,
      defaults: ledger.defaults,
      models: modelNotes(modelsNamed(numbers)),
    },
  };
}

function refused(problems: readonly Problem[]): PlanResult {
  return { kind: 'refused', problems };
}

/** The finished mass is off by what its inputs and the water of its base are off by. */
function finishedBand(
  { baseG }: PlanDocument['composition'],
  { finishedG }: Moved,
  inputs: InputBands,
): Span {
  const carried: Span = [
    finishedG + baseG.band[0] - baseG.value,
    finishedG + baseG.band[1] - baseG.value,
  ];
  return joinBands(finishedG, inputs.finishedG, carried);
}

function holdsSucrose({ solids }: Mixture): boolean {
  return solids.some((solid) => solid.kind === 'pure' && solid.species === 'sucrose');
}

/** Fields this plan has no use for yet are listed all the same: their absence changes nothing. */
function noteUnused(batch: BatchDocument, ledger: ReturnType<typeof newLedger>): void {
  leaveOut(ledger, '/hob', batch.hob);
  leaveOut(ledger, '/thermometer/maxC', batch.thermometer?.maxC);
  leaveOut(ledger, '/thermometer/readsInS', batch.thermometer?.readsInS);
  leaveOut(ledger, '/thermometer/iceWaterReadingC', batch.thermometer?.iceWaterReadingC);
  if (batch.thermometer?.kind === undefined) assume(ledger, '/thermometer/kind', 'probe');
  if (batch.wrap === undefined) assume(ledger, '/wrap', 'none');
  else if (typeof batch.wrap === 'object')
    leaveOut(ledger, '/wrap/sealFactor', batch.wrap.sealFactor);
  if (batch.handling?.stirredAfterBoil === undefined)
    assume(ledger, '/handling/stirredAfterBoil', false, 'practice');
  leaveOut(ledger, '/water/alkalinityMmolPerL', batch.water?.alkalinityMmolPerL);
}
