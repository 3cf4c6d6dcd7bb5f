import { requireWithin } from '../../foundation/validity/check.js';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { INVERSION_DOMAIN_C, INVERSION_DOMAIN_S } from './constants.js';

/** A moment of a boil or of a rest. */
export type HeatPoint = {
  readonly timeS: number;
  readonly temperatureC: number;
  /** Of the recipe, inversion left out of account, 0–1. */
  readonly drySolidsMassFraction: number;
};

/** A boil or a rest, its points in order. */
export type HeatPath = readonly HeatPoint[];

/** Where the mass goes: along a path of its own, or held for a while as it is. */
export type Heating =
  | { readonly path: HeatPath }
  | { readonly temperatureC: number; readonly minutes: number };

/** A path in grams of water beside the solids of the mixture. */
export type WaterPath = readonly [WaterPoint, ...WaterPoint[]];

type WaterPoint = {
  readonly timeS: number;
  readonly temperatureC: number;
  readonly waterG: number;
};

/** @throws ModelRangeError if the path runs backwards, is empty, or holds what cannot be meant. */
export function waterPath(mixture: Mixture, heating: Heating): WaterPath {
  if ('path' in heating) return followed(mixture, heating.path);
  const { temperatureC, minutes } = heating;
  requireWithin('temperatureC', temperatureC, INVERSION_DOMAIN_C);
  requireWithin('minutes', minutes, [0, INVERSION_DOMAIN_S[1] / 60]);
  const { waterG } = mixture;
  return [
    { timeS: 0, temperatureC, waterG },
    { timeS: 60 * minutes, temperatureC, waterG },
  ];
}

function followed(mixture: Mixture, path: HeatPath): WaterPath {
  const dryG = mixture.massG - mixture.waterG;
  let lastS = Number.NEGATIVE_INFINITY;
  const [first, ...rest] = path.map(({ timeS, temperatureC, drySolidsMassFraction: dry }) => {
    requireWithin('timeS', timeS, INVERSION_DOMAIN_S);
    requireWithin('temperatureC', temperatureC, INVERSION_DOMAIN_C);
    // Thinner than one part in ten thousand is water, and no recipe.
    requireWithin('drySolidsMassFraction', dry, [1e-4, 1]);
    if (timeS < lastS) throw badPath('runs back in time', timeS);
    lastS = timeS;
    return { timeS, temperatureC, waterG: (dryG * (1 - dry)) / dry };
  });
  if (first === undefined) throw badPath('holds no point', path.length);
  return [first, ...rest];
}

function badPath(what: string, received: number): ModelRangeError {
  return new ModelRangeError(`The path ${what}; received ${received}.`, {
    code: 'outside-range',
    parameter: 'path',
    received,
  });
}

/** Temperature and water between the points; asked with times that only rise. */
export function walkAlong(
  path: WaterPath,
): (timeS: number) => { readonly temperatureC: number; readonly waterG: number } {
  let index = 0;
  return (timeS) => {
    while (index < path.length - 2 && (path[index + 1] as WaterPoint).timeS < timeS) index += 1;
    const from = path[index] as WaterPoint;
    const to = path[index + 1] ?? from;
    const spanS = to.timeS - from.timeS;
    const along = spanS > 0 ? Math.min(1, Math.max(0, (timeS - from.timeS) / spanS)) : 1;
    return {
      temperatureC: from.temperatureC + along * (to.temperatureC - from.temperatureC),
      waterG: from.waterG + along * (to.waterG - from.waterG),
    };
  };
}
