import { joinBands } from '../../foundation/results/band.js';
import type { Span } from '../../foundation/results/types.js';
import { SEA_LEVEL_PRESSURE_PA } from '../../matter/air/index.js';
import { waterBoilingPoint } from '../../matter/water/index.js';
import { COOK_TARGET_SHARE } from '../../models/boiling/index.js';
import { stagesApply, sugarStage } from '../../models/stages/index.js';
import type { Aim, BatchDocument } from '../batch/types.js';
import { type Ledger, take } from '../ledger.js';
import type { Curve } from './curve.js';
import { figure } from './figure.js';
import type { InputBands } from './input-bands.js';
import type { Kitchen } from './kitchen.js';
import type { Pots } from './outcome.js';
import { readingOf } from './reading.js';
import type { Stop } from './stop.js';
import type { PlannedTarget } from './types.js';
import { roundedInwards, type Window } from './window.js';

/** Everything the target of a plan is made from. */
export type TargetQuestion = {
  readonly batch: BatchDocument;
  readonly kitchen: Kitchen;
  readonly pots: Pots;
  readonly stop: Stop;
  readonly window: Window;
  readonly curve: Curve | undefined;
  readonly inputs: InputBands;
};

/** The target at sea level, here and on this thermometer, with its window and its trust. */
export function planTarget(question: TargetQuestion, ledger: Ledger): PlannedTarget {
  const { batch, kitchen, pots, stop, window, curve, inputs } = question;
  const read = readingOf(stop.hereC, kitchen);
  const shift = shiftFigure(stop);
  const seaLevelBand = joinBands(stop.seaLevelC, inputs.seaLevelC, modelBand(stop, stop.seaLevelC));
  const hereBand = joinBands(
    stop.hereC,
    inputs.hereC,
    modelBand(stop, stop.hereC),
    carry(stop.hereC, shift.band, shift.value),
    pressureBand(stop, kitchen, (hereC) => hereC),
  );
  const readingBand = joinBands(
    read.readingC,
    carry(read.readingC, inputs.hereC, stop.hereC),
    carry(read.readingC, modelBand(stop, stop.hereC), stop.hereC),
    carry(read.readingC, shift.band, shift.value),
    read.band,
    pressureBand(
      stop,
      kitchen,
      (hereC, waterBoilsAtC) => readingOf(hereC, { ...kitchen, waterBoilsAtC }).readingC,
    ),
  );
  const exact: Span = [
    readingOf(window.hereC[0], kitchen).readingC,
    readingOf(window.hereC[1], kitchen).readingC,
  ];
  const stageNamesApply = stagesApply(pots.base).apply;
  const { cook } = batch;
  return {
    asked: stop.asked,
    stage: 'toStage' in cook ? cook.toStage : undefined,
    aim:
      'toStage' in cook
        ? take<Aim>(ledger, '/cook/aim', cook.aim, { value: 'middle', grade: 'practice' })
        : undefined,
    seaLevelC: figure(
      stop.seaLevelC,
      seaLevelBand,
      stop.asked === 'sea-level' ? 'given' : stop.asked === 'stage' ? 'stages' : 'boiling',
    ),
    hereC: figure(stop.hereC, hereBand, 'same-solids'),
    readingC: figure(read.readingC, readingBand, 'thermometer'),
    windowReadingC: roundedInwards(exact, read.readingC),
    exactWindowReadingC: exact,
    windowEnds: window.ends,
    shiftK: shift,
    correction: read.correction,
    stageAtStop: stageNamesApply ? stageAt(pots, stop, kitchen) : undefined,
    stageNamesApply,
    curve: curve?.points.map((point) => ({
      ...point,
      readingC: readingOf(point.hereC, kitchen).readingC,
    })),
    kneeReadingC: curve === undefined ? undefined : readingOf(curve.knee.hereC, kitchen).readingC,
  };
}

/**
 * How far the stop would move if the reading in boiling water were all thermometer and no air: a
 * thermometer that is off by as much everywhere, or one whose scale is too short.
 */
export function causeMattersK(batch: BatchDocument, stop: Stop): number | undefined {
  const reading = batch.thermometer?.boilingWaterReadingC;
  if (reading === undefined || batch.kitchen !== undefined) return undefined;
  const { boilingPointC: seaLevelC } = waterBoilingPoint(SEA_LEVEL_PRESSURE_PA);
  const ice = batch.thermometer?.iceWaterReadingC ?? 0;
  const shifted = stop.seaLevelC + (reading - seaLevelC);
  const scaled = ice + (stop.seaLevelC * (reading - ice)) / seaLevelC;
  return Math.max(Math.abs(stop.hereC - shifted), Math.abs(stop.hereC - scaled));
}

function stageAt(pots: Pots, { hereC }: Stop, kitchen: Kitchen): PlannedTarget['stageAtStop'] {
  const { kind, id } = sugarStage({
    temperatureC: hereC,
    pressurePa: kitchen.pressureInPanPa,
    mixture: pots.base,
  });
  return { kind, id };
}

/** How far the pressure moves the stop; the temperature dependence behind it is known to a tenth. */
function shiftFigure({ hereC, seaLevelC }: Stop): PlannedTarget['shiftK'] {
  const shiftK = hereC - seaLevelC;
  const eitherWayK = Math.abs(shiftK) * COOK_TARGET_SHARE.value;
  return figure(shiftK, [shiftK - eitherWayK, shiftK + eitherWayK], 'same-solids');
}

/** A band about one value, carried to another. */
function carry(onto: number, band: Span, middle: number): Span {
  return [onto + band[0] - middle, onto + band[1] - middle];
}

/** A printed temperature is the trade's own number; a stage differs by the mix; the rest rests on the curve. */
function modelBand(stop: Stop, aboutC: number): Span {
  if (stop.asked === 'sea-level') return [aboutC, aboutC];
  if (stop.asked === 'stage')
    return [aboutC - Math.abs(stop.offSucroseK), aboutC + Math.abs(stop.offSucroseK)];
  return carry(aboutC, stop.boilingBandC, stop.hereC);
}

/** What the air's own band does: the stop goes with the boiling point of water in the pan, a little faster. */
function pressureBand(
  stop: Stop,
  kitchen: Kitchen,
  show: (hereC: number, waterBoilsAtC: number) => number,
): Span {
  const water = kitchen.planned.waterBoilsAtC;
  const inPan = kitchen.waterBoilsInPanAtC;
  const faster = ((stop.hereC + 273.15) / (inPan.value + 273.15)) ** 2;
  const at = (end: 0 | 1) =>
    show(stop.hereC + faster * (inPan.band[end] - inPan.value), water.band[end]);
  return [at(0), at(1)];
}
