import type { Checked, Span } from '../../foundation/results/types.js';
import {
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
} from '../../foundation/units/temperature.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { drySolidsAtBoil } from '../boiling/dry-solids-at-boil.js';
import { DRY_SUGAR_FROM_F, STAGE_RUNGS } from './rungs.js';
import { stagesApply } from './stages-apply.js';
import { SUCROSE_SYRUP, sucroseBoilC, sucroseSolids } from './sucrose-curve.js';
import type { StageGapId, StageId } from './types.js';

/** Where a mass stands among the stages. */
export type Standing =
  | { readonly kind: 'too-thin'; readonly id: 'too-thin' }
  | { readonly kind: 'stage' | 'dry'; readonly id: StageId }
  | { readonly kind: 'between'; readonly id: StageGapId }
  | { readonly kind: 'burnt'; readonly id: 'burnt' };

/** A stage, with what it was told from. */
export type SugarStage = Standing & {
  /** Where a sucrose syrup as dry would boil at sea level, °C; `null` where no boil tells it. */
  readonly seaLevelSucroseC: number | null;
  /** Everything but water, 0 to 1; `null` where no boil tells it. */
  readonly drySolidsMassFraction: number | null;
  /** Stage names mean something for this mass; see `stagesApply`. */
  readonly namesApply: boolean;
};

/** From cold water to steel that glows. */
export const SUGAR_STAGE_DOMAIN_C: Span = [5, 370];
/** A temperature worked out from a chart's own end may miss it by rounding. */
const ROUNDING_F = 1e-6;
const THREAD_FROM_F = 230;
const BROWN_TO_F = 350;

/**
 * Which sugar stage a boiling mass has reached.
 *
 * The temperature is turned into solids for this mass and this pressure, the solids into the
 * temperature at which a sucrose syrup as dry boils at sea level, and that is looked up: so a mass
 * with glucose syrup, or one boiled up a mountain, is told by its texture and not by its thermometer.
 * From 160 °C hardly any water is left; dry sugar is told by temperature alone, and how brown it is
 * depends on minutes as well. A mass the names do not fit is never called brown or burnt.
 *
 * @param input - `temperatureC`: true temperature, °C, 5 to 370; `pressurePa`: at the pan, Pa, sea
 *   level if left out; `mixture`: what is boiled, sucrose and water if left out.
 * @returns `kind` and `id`: `too-thin`, a `stage`, `between` two, `dry` (clear or brown liquid) or
 *   `burnt`; with the solids and the sucrose temperature behind it.
 * @throws {@link ModelRangeError} outside the temperatures and the pressures a boil is known for.
 * @example
 * sugarStage({ temperatureC: 150 }).id // 'hard-crack'
 * @source stage-chart-medians, mcgee-2004
 */
export function sugarStage({
  temperatureC,
  pressurePa,
  mixture = SUCROSE_SYRUP,
}: {
  readonly temperatureC: number;
  readonly pressurePa?: number | undefined;
  readonly mixture?: Mixture | undefined;
}): Checked<SugarStage> {
  requireWithin('temperatureC', temperatureC, SUGAR_STAGE_DOMAIN_C);
  const namesApply = stagesApply(mixture).apply;
  const unknown = { seaLevelSucroseC: null, drySolidsMassFraction: null, namesApply, warnings: [] };
  const temperatureF = fahrenheitFromCelsius(temperatureC);
  if (temperatureF >= DRY_SUGAR_FROM_F - ROUNDING_F) {
    const standing = namesApply ? standingAt(temperatureF) : CLEAR;
    return { ...standing, ...unknown };
  }
  const boil = drySolidsAtBoil(mixture, { temperatureC, pressurePa });
  if ('kind' in boil) {
    return { ...(boil.reason === 'off-scale-dry' ? NEARLY_DRY : TOO_THIN), ...unknown };
  }
  const told = {
    drySolidsMassFraction: boil.drySolidsMassFraction,
    namesApply,
    warnings: boil.warnings,
  };
  const nearlyDryFrom = sucroseSolids(celsiusFromFahrenheit(DRY_SUGAR_FROM_F)) ?? 1;
  if (boil.dissolvedMassFraction >= nearlyDryFrom) {
    // Cooler than melting sugar, however little water is left.
    return { ...NEARLY_DRY, seaLevelSucroseC: null, ...told };
  }
  const seaLevelSucroseC = sucroseBoilC(boil.dissolvedMassFraction);
  return { ...standingAt(fahrenheitFromCelsius(seaLevelSucroseC)), seaLevelSucroseC, ...told };
}

const TOO_THIN = { kind: 'too-thin', id: 'too-thin' } as const;
const CLEAR = { kind: 'dry', id: 'clear-liquid' } as const;
const NEARLY_DRY = { kind: 'between', id: 'between-hard-crack-and-clear-liquid' } as const;

/** A stage owns both its ends, a gap neither; where two stages meet, the end is the upper one's. */
function standingAt(temperatureF: number): Standing {
  if (temperatureF < THREAD_FROM_F - ROUNDING_F) return TOO_THIN;
  if (temperatureF > BROWN_TO_F + ROUNDING_F) return { kind: 'burnt', id: 'burnt' };
  let found: Standing = TOO_THIN;
  for (const rung of STAGE_RUNGS) {
    const room = rung.kind === 'stage' ? ROUNDING_F : -ROUNDING_F;
    if (temperatureF < rung.lowF - room || temperatureF > rung.highF + room) continue;
    if (rung.kind === 'gap') found = { kind: 'between', id: rung.id };
    else found = { kind: rung.lowF >= DRY_SUGAR_FROM_F ? 'dry' : 'stage', id: rung.id };
  }
  return found;
}
