import { isNone } from '../../../foundation/results/is-none.js';
import type { Span } from '../../../foundation/results/types.js';
import { THERMAL_LOAD_DOMAIN_C, thermalLoad } from '../../../models/browning/index.js';
import { carryOver, PAN_CONSTANTS } from '../../../models/heat/index.js';
import type { BatchDocument } from '../../batch/types.js';
import { figure } from '../figure.js';
import type { Kitchen } from '../kitchen.js';
import type { Pots } from '../outcome.js';
import { readingOf } from '../reading.js';
import type { Stop } from '../stop.js';
import { withDrySolids } from '../stop.js';
import type { PlannedCooking, PlannedPour } from '../types.js';
import { type Boil, lagOf, onAnyHob } from './boil.js';
import { withinHeat } from './invert.js';
import { momentsOf } from './moments.js';
import { isReducing } from './reducing.js';

/** What the cooking of a plan is told from. */
export type CookingQuestion = {
  readonly batch: BatchDocument;
  readonly kitchen: Kitchen;
  readonly boil: Boil;
  readonly pots: Pots;
  readonly stop: Stop;
  readonly pour: PlannedPour;
  readonly lateKinds: readonly string[];
  readonly roomC: number;
};

/** The boil against the clock: minutes, flame, lag, and the moments of the hand. */
export function planCooking(question: CookingQuestion): PlannedCooking {
  const { batch, kitchen, boil, pots, stop } = question;
  const { down, turnDown, isAssumed, path } = boil;
  const readsInS = batch.thermometer?.readsInS;
  const minutes = (value: number, share: Span) => {
    const band: Span = [value * share[0], value * share[1]];
    return figure(value, isAssumed ? onAnyHob(value, band, 'minutes') : band, 'heat');
  };
  // The first boil is as uncertain, minute for minute, as the whole.
  const share: Span = [down.band[0] / down.minutes, down.band[1] / down.minutes];
  const rate = down.rateAtEndKPerMin;
  const rateBand: Span = [rate / share[1], rate / share[0]];
  const panMassG = batch.pan?.emptyMassG;
  const after =
    panMassG === undefined
      ? undefined
      : carryOver(withDrySolids(pots.base, stop.baseDrySolids), {
          temperatureC: stop.hereC,
          panMassG,
          pressurePa: kitchen.pressureInPanPa,
          // The base runs hotter than the mass in step with the flame.
          baseHotterK: PAN_CONSTANTS.baseHotterK * turnDown.share,
        });
  const load = thermalLoad(withinHeat(path, THERMAL_LOAD_DOMAIN_C[1]), {
    reducing: isReducing(pots.base),
  });
  return {
    hob: boil.hob.kind,
    hobIsAssumed: isAssumed,
    powerIntoPanW: boil.powerIntoPanW,
    firstBoilMin: minutes(down.firstBoilS / 60, share),
    toStopMin: minutes((path[path.length - 1]?.timeS ?? 0) / 60, share),
    rateAtStopKPerMin: figure(
      rate,
      isAssumed ? onAnyHob(rate, rateBand, 'rate') : rateBand,
      'heat',
    ),
    turnDownToFraction: turnDown.share,
    lagK:
      readsInS === undefined
        ? undefined
        : figure(
            lagOf(readsInS, rate),
            [lagOf(readsInS, rateBand[0]), lagOf(readsInS, rateBand[1])],
            'thermometer',
          ),
    lagTurnedDownK: readsInS === undefined ? undefined : lagOf(readsInS, turnDown.rateKPerMin),
    carryOverK:
      after === undefined || isNone(after)
        ? undefined
        : figure(after.carryOverK, after.band, 'heat'),
    moments: momentsOf(question, (value) => minutes(value, share)),
    path: path.map(({ timeS, temperatureC, drySolidsMassFraction }) => ({
      minutes: timeS / 60,
      hereC: temperatureC,
      readingC: readingOf(temperatureC, kitchen).readingC,
      drySolidsMassFraction,
    })),
    thermalLoadMin: figure(load.minutesAt150C, load.band, 'browning'),
  };
}
