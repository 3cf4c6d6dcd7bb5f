import type { Span } from '../../foundation/results/types.js';
import { celsiusFromFahrenheit } from '../../foundation/units/temperature.js';
import { type KitchenAir, kitchenPressure } from './kitchen-pressure.js';
import { DRY_SUGAR_FROM_F, STAGE_RUNGS } from './rungs.js';
import { sucroseBoilC, sucroseSolids } from './sucrose-curve.js';
import type { StageRange } from './types.js';

/** One end of a rung. */
type End = { readonly seaLevelC: number; readonly hereC: number; readonly solids: number | null };

/**
 * The sugar stages and the gaps between them, in order, for one kitchen.
 *
 * A stage is a texture, set by the solids; its temperature falls with the air pressure, by 2 °F
 * for every 1 000 ft and a little more at hard crack. Clear and brown liquid are dry sugar and
 * stand where they are. A gap is a gap: 290 to 300 °F, where most boiled drops are stopped, is early
 * hard crack and belongs to no chart's stage.
 *
 * @param air - `elevationM`, m, −2 000 to 11 000, or `pressurePa` at the pan, Pa, 1 000 to 115 000;
 *   sea level without either.
 * @returns rungs from thread to brown liquid: their ends here and at sea level, °C, and the solids
 *   of a sucrose syrup at the ends, 0 to 1, `null` in dry sugar.
 * @throws {@link ModelRangeError} if both are given, or outside the domains.
 * @example
 * stageLadder({ elevationM: 1_609 }).find((rung) => rung.id === 'hard-crack')?.lowC // 142.49 °C
 * @source stage-chart-medians, mcgee-2004
 */
export function stageLadder(air: KitchenAir = {}): readonly StageRange[] {
  const { pressurePa } = kitchenPressure(air);
  return STAGE_RUNGS.map(({ lowF, highF, ...named }): StageRange => {
    const low = endOf(lowF, pressurePa);
    const high = endOf(highF, pressurePa);
    const solids: Span | null =
      low.solids === null || high.solids === null ? null : [low.solids, high.solids];
    return {
      ...named,
      lowC: low.hereC,
      highC: high.hereC,
      lowSeaLevelC: low.seaLevelC,
      highSeaLevelC: high.seaLevelC,
      drySolidsMassFraction: solids,
    };
  });
}

function endOf(seaLevelF: number, pressurePa: number): End {
  const seaLevelC = celsiusFromFahrenheit(seaLevelF);
  if (seaLevelF >= DRY_SUGAR_FROM_F) return { seaLevelC, hereC: seaLevelC, solids: null };
  const solids = sucroseSolids(seaLevelC);
  const hereC = solids === null ? seaLevelC : sucroseBoilC(solids, pressurePa);
  return { seaLevelC, hereC, solids };
}
