import type { Span } from '../../foundation/results/types.js';
import type { Mixture } from '../../matter/mixture/types.js';
import type { WaterAtGlass } from '../glass/index.js';
import { WRAP_CONSTANTS, type WrappedPack } from './pack.js';

/** What the band of a wrap life rests on. */
export type WrapLifeErrors = {
  readonly wrapped: WrappedPack;
  readonly storeC: number;
  readonly mixture: Mixture;
  readonly critical: WaterAtGlass;
};

/**
 * The band of the days: film, seals where nobody measured them, a film that is tighter in the cool, the
 * isotherm, and the water the glass model allows. Each is a factor; their logarithms add as squares.
 */
export function wrapLifeBand(
  days: number,
  { wrapped: { wvtr, sealKnown }, storeC, mixture, critical }: WrapLifeErrors,
): Span {
  const { leakingSeals, tighterAt25C, isothermError, measuredAtC } = WRAP_CONSTANTS;
  const cooler = Math.max(0, measuredAtC.value - storeC) / (measuredAtC.value - 25);
  const [least, most] = critical.band;
  const room = critical.moistureMassFraction - mixture.waterG / mixture.massG;
  const off = (moisture: number): number =>
    Math.max(0, room + moisture - critical.moistureMassFraction) / room;
  const isotherm = Math.log(isothermError.value);
  const below = Math.hypot(
    Math.log(wvtr.high / wvtr.value),
    sealKnown ? 0 : Math.log(leakingSeals.value),
    isotherm,
    Math.log(off(least)),
  );
  const above = Math.hypot(
    Math.log(wvtr.value / wvtr.low),
    cooler * Math.log(tighterAt25C.value),
    isotherm,
    Math.log(off(most)),
  );
  return [days * Math.exp(-below), days * Math.exp(above)];
}
