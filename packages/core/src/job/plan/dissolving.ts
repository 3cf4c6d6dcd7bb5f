import { findRoot } from '../../foundation/numeric/find-root.js';
import { sucroseSolubility } from '../../models/graining/index.js';

/** The temperature at which all the sucrose is in solution, °C; nothing when not even at 100 °C. */
export function sucroseDissolvedAt({
  sucroseG,
  waterG,
}: {
  readonly sucroseG: number;
  readonly waterG: number;
}): number | undefined {
  const share = sucroseG / (sucroseG + waterG);
  const room = (temperatureC: number) =>
    sucroseSolubility(temperatureC).sucroseMassFraction - share;
  if (room(100) < 0) return undefined;
  return room(0) >= 0 ? 0 : findRoot(room, [0, 100], { tolerance: 1e-3 });
}
