import { findRoot } from '../../foundation/numeric/find-root.js';
import { isNone } from '../../foundation/results/is-none.js';
import type { Span } from '../../foundation/results/types.js';
import { SEA_LEVEL_PRESSURE_PA } from '../../matter/air/index.js';
import { totalG } from '../../matter/mixture/assemble.js';
import { combine } from '../../matter/mixture/index.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { boilingPoint, drySolidsAtBoil } from '../../models/boiling/index.js';
import { glassTransition } from '../../models/glass/index.js';
import { stageTarget } from '../../models/stages/index.js';
import type { Cook } from '../batch/types.js';
import { type Ledger, refuse, warn } from '../ledger.js';
import { drySolidsG } from './without-ethanol.js';

/** The driest mass the boiling curve answers for, dissolved solids. */
const DRIEST = 0.9999;

/** Where the base stops: its solids, and the temperature there at sea level and here. */
export type Stop = {
  readonly asked: 'stage' | 'sea-level' | 'moisture' | 'glass-transition';
  /** Everything that is not water, of the base. */
  readonly baseDrySolids: number;
  readonly seaLevelC: number;
  readonly hereC: number;
  /** The model's own error on the temperature at these solids. */
  readonly boilingBandC: Span;
  /** The model's own error on the solids at this temperature. */
  readonly drySolidsBand: Span;
  /** How far this mixture at the stage's solids boils from sucrose. */
  readonly offSucroseK: number;
};

/** What a stop is found for. */
export type StopQuestion = {
  readonly base: Mixture;
  readonly late: Mixture | undefined;
  readonly cook: Cook;
  readonly pressurePa: number;
};

/** Finds the stop, or writes down why there is none. */
export function findStop(question: StopQuestion, ledger: Ledger): Stop | undefined {
  const { cook } = question;
  if ('toSeaLevelC' in cook)
    return atTemperature(question, cook.toSeaLevelC, '/cook/toSeaLevelC', ledger);
  if ('toStage' in cook) return atStage(question, cook, ledger);
  if ('toMoistureMassFraction' in cook) {
    return atMoisture(
      question,
      cook.toMoistureMassFraction,
      'moisture',
      '/cook/toMoistureMassFraction',
      ledger,
    );
  }
  return atGlassPoint(question, cook.toGlassTransitionC, ledger);
}

function atTemperature(
  question: StopQuestion,
  seaLevelC: number,
  path: string,
  ledger: Ledger,
): Stop | undefined {
  const { base, pressurePa } = question;
  const dry = drySolidsAtBoil(base, { temperatureC: seaLevelC });
  if (isNone(dry)) {
    const code =
      dry.reason === 'below-the-boil'
        ? 'below-first-boil'
        : dry.reason === 'off-scale-dry'
          ? 'off-scale-dry'
          : 'nothing-to-cook';
    return refuse(ledger, { code, path, received: seaLevelC });
  }
  warn(ledger, dry.warnings);
  const here = boilingPoint(withDrySolids(base, dry.drySolidsMassFraction), { pressurePa });
  warn(ledger, here.warnings);
  return {
    asked: 'sea-level',
    baseDrySolids: dry.drySolidsMassFraction,
    seaLevelC,
    hereC: here.boilingPointC,
    boilingBandC: here.band,
    drySolidsBand: dry.band,
    offSucroseK: 0,
  };
}

function atStage(
  question: StopQuestion,
  cook: Extract<Cook, { toStage: unknown }>,
  ledger: Ledger,
): Stop | undefined {
  const { stage, aim } = { stage: cook.toStage, aim: cook.aim ?? 'middle' };
  const wanted = stageTarget({ stage, aim });
  if (wanted.drySolidsMassFraction === null) {
    // Clear and brown are colours of a melt: no water is left for the pressure to act on.
    const melt = atTemperature(
      { ...question, pressurePa: SEA_LEVEL_PRESSURE_PA },
      wanted.seaLevelSucroseC,
      '/cook/toStage',
      ledger,
    );
    return melt === undefined ? undefined : { ...melt, asked: 'stage' };
  }
  const stop = atSolids(
    question,
    drySolidsFromDissolved(question.base, wanted.drySolidsMassFraction),
    'stage',
    ledger,
  );
  // The solids were read off the sucrose curve, so its error on them stands beside the moisture.
  const dry = drySolidsAtBoil(question.base, { temperatureC: stop.seaLevelC });
  return {
    ...stop,
    offSucroseK: stop.seaLevelC - wanted.seaLevelSucroseC,
    drySolidsBand: isNone(dry) ? stop.drySolidsBand : dry.band,
  };
}

/** Water in the finished sweet: the base is cooked drier by what comes late. */
function atMoisture(
  question: StopQuestion,
  moisture: number,
  asked: Stop['asked'],
  path: string,
  ledger: Ledger,
): Stop | undefined {
  const { base, late } = question;
  const lateG = late?.massG ?? 0;
  const solidsG = drySolidsG(base);
  const baseG = (solidsG - (late?.waterG ?? 0) + moisture * lateG) / (1 - moisture);
  const baseDrySolids = solidsG / baseG;
  if (!(baseDrySolids < 1) || baseG <= 0 || dissolvedFromDrySolids(base, baseDrySolids) > DRIEST) {
    return refuse(ledger, {
      code: late === undefined || late.waterG === 0 ? 'off-scale-dry' : 'late-water-exceeds-target',
      path,
      received: moisture,
      numbers: { lateWaterG: late?.waterG ?? 0, moistureMassFraction: moisture },
    });
  }
  return atSolids(question, baseDrySolids, asked, ledger);
}

function atGlassPoint(question: StopQuestion, wantedC: number, ledger: Ledger): Stop | undefined {
  const { base, late } = question;
  const whole = late === undefined ? base : combine([base, late]);
  const glassAt = (dry: number) => glassTransition(withDrySolids(whole, dry)).glassTransitionC;
  const hardestC = glassAt(1);
  if (hardestC <= wantedC) {
    return refuse(ledger, {
      code: 'glass-point-out-of-reach',
      path: '/cook/toGlassTransitionC',
      received: wantedC,
      numbers: { wantedC, hardestC },
    });
  }
  const softest = 0.3;
  if (glassAt(softest) >= wantedC) {
    return refuse(ledger, {
      code: 'already-drier',
      path: '/cook/toGlassTransitionC',
      received: wantedC,
    });
  }
  const dry = findRoot((x) => glassAt(x) - wantedC, [softest, 1]);
  return atMoisture(question, 1 - dry, 'glass-transition', '/cook/toGlassTransitionC', ledger);
}

/** The stop at these solids, whatever was asked. */
export function atSolids(
  { base, pressurePa }: StopQuestion,
  baseDrySolids: number,
  asked: Stop['asked'],
  ledger: Ledger,
): Stop {
  const stopped = withDrySolids(base, baseDrySolids);
  const here = boilingPoint(stopped, { pressurePa });
  const seaLevel = pressurePa === SEA_LEVEL_PRESSURE_PA ? here : boilingPoint(stopped);
  warn(ledger, here.warnings);
  return {
    asked,
    baseDrySolids,
    seaLevelC: seaLevel.boilingPointC,
    hereC: here.boilingPointC,
    boilingBandC: here.band,
    drySolidsBand: [baseDrySolids, baseDrySolids],
    offSucroseK: 0,
  };
}

/** The same solids in another amount of water. */
export function withDrySolids(mixed: Mixture, drySolids: number): Mixture {
  const waterG = drySolidsG(mixed) * (1 / drySolids - 1);
  return combine([{ ...mixed, waterG, massG: drySolidsG(mixed) + waterG }]);
}

/** Dry matter of the whole, from the solids of the solution alone. */
export function drySolidsFromDissolved(mixed: Mixture, dissolved: number): number {
  const solidsG = totalG(mixed.solids);
  const dryG = drySolidsG(mixed);
  return dryG / (dryG + solidsG * (1 / dissolved - 1));
}

/** Solids of the solution alone, from the dry matter of the whole. */
export function dissolvedFromDrySolids(mixed: Mixture, drySolids: number): number {
  const solidsG = totalG(mixed.solids);
  return solidsG / (solidsG + drySolidsG(mixed) * (1 / drySolids - 1));
}
