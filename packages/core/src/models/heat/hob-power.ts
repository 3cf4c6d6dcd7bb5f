import { around } from '../../foundation/results/band.js';
import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { unknownName } from '../../foundation/validity/model-range-error.js';
import { waterBoilingPoint } from '../../matter/water/boiling-point.js';
import {
  BOIL_DOWN_DOMAIN_PA,
  HOB_DOMAIN_W,
  HOB_EFFICIENCY,
  KETTLE_TEST_SPREAD,
  PAN_CONSTANTS,
  SPECIFIC_HEAT_CONSTANTS,
} from './constants.js';

/** A hob by what is written on it, or by how fast it boils water in this pan. */
export type HeatSource =
  | { readonly kind: 'gas' | 'resistance' | 'induction'; readonly powerW: number }
  | {
      readonly kind: 'timed';
      readonly waterG: number;
      readonly fromC: number;
      readonly boilsInMin: number;
    };

/** Where the hob and the pan stand. */
export type HobOptions = {
  /** Pressure at the pan, Pa; sea level if left out. */
  readonly pressurePa?: number | undefined;
  /** Mass of the empty steel pan, g; with it a kettle test counts what heated the pan too. */
  readonly panMassG?: number | undefined;
};

/** A pan from nothing to a factory kettle, g. */
export const PAN_MASS_DOMAIN_G: Span = [0, 1e6];
/** Shorter than six seconds is no test; longer than four hours is no hob. */
export const KETTLE_TEST_DOMAIN_MIN: Span = [0.1, 240];

/**
 * Power that goes into the pan.
 *
 * A kettle test in the pan itself, at the setting that will be used, knows better than the plate on
 * the hob: it is told in watts into the water, with what the open pan lost already taken off. A
 * small pan on a large flame gets less than is said here.
 *
 * @equation P = η·P_hob; timed: P = (m·c + m_pan·c_steel)·(Tb − T₀)/t
 * @param hob - `kind` and `powerW`, W, 0 to 1 000 000 (1 000 BTU/h are 293 W); or `timed` with
 *   `waterG`, g, `fromC`, °C, and `boilsInMin`, minutes from there to the boil, 0.1 to 240.
 * @param options - `pressurePa` at the pan, Pa, 1 000 to 1 000 000, which sets where water boils;
 *   `panMassG`, g, 0 to 1 000 000.
 * @returns `powerW` and `band`, W.
 * @throws {@link ModelRangeError} outside the domains, or for a hob of another kind.
 * @example
 * hobPower({ kind: 'timed', waterG: 500, fromC: 20, boilsInMin: 4 }).powerW // 697.6 W
 * @source hob-efficiency-2021, bubnik-1995
 */
export function hobPower(
  hob: HeatSource,
  { pressurePa = 101_325, panMassG = 0 }: HobOptions = {},
): Checked<{ powerW: number; band: Span }> {
  requireWithin('pressurePa', pressurePa, BOIL_DOWN_DOMAIN_PA);
  requireWithin('panMassG', panMassG, PAN_MASS_DOMAIN_G);
  if (hob.kind === 'timed') {
    const powerW = kettleTestW(hob, waterBoilingPoint(pressurePa).boilingPointC, panMassG);
    const plusMinusW = powerW * KETTLE_TEST_SPREAD.value;
    return { powerW, band: around(powerW, plusMinusW), warnings: [] };
  }
  if (!Object.hasOwn(HOB_EFFICIENCY, hob.kind)) {
    throw unknownName('kind', hob.kind, 'A hob is gas, resistance, induction or timed');
  }
  requireWithin('powerW', hob.powerW, HOB_DOMAIN_W);
  const { value, low, high } = HOB_EFFICIENCY[hob.kind];
  return {
    powerW: value * hob.powerW,
    band: [low * hob.powerW, high * hob.powerW],
    warnings: [],
  };
}

function kettleTestW(
  { waterG, fromC, boilsInMin }: Extract<HeatSource, { readonly kind: 'timed' }>,
  waterBoilsAtC: number,
  panMassG: number,
): number {
  requireWithin('waterG', waterG, [10, 1e6]);
  // A degree short of the boil there is hardly anything to time.
  requireWithin('fromC', fromC, [0, waterBoilsAtC - 1]);
  requireWithin('boilsInMin', boilsInMin, KETTLE_TEST_DOMAIN_MIN);
  const joulesPerK =
    waterG * SPECIFIC_HEAT_CONSTANTS.waterKJPerKgK + panMassG * PAN_CONSTANTS.steelKJPerKgK;
  return (joulesPerK * (waterBoilsAtC - fromC)) / (60 * boilsInMin);
}
