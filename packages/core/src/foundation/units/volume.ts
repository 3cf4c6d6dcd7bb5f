import { requireFinite } from './finite.js';

/** All from the US gallon of 231 cubic inches, exact: 128 fluid ounces, 1 024 fluid drams, 16 cups. */
const ML_PER_US_FLUID_OUNCE = 29.5735295625;
const ML_PER_US_FLUID_DRAM = 3.6966911953125;
const ML_PER_US_TEASPOON = 4.92892159375;
const ML_PER_US_TABLESPOON = 14.78676478125;
const ML_PER_US_CUP = 236.5882365;

/**
 * US fluid ounces in millilitres.
 *
 * @param volumeUsFluidOunce - Volume, US fluid ounces. At least 0.
 * @returns the volume, ml.
 * @throws {@link ModelRangeError} for NaN or less than nothing.
 * @example
 * mlFromUsFluidOunce(1) // 29.5735
 */
export function mlFromUsFluidOunce(volumeUsFluidOunce: number): number {
  requireFinite('volumeUsFluidOunce', volumeUsFluidOunce, 0);
  return volumeUsFluidOunce * ML_PER_US_FLUID_OUNCE;
}

/**
 * Millilitres in US fluid ounces.
 *
 * @param volumeMl - Volume, ml. At least 0.
 * @returns the volume, US fluid ounces.
 * @throws {@link ModelRangeError} for NaN or less than nothing.
 * @example
 * usFluidOuncesFromMl(100) // 3.3814
 */
export function usFluidOuncesFromMl(volumeMl: number): number {
  requireFinite('volumeMl', volumeMl, 0);
  return volumeMl / ML_PER_US_FLUID_OUNCE;
}

/**
 * US fluid drams in millilitres.
 *
 * @param volumeUsFluidDram - Volume, US fluid drams. At least 0.
 * @returns the volume, ml.
 * @throws {@link ModelRangeError} for NaN or less than nothing.
 * @example
 * mlFromUsFluidDram(1) // 3.69669
 */
export function mlFromUsFluidDram(volumeUsFluidDram: number): number {
  requireFinite('volumeUsFluidDram', volumeUsFluidDram, 0);
  return volumeUsFluidDram * ML_PER_US_FLUID_DRAM;
}

/**
 * Millilitres in US fluid drams.
 *
 * @param volumeMl - Volume, ml. At least 0.
 * @returns the volume, US fluid drams.
 * @throws {@link ModelRangeError} for NaN or less than nothing.
 * @example
 * usFluidDramsFromMl(100) // 27.051
 */
export function usFluidDramsFromMl(volumeMl: number): number {
  requireFinite('volumeMl', volumeMl, 0);
  return volumeMl / ML_PER_US_FLUID_DRAM;
}

/**
 * US teaspoons in millilitres.
 *
 * @param volumeUsTeaspoon - Volume, US teaspoons. At least 0.
 * @returns the volume, ml.
 * @throws {@link ModelRangeError} for NaN or less than nothing.
 * @example
 * mlFromUsTeaspoon(1) // 4.92892
 */
export function mlFromUsTeaspoon(volumeUsTeaspoon: number): number {
  requireFinite('volumeUsTeaspoon', volumeUsTeaspoon, 0);
  return volumeUsTeaspoon * ML_PER_US_TEASPOON;
}

/**
 * Millilitres in US teaspoons.
 *
 * @param volumeMl - Volume, ml. At least 0.
 * @returns the volume, US teaspoons.
 * @throws {@link ModelRangeError} for NaN or less than nothing.
 * @example
 * usTeaspoonsFromMl(100) // 20.288
 */
export function usTeaspoonsFromMl(volumeMl: number): number {
  requireFinite('volumeMl', volumeMl, 0);
  return volumeMl / ML_PER_US_TEASPOON;
}

/**
 * US tablespoons in millilitres.
 *
 * @param volumeUsTablespoon - Volume, US tablespoons. At least 0.
 * @returns the volume, ml.
 * @throws {@link ModelRangeError} for NaN or less than nothing.
 * @example
 * mlFromUsTablespoon(1) // 14.7868
 */
export function mlFromUsTablespoon(volumeUsTablespoon: number): number {
  requireFinite('volumeUsTablespoon', volumeUsTablespoon, 0);
  return volumeUsTablespoon * ML_PER_US_TABLESPOON;
}

/**
 * Millilitres in US tablespoons.
 *
 * @param volumeMl - Volume, ml. At least 0.
 * @returns the volume, US tablespoons.
 * @throws {@link ModelRangeError} for NaN or less than nothing.
 * @example
 * usTablespoonsFromMl(100) // 6.7628
 */
export function usTablespoonsFromMl(volumeMl: number): number {
  requireFinite('volumeMl', volumeMl, 0);
  return volumeMl / ML_PER_US_TABLESPOON;
}

/**
 * US cups in millilitres.
 *
 * @param volumeUsCup - Volume, US cups. At least 0.
 * @returns the volume, ml.
 * @throws {@link ModelRangeError} for NaN or less than nothing.
 * @example
 * mlFromUsCup(1) // 236.588
 */
export function mlFromUsCup(volumeUsCup: number): number {
  requireFinite('volumeUsCup', volumeUsCup, 0);
  return volumeUsCup * ML_PER_US_CUP;
}

/**
 * Millilitres in US cups.
 *
 * @param volumeMl - Volume, ml. At least 0.
 * @returns the volume, US cups.
 * @throws {@link ModelRangeError} for NaN or less than nothing.
 * @example
 * usCupsFromMl(100) // 0.422675
 */
export function usCupsFromMl(volumeMl: number): number {
  requireFinite('volumeMl', volumeMl, 0);
  return volumeMl / ML_PER_US_CUP;
}
