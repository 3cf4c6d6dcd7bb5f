import { boilingPoint, DISSOLVED_TESTED, drySolidsAtBoil, type Mixture } from 'vitrose';
import { SUCROSE_SYRUP, withDissolved } from '../ladder/mixture-at.js';
import { pressureOf } from '../ladder/read-kitchen.js';
import type { BoilingCurveState } from './state.js';

/** One boil. */
export type CurvePoint = {
  /** In 100 g of everything in the pan. */
  readonly waterG: number;
  readonly boilsAtC: number;
  readonly lowC: number;
  readonly highC: number;
};

/** Where the batch is stopped. */
export type Mark = {
  readonly temperatureC: number;
  readonly waterG: number;
  readonly dissolvedMassFraction: number;
};

const WETTEST = 0.7;
/** Drier than any stage with a name. */
const DRIEST = 0.99;
const STEPS = 36;

/** The boil from syrup to nearly dry, close together where it climbs; as far as the batch, if that is drier. */
export function boilingCurve(
  state: BoilingCurveState,
  mark: Mark | undefined,
): readonly CurvePoint[] {
  const driest = Math.max(DRIEST, Math.min(DISSOLVED_TESTED[1], mark?.dissolvedMassFraction ?? 0));
  const ratio = (1 - driest) / (1 - WETTEST);
  return Array.from({ length: STEPS + 1 }, (_, at) =>
    pointAt(state, 1 - (1 - WETTEST) * ratio ** (at / STEPS)),
  );
}

/** The boil of a syrup with so much of it dissolved, 0 to 1. */
export function pointAt(state: BoilingCurveState, dissolvedMassFraction: number): CurvePoint {
  const mixture = withDissolved(boiled(state), dissolvedMassFraction);
  const { boilingPointC, band } = boilingPoint(mixture, { pressurePa: pressureOf(state) });
  return {
    waterG: 100 * (1 - mixture.drySolidsMassFraction),
    boilsAtC: boilingPointC,
    lowC: band[0],
    highC: band[1],
  };
}

/** The batch on the curve; none where its temperature tells no solids. */
export function markOf(state: BoilingCurveState): Mark | undefined {
  const { markC } = state;
  if (markC === undefined) return undefined;
  const boil = drySolidsAtBoil(boiled(state), {
    temperatureC: markC,
    pressurePa: pressureOf(state),
  });
  if ('kind' in boil) return undefined;
  return {
    temperatureC: markC,
    waterG: 100 * (1 - boil.drySolidsMassFraction),
    dissolvedMassFraction: boil.dissolvedMassFraction,
  };
}

function boiled({ mixture = SUCROSE_SYRUP }: BoilingCurveState): Mixture {
  return mixture;
}
