import type { CitedConstants } from '../../foundation/validity/constants.js';

const source = 'zobrist-2011',
  grade = 'secondary';

/** Diffusion of water in sucrose and water, −log₁₀ of m²/s. */
export const DIFFUSION_CONSTANTS = {
  a0: { value: 7, source, grade },
  a1: { value: 0.175, source, grade },
  a2: { value: 46.46, source, grade },
  b0K: { value: 262.867, source, grade },
  b1: { value: 10.53, source, grade },
  b2: { value: 0.3, source, grade },
  t0K: { value: 127.9, source, grade },
  t1: { value: 0.4514, source, grade },
  t2: { value: 0.51, source, grade },
  power: { value: 1.7, source, grade },
} as const satisfies CitedConstants;

/**
 * How fast water moves in an amorphous sweet, m²/s: 2·10⁻⁹ in water, 10⁻¹³ at a humidity of a half,
 * 2·10⁻¹⁶ in the dry glass.
 *
 * @equation log₁₀ D = −(A + B/(T − T₀)), A = 7 + 0.175·(1 − 46.46·d), B = 262.867·(1 + 10.53·d − 0.3·d²),
 *   T₀ = 127.9·(1 + 0.4514·d − 0.51·d^1.7), d = 1 − aw
 */
export function waterDiffusionM2PerS(waterActivity: number, temperatureC: number): number {
  const { a0, a1, a2, b0K, b1, b2, t0K, t1, t2, power } = DIFFUSION_CONSTANTS;
  const d = 1 - waterActivity;
  const A = a0.value + a1.value * (1 - a2.value * d);
  const B = b0K.value * (1 + b1.value * d - b2.value * d ** 2);
  const T0 = t0K.value * (1 + t1.value * d - t2.value * d ** power.value);
  return 10 ** -(A + B / (temperatureC + 273.15 - T0));
}
