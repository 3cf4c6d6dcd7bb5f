import { TARTRATE_SOLUBILITY } from './constants.js';

/** Cream of tartar a kilogram of water holds, g; beyond the printed points as at the last one. */
export function tartrateSolubilityGPerKg(temperatureC: number): number {
  const [cold, room, hot] = TARTRATE_SOLUBILITY;
  const [from, to] = temperatureC < room.temperatureC ? [cold, room] : [room, hot];
  const share = (temperatureC - from.temperatureC) / (to.temperatureC - from.temperatureC);
  const along = Math.min(1, Math.max(0, share));
  const a = from.gPer100GWater.value;
  return 10 * a * (to.gPer100GWater.value / a) ** along;
}
