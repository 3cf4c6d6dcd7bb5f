import type { WeighedAcid } from './acid-masses.js';
import { ACIDITY_CONSTANTS, ACIDS } from './constants.js';
import { tartrateSolubilityGPerKg } from './tartrate-solubility.js';
import type { AcidSpecies } from './types.js';

type Anion = { readonly mol: number; readonly constants: readonly number[] };

/** Acids and cations in the pan, made ready to be asked again and again as water leaves. */
export type AcidSystem = {
  readonly anions: readonly Anion[];
  readonly cationMol: number;
  /** Cream of tartar, which may not all dissolve. */
  readonly tartrate: Anion;
};

/** Every balance lies between these, also the last trace of water under a heap of acid. */
const LOWEST_PH = -6;
const HIGHEST_PH = 18;

/** @param extraCationMol - From the alkalinity of the water. */
export function acidSystem(acids: readonly WeighedAcid[], extraCationMol: number): AcidSystem {
  const anions: Anion[] = [];
  let cationMol = extraCationMol;
  let tartrateMol = 0;
  for (const { species, acid, massG } of acids) {
    const mol = massG / acid.molarMassGPerMol.value;
    if (species === 'potassium-hydrogen-tartrate') {
      tartrateMol += mol;
      continue;
    }
    cationMol += mol * acid.cationsPerMole;
    if (acid.pKa.length > 0) anions.push({ mol, constants: constantsOf(species) });
  }
  const constants = constantsOf('potassium-hydrogen-tartrate');
  return { anions, cationMol, tartrate: { mol: tartrateMol, constants } };
}

/** Cream of tartar that is in solution, mol. */
export function dissolvedTartrateMol(
  { tartrate }: AcidSystem,
  waterKg: number,
  temperatureC: number,
): number {
  if (tartrate.mol === 0) return 0;
  const molarMass = ACIDS['potassium-hydrogen-tartrate'].molarMassGPerMol.value;
  const holdsMol = (tartrateSolubilityGPerKg(temperatureC) / molarMass) * waterKg;
  return Math.min(tartrate.mol, holdsMol);
}

/**
 * What is left over of [H] + [cation] = Kw/[H] + Σ c·(mean charge), in mol per kg of water with
 * activities taken as 1, and how it grows with ln [H]: the buffer capacity, which is never zero.
 */
export function chargeLeftOver(
  { anions, cationMol, tartrate }: AcidSystem,
  { waterKg, tartrateMol }: { readonly waterKg: number; readonly tartrateMol: number },
  h: number,
): readonly [excess: number, slope: number] {
  const oh = ACIDITY_CONSTANTS.waterIonProduct.value / h;
  let excess = h - oh + (cationMol + tartrateMol) / waterKg;
  let slope = h + oh;
  for (const { mol, constants } of anions) {
    const [mean, variance] = charge(constants, h);
    excess -= (mol / waterKg) * mean;
    slope += (mol / waterKg) * variance;
  }
  if (tartrateMol > 0) {
    const [mean, variance] = charge(tartrate.constants, h);
    excess -= (tartrateMol / waterKg) * mean;
    slope += (tartrateMol / waterKg) * variance;
  }
  return [excess, slope];
}

/**
 * ln [H] at which the charges balance, by Newton with a bracket it may not leave.
 *
 * @param near - Where to begin, such as the answer for a little more water.
 */
export function balancedLnH(
  system: AcidSystem,
  waterKg: number,
  temperatureC: number,
  near: number,
): number {
  const water = { waterKg, tartrateMol: dissolvedTartrateMol(system, waterKg, temperatureC) };
  let low = -HIGHEST_PH * Math.LN10;
  let high = -LOWEST_PH * Math.LN10;
  let x = near;
  // Newton alone needs three or four; halving alone would need thirty.
  for (let round = 0; round < 60; round += 1) {
    const [excess, slope] = chargeLeftOver(system, water, Math.exp(x));
    const newton = x - excess / slope;
    // The error of the next is about the square of this step.
    if (Math.abs(newton - x) < 1e-5) return newton;
    if (excess > 0) high = x;
    else low = x;
    x = newton > low && newton < high ? newton : (low + high) / 2;
  }
  return x;
}

/** The same as a pH. */
export function balancedPH(system: AcidSystem, waterKg: number, temperatureC: number): number {
  return -balancedLnH(system, waterKg, temperatureC, -4 * Math.LN10) / Math.LN10;
}

/** Mean negative charge of a molecule, and its variance, which is the slope of the mean. */
export function charge(
  constants: readonly number[],
  h: number,
): readonly [mean: number, variance: number] {
  let weight = 1;
  let sum = 1;
  let first = 0;
  let second = 0;
  for (let protons = 0; protons < constants.length; protons += 1) {
    weight *= (constants[protons] ?? 0) / h;
    const charges = protons + 1;
    sum += weight;
    first += charges * weight;
    second += charges * charges * weight;
  }
  const mean = first / sum;
  return [mean, second / sum - mean * mean];
}

/** Acid constants, from the first proton on. */
export function constantsOf(species: AcidSpecies): readonly number[] {
  return ACIDS[species].pKa.map(({ value }) => 10 ** -value);
}
