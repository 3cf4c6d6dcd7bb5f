import { isNone } from '../../../foundation/results/is-none.js';
import type { Span } from '../../../foundation/results/types.js';
import type { Mixture } from '../../../matter/mixture/types.js';
import {
  type BoilDown,
  boilDown,
  hobPower,
  KETTLE_TEST_DOMAIN_MIN,
  powerForRate,
} from '../../../models/heat/index.js';
import { RISE_DOMAIN_K_PER_MIN, thermometerLag } from '../../../models/thermometer/index.js';
import type { BatchDocument, Hob } from '../../batch/types.js';
import { assume, type Ledger, warn } from '../../ledger.js';
import { figure } from '../figure.js';
import type { Kitchen } from '../kitchen.js';
import { TURN_DOWN_BEFORE_K } from '../steps.js';
import type { Stop } from '../stop.js';
import { withDrySolids } from '../stop.js';
import type { Figure } from '../types.js';

/** A hob nobody described: it boils half a litre in four minutes, others in two to eight. */
export const USUAL_HOB = {
  waterG: { value: 500, source: 'assumption', grade: 'assumed' },
  fromC: { value: 20, source: 'assumption', grade: 'assumed' },
  boilsInMin: { value: 4, low: 2, high: 8, source: 'assumption', grade: 'assumed' },
} as const;

/** A charge of this size stands on that hob; a larger one on a hob as much stronger: assumed. */
export const USUAL_CHARGE_G = { value: 1_000, source: 'assumption', grade: 'assumed' } as const;

/** A boil of more than a day is none. */
const LONGEST_MIN = 1_440;
/** A crumb boils dry before anybody looks. */
const LEAST_CHARGE_G = 1;

/** How fast the end of a boil may climb and still be caught, K per minute. */
export const CATCHABLE = {
  fastestKPerMin: { value: 5, source: 'common-practice', grade: 'practice' },
  slowestKPerMin: { value: 2, source: 'assumption', grade: 'assumed' },
  lagK: { value: 1, source: 'assumption', grade: 'assumed' },
  worthTurningShare: { value: 0.8, source: 'assumption', grade: 'assumed' },
} as const;

/** The boil of a batch on its hob. */
export type Boil = {
  readonly hob: Hob;
  readonly isAssumed: boolean;
  readonly powerIntoPanW: Figure;
  /** At this flame throughout. */
  readonly down: BoilDown;
  /** Share of the flame at the end, and how it climbs then. */
  readonly turnDown: {
    readonly share: number;
    readonly fromC: number;
    readonly rateKPerMin: number;
  };
  /** From cold to the stop with the flame turned down at the end. */
  readonly path: BoilDown['path'];
};

/** What a boil is asked with. */
export type BoilQuestion = {
  readonly batch: BatchDocument;
  readonly base: Mixture;
  readonly stop: Stop;
  readonly kitchen: Kitchen;
};

/** The boil against the clock; nothing where this hob never gets there. */
export function boilOn(question: BoilQuestion, ledger: Ledger): Boil | undefined {
  const { batch, base, stop, kitchen } = question;
  const isAssumed = batch.hob === undefined;
  const hob: Hob = batch.hob ?? {
    kind: 'timed',
    waterG: USUAL_HOB.waterG.value,
    fromC: USUAL_HOB.fromC.value,
    boilsInMin: Math.max(
      KETTLE_TEST_DOMAIN_MIN[0],
      USUAL_HOB.boilsInMin.value * Math.min(1, USUAL_CHARGE_G.value / base.massG),
    ),
  };
  if (isAssumed) assume(ledger, '/hob', 'timed');
  if (base.massG < LEAST_CHARGE_G) return undefined;
  const pressurePa = kitchen.pressureInPanPa;
  const pan = { panMassG: batch.pan?.emptyMassG, panDiameterMm: batch.pan?.diameterMm };
  const asked = { hob, pressurePa, targetDrySolidsMassFraction: stop.baseDrySolids, ...pan };
  const down = boilDown(base, asked);
  if (isNone(down) || down.minutes > LONGEST_MIN) return undefined;
  warn(ledger, down.warnings);
  const power = hobPower(hob, { pressurePa: kitchen.pressurePa });
  const turnDown = turnedDown(question, hob, down);
  const slowed = turnDown.share === 1 ? down : boilDown(base, { ...asked, powerSteps: [turnDown] });
  return {
    hob,
    isAssumed,
    powerIntoPanW: figure(
      power.powerW,
      isAssumed ? onAnyHob(power.powerW, power.band, 'rate') : power.band,
      'heat',
    ),
    down,
    turnDown,
    path: forwards(isNone(slowed) ? down.path : slowed.path),
  };
}

/** A band of minutes, or of watts, once the hob itself is a guess. */
export function onAnyHob(value: number, [low, high]: Span, of: 'minutes' | 'rate'): Span {
  const { value: usual, low: quickest, high: slowest } = USUAL_HOB.boilsInMin;
  const [less, more] =
    of === 'minutes' ? [quickest / usual, slowest / usual] : [usual / slowest, usual / quickest];
  return [Math.min(low, value) * less, Math.max(high, value) * more];
}

/** Degrees a thermometer of this speed is behind a mass that climbs like this. */
export function lagOf(readsInS: number, rateKPerMin: number): number {
  return thermometerLag({ readsInS, riseKPerMin: Math.min(rateKPerMin, RISE_DOMAIN_K_PER_MIN[1]) })
    .behindK;
}

function turnedDown(
  { batch, base, stop, kitchen }: BoilQuestion,
  hob: Hob,
  { rateAtEndKPerMin }: BoilDown,
): Boil['turnDown'] {
  const { fastestKPerMin, slowestKPerMin, lagK, worthTurningShare } = CATCHABLE;
  const readsInS = batch.thermometer?.readsInS;
  const lagPerRate = readsInS === undefined ? 0 : lagOf(readsInS, 1);
  const readable = lagPerRate === 0 ? Number.POSITIVE_INFINITY : lagK.value / lagPerRate;
  const rateKPerMin = Math.max(slowestKPerMin.value, Math.min(fastestKPerMin.value, readable));
  const fromC = stop.hereC - TURN_DOWN_BEFORE_K.value;
  const whole = { share: 1, fromC, rateKPerMin: rateAtEndKPerMin };
  if (rateAtEndKPerMin <= rateKPerMin) return whole;
  const power = powerForRate(withDrySolids(base, stop.baseDrySolids), {
    temperatureC: stop.hereC,
    rateKPerMin,
    pressurePa: kitchen.pressureInPanPa,
    hob,
    panMassG: batch.pan?.emptyMassG,
    panDiameterMm: batch.pan?.diameterMm,
  });
  const share = isNone(power) ? undefined : power.shareOfFullPower;
  return share === undefined || share > worthTurningShare.value
    ? whole
    : { share, fromC, rateKPerMin };
}

/** Two points a rounding apart are one. */
function forwards(path: BoilDown['path']): BoilDown['path'] {
  return path.filter((point, index) => {
    const before = path[index - 1];
    return before === undefined || point.timeS > before.timeS;
  });
}
