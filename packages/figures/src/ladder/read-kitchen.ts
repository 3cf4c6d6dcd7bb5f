import { SEA_LEVEL_PRESSURE_PA, standardPressure } from 'vitrose';

/** Where the pan stands: by its barometer or by its height; at sea level without either. */
export type Place = {
  /** At the pan, Pa, 1 000 to 115 000. It goes before the height. */
  readonly pressurePa?: number | undefined;
  /** M, −2 000 to 11 000. */
  readonly elevationM?: number | undefined;
};

/** The pressure at the pan, Pa. */
export function pressureOf({ pressurePa, elevationM }: Place): number {
  if (pressurePa !== undefined) return pressurePa;
  return elevationM === undefined ? SEA_LEVEL_PRESSURE_PA : standardPressure(elevationM).pressurePa;
}
