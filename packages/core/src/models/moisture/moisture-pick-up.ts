import { isNone } from '../../foundation/results/is-none.js';
import type { Checked, None, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import { assemble } from '../../matter/mixture/assemble.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { vapourPressurePa } from '../../matter/water/vapour-pressure.js';
import { glassTransition } from '../glass/index.js';
import { SORPTION_CONSTANTS, STICKY_CONSTANTS } from './constants.js';
import { waterDiffusionM2PerS } from './diffusion.js';
import { humidityAt, type NoSorption, type Sorption, sorptionOf, waterAt } from './sorption.js';
import { moistureOf } from './water-at-relative-humidity.js';

/** What stands between the air and the sweet. */
export const PICK_UP_CONSTANTS = {
  stillAirMPerS: {
    value: 0.004,
    source: 'assumption',
    grade: 'assumed',
    note: 'about 5 W/(m²·K) of a piece in still air, by the rule of Lewis',
  },
  solidsKgPerM3: { value: 1450, source: 'assumption', grade: 'assumed' },
  errorFactor: {
    value: 3,
    source: 'assumption',
    grade: 'assumed',
    note: 'a decade in the diffusion is this much in the uptake',
  },
  waterVapourJPerKgK: { value: 461.5, source: 'definition', grade: 'derived' },
} as const satisfies CitedConstants;

/** What one piece weighs, g. */
export const PIECE_DOMAIN_G: Span = [0.01, 100_000];
/** The surface of one piece, or of its wrap, cm². */
export const AREA_DOMAIN_CM2: Span = [0.01, 100_000];
/** Air wetter than this makes syrup of any sweet. */
export const PICK_UP_DOMAIN: Span = [0, 0.95];
/** Up to a year in the room. */
export const PICK_UP_DOMAIN_HOURS: Span = [0, 8_760];

/** Humidities closer than this are one. */
const BALANCE = 1e-9;
/** Layers of the skin in the mean of its diffusion. */
const STEPS = 32;

/** A bare piece in a room. */
export type BarePiece = {
  readonly pieceG: number;
  readonly areaCm2: number;
  readonly relativeHumidity: number;
  readonly temperatureC: number;
  readonly hours: number;
};

/** What `moisturePickUp` answers. */
export type MoisturePickUp = Checked<{
  /** Water taken from the air, g. */
  takenUpG: number;
  /** Within this about nine times in ten, g. */
  band: Span;
  /** Water in the whole piece after that, 0 to 1. */
  moistureMassFraction: number;
  /** Water in the skin, which is as damp as the room from the start, 0 to 1. */
  skinMoistureMassFraction: number;
  /** The skin lies 10 K or more over its glass transition. */
  skinSticks: boolean;
}>;

/**
 * How much water a bare piece takes from the air of a room: an estimate, good to a factor of three.
 *
 * The air brings water to the skin, and the skin lets it in ever more slowly; the piece never takes up
 * more than it holds in that air. Swelling, running, graining and a draught are left out, and other
 * sugars let water in as sucrose does. Wrap a piece before its skin sticks.
 *
 * @equation 1/N = 1/(k·Δρ·t) + 1/(2·ρ·Δm·√(D̄·t/π)), D̄ = (5/3)·∫y^⅔·D dy (Crank); taken up
 *   M·(1 − exp(−N·A/M)), M = what it holds in that air
 * @param mixture - The sweet, with its water.
 * @param piece - `pieceG`: 0.01 to 100 000. `areaCm2`: its surface, 0.01 to 100 000.
 *   `relativeHumidity`: of the room, 0 to 0.95. `temperatureC`: °C, −40 to 60; nothing is known below
 *   0. `hours`: 0 to 8 760.
 * @returns `takenUpG` and its `band`, g; `moistureMassFraction` of the piece and of its skin, and whether
 *   the skin sticks; a warning outside 15 to 35 °C. Or `none`: `air-is-drier` or no damper than the sweet,
 *   `no-estimate` where more than a tenth of the solids is sugar alcohol, `no-sorption-data`,
 *   `nothing-dissolved`.
 * @throws {@link ModelRangeError} if a number cannot be meant, and if nothing in the mixture has a known
 *   glass transition.
 * @example
 * moisturePickUp(solutionOf('sucrose', { drySolidsMassFraction: 0.98 }), {
 *   pieceG: 4, areaCm2: 12, relativeHumidity: 0.55, temperatureC: 25, hours: 24,
 * }) // { takenUpG: 0.01732… }
 * @source zobrist-2011, sorption-fit, assumption
 */
export function moisturePickUp(
  mixture: Mixture,
  piece: BarePiece,
): MoisturePickUp | None<'air-is-drier' | 'no-estimate'> | NoSorption {
  const { pieceG, areaCm2, relativeHumidity, temperatureC, hours } = piece;
  requireWithin('pieceG', pieceG, PIECE_DOMAIN_G);
  requireWithin('areaCm2', areaCm2, AREA_DOMAIN_CM2);
  requireWithin('relativeHumidity', relativeHumidity, PICK_UP_DOMAIN);
  requireWithin('hours', hours, PICK_UP_DOMAIN_HOURS);
  const sorption = sorptionOf(mixture, temperatureC);
  if (isNone(sorption)) return sorption;
  if (sorption.polyolShare > SORPTION_CONSTANTS.polyolShare.value) {
    return { kind: 'none', reason: 'no-estimate' };
  }
  const inside = mixture.waterG / sorption.dissolvedG;
  const own = humidityAt(sorption, inside);
  // In balance to the last digits nothing moves, and the rest would be a ratio of noughts.
  if (relativeHumidity - own < BALANCE) return { kind: 'none', reason: 'air-is-drier' };
  const outside = waterAt(sorption, relativeHumidity);
  const perPiece = pieceG / mixture.massG;
  const mostG = sorption.dissolvedG * perPiece * (outside - inside);
  const reachedG =
    1_000 * (areaCm2 / 10_000) * throughSkinKgPerM2(sorption, [own, inside], outside, piece);
  const taken = (factor: number): number => -mostG * Math.expm1((-reachedG * factor) / mostG);
  const takenUpG = taken(1);
  const skin = assemble(sorption.dissolvedG * outside, mixture.solids, mixture.apart);
  const overGlassK = temperatureC - glassTransition(skin).glassTransitionC;
  const { errorFactor } = PICK_UP_CONSTANTS;
  return {
    takenUpG,
    band: [taken(1 / errorFactor.value), taken(errorFactor.value)],
    moistureMassFraction: moistureOf(mixture, mixture.waterG + takenUpG / perPiece),
    skinMoistureMassFraction: moistureOf(mixture, skin.waterG),
    skinSticks: overGlassK >= STICKY_CONSTANTS.startsK.value,
    warnings: sorption.warnings,
  };
}

/** Water through a square metre of skin into a piece without end, behind still air, kg. */
function throughSkinKgPerM2(
  sorption: Sorption,
  [own, inside]: readonly [relativeHumidity: number, waterGPerG: number],
  outside: number,
  { relativeHumidity, temperatureC, hours }: BarePiece,
): number {
  if (hours === 0) return 0;
  const { stillAirMPerS, solidsKgPerM3, waterVapourJPerKgK } = PICK_UP_CONSTANTS;
  const seconds = 3_600 * hours;
  const vapourKgPerM3 =
    vapourPressurePa(temperatureC) / (waterVapourJPerKgK.value * (temperatureC + 273.15));
  const brought = stillAirMPerS.value * vapourKgPerM3 * (relativeHumidity - own) * seconds;
  const diffusion = meanDiffusion(sorption, [own, relativeHumidity], [inside, outside]);
  const letIn =
    2 * solidsKgPerM3.value * (outside - inside) * Math.sqrt((diffusion * seconds) / Math.PI);
  return 1 / (1 / brought + 1 / letIn);
}

/** Crank's mean for uptake, where diffusion grows with the water: wetter layers count for more. */
function meanDiffusion(sorption: Sorption, [own, room]: Span, [inside, outside]: Span): number {
  let sum = 0;
  let from = 0;
  for (let step = 1; step <= STEPS; step += 1) {
    const activity = own + ((room - own) * step) / STEPS;
    const to = (waterAt(sorption, activity) - inside) / (outside - inside);
    const middle = own + ((room - own) * (step - 0.5)) / STEPS;
    sum +=
      waterDiffusionM2PerS(middle, sorption.temperatureC) *
      (Math.max(0, to) ** (5 / 3) - Math.max(0, from) ** (5 / 3));
    from = to;
  }
  return sum;
}
