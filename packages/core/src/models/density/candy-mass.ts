import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { CitedRange } from '../../foundation/validity/constants.js';
import { unknownName } from '../../foundation/validity/model-range-error.js';

/** How a mass stands: poured hot, or cooled to a piece. */
export type CandyState = 'hot' | 'cooled';
/** What the mass is. */
export type CandyKind = 'clear' | 'isomalt' | 'pulled' | 'fondant';

const source = 'common-practice';
const grade = 'practice';

/**
 * Estimates, g/mL. No measured value for candy glass was found: hot masses at 130 to 150 °C, the
 * others at 20 °C. Pulled sugar is as light as the air in it.
 */
export const CANDY_DENSITY = {
  hot: {
    clear: { value: 1.45, low: 1.42, high: 1.48, source, grade },
  },
  cooled: {
    clear: { value: 1.5, low: 1.45, high: 1.55, source, grade },
    isomalt: { value: 1.5, low: 1.48, high: 1.52, source, grade },
    pulled: { value: 1.25, low: 1.1, high: 1.4, source, grade },
    fondant: { value: 1.4, low: 1.36, high: 1.43, source, grade },
  },
} as const satisfies Readonly<Record<CandyState, Readonly<Partial<Record<CandyKind, CitedRange>>>>>;

/** A density of a candy mass: an estimate with its spread. */
export type CandyDensity = { readonly densityGPerMl: number; readonly band: Span };

/**
 * Density of a cooked mass, hot in the pan or cooled to a piece. An estimate.
 *
 * Weigh a filled cavity once and use that instead: the kitchen that did knows better. A hot mass of
 * any kind counts as clear: it is pulled or beaten later.
 *
 * @param input - `state`: hot or cooled; `kind` of a cooled mass: clear by default, isomalt,
 *   pulled, fondant.
 * @returns `densityGPerMl` and `band`, g/mL.
 * @throws {@link ModelRangeError} for a state or a kind there is no estimate of.
 * @example
 * candyMassDensity({ state: 'hot' }).densityGPerMl // 1.45 g/mL
 * @source common-practice
 */
export function candyMassDensity({
  state,
  kind = 'clear',
}: {
  readonly state: CandyState;
  readonly kind?: CandyKind | undefined;
}): CandyDensity {
  requireKnown('state', state, CANDY_DENSITY);
  requireKnown('kind', kind, CANDY_DENSITY.cooled);
  const { value, low, high } =
    state === 'hot' ? CANDY_DENSITY.hot.clear : CANDY_DENSITY.cooled[kind];
  return { densityGPerMl: value, band: [low, high] };
}

/** From one drop to a bath of it. */
export const CAVITY_DOMAIN_ML: Span = [0, 100_000];

/**
 * What a cavity filled level with hot mass weighs. An estimate.
 *
 * The mass shrinks by about three parts in a hundred as it cools and leaves a hollow; its weight
 * stays. Topping up or heaping is not counted.
 *
 * @equation m = V · ρ_hot
 * @param input - `cavityMl`, mL, 0 to 100 000.
 * @returns `massG` and `band`, g.
 * @throws {@link ModelRangeError} outside the domain.
 * @example
 * pieceMassFromCavity({ cavityMl: 4 }).massG // 5.8 g
 * @source common-practice
 */
export function pieceMassFromCavity({ cavityMl }: { readonly cavityMl: number }): {
  readonly massG: number;
  readonly band: Span;
} {
  requireWithin('cavityMl', cavityMl, CAVITY_DOMAIN_ML);
  const { densityGPerMl, band } = candyMassDensity({ state: 'hot' });
  return { massG: cavityMl * densityGPerMl, band: [cavityMl * band[0], cavityMl * band[1]] };
}

/**
 * Which cavity makes a piece of a wanted mass, filled level with hot mass. An estimate.
 *
 * @equation V = m / ρ_hot
 * @param input - `massG`, g, 0 to 100 000.
 * @returns `cavityMl` and `band`, mL.
 * @throws {@link ModelRangeError} outside the domain.
 * @example
 * cavityFromPieceMass({ massG: 5.8 }).cavityMl // 4 mL
 * @source common-practice
 */
export function cavityFromPieceMass({ massG }: { readonly massG: number }): {
  readonly cavityMl: number;
  readonly band: Span;
} {
  requireWithin('massG', massG, CAVITY_DOMAIN_ML);
  const { densityGPerMl, band } = candyMassDensity({ state: 'hot' });
  return { cavityMl: massG / densityGPerMl, band: [massG / band[1], massG / band[0]] };
}

function requireKnown(parameter: string, received: string, known: object): void {
  if (Object.hasOwn(known, received)) return;
  throw unknownName(parameter, received, `There is no estimate for this ${parameter}`);
}
