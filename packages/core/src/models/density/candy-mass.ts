import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { CitedConstants, CitedRange } from '../../foundation/validity/constants.js';
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

/** How far a kitchen scale and a measured cavity may be off together. */
export const WEIGHED_CONSTANTS = {
  plusMinusShare: { value: 0.02, source: 'assumption', grade: 'assumed' },
} as const satisfies CitedConstants;

/** From candy floss half pressed to the sugar crystal, which nothing cooked is denser than, g/mL. */
export const WEIGHED_DOMAIN_G_PER_ML: Span = [0.1, 1.6];
/** From one drop to a bath of it. */
export const CAVITY_DOMAIN_ML: Span = [0, 100_000];
/** What can be weighed must take up some room. */
export const WEIGHED_DOMAIN_ML: Span = [0.01, 100_000];

/** A piece somebody weighed: it beats every estimate. */
export type WeighedPiece = {
  readonly massG: number;
  /** Hot: the cavity it filled level. Cooled: the piece itself, by the water it pushes aside. */
  readonly volumeMl: number;
};

/** A density of a candy mass: an estimate with its spread. */
export type CandyDensity = { readonly densityGPerMl: number; readonly band: Span };

/**
 * Density of a cooked mass, hot in the pan or cooled to a piece. An estimate.
 *
 * Weigh a filled cavity once and use that instead: the kitchen that did knows better. A hot mass of
 * any kind counts as clear: it is pulled or beaten later.
 *
 * @param input - `state`: hot or cooled; `kind` of a cooled mass: clear by default, isomalt,
 *   pulled, fondant; `weighedPiece`: a piece weighed in that state, which takes the place of the
 *   estimate: its mass, g, and the cavity it filled hot or its own volume cooled, mL.
 * @returns `densityGPerMl` and `band`, g/mL.
 * @throws {@link ModelRangeError} for a state or a kind there is no estimate of, or a piece that
 *   nothing cooked can weigh: under 0.1 or over 1.6 g/mL.
 * @example
 * candyMassDensity({ state: 'hot' }).densityGPerMl // 1.45 g/mL
 * @source common-practice
 */
export function candyMassDensity({
  state,
  kind = 'clear',
  weighedPiece,
}: {
  readonly state: CandyState;
  readonly kind?: CandyKind | undefined;
  readonly weighedPiece?: WeighedPiece | undefined;
}): CandyDensity {
  requireKnown('state', state, CANDY_DENSITY);
  requireKnown('kind', kind, CANDY_DENSITY.cooled);
  if (weighedPiece !== undefined) return densityOfPiece(weighedPiece);
  const { value, low, high } =
    state === 'hot' ? CANDY_DENSITY.hot.clear : CANDY_DENSITY.cooled[kind];
  return { densityGPerMl: value, band: [low, high] };
}

function densityOfPiece({ massG, volumeMl }: WeighedPiece): CandyDensity {
  requireWithin('volumeMl', volumeMl, WEIGHED_DOMAIN_ML);
  const densityGPerMl = massG / volumeMl;
  requireWithin('densityGPerMl', densityGPerMl, WEIGHED_DOMAIN_G_PER_ML);
  const share = WEIGHED_CONSTANTS.plusMinusShare.value;
  return { densityGPerMl, band: [densityGPerMl * (1 - share), densityGPerMl * (1 + share)] };
}

function requireKnown(parameter: string, received: string, known: object): void {
  if (Object.hasOwn(known, received)) return;
  throw unknownName(parameter, received, `There is no estimate for this ${parameter}`);
}
