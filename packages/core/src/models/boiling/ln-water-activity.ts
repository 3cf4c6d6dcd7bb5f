import { BOILING_CONSTANTS } from './constants.js';
import type { Solute } from './solute.js';

/**
 * Logarithm of the water activity of a solution.
 *
 * Every solute is sucrose of equal mass, which is what amorphous sugars come to near dryness, with
 * a term for the number of molecules, which is what counts when dilute, and one interaction.
 *
 * @equation ln aw = ln(1 − x) + x²·[A0 + A1·x + A2·x² + B·(T₀/T − 1)]
 *   − (Mw/κ)·(1/M̄ − 1/Msuc)·u + D̄·(T₀/T)·u², u = κs/(κs + 1 − s)
 */
export function lnWaterActivity(
  dissolvedMassFraction: number,
  temperatureC: number,
  solute: Solute,
): number {
  const {
    a0: A0,
    a1: A1,
    a2: A2,
    b: B,
    kappa,
    referenceTemperatureK: T0,
    waterMolarMassGPerMol: Mw,
    sucroseMolarMassGPerMol: Msuc,
  } = BOILING_CONSTANTS;
  const s = dissolvedMassFraction;
  const x = moleFractionAsSucrose(s);
  const u = crowding(s);
  const T = temperatureC + 273.15;
  return (
    Math.log1p(-x) +
    x ** 2 * (A0 + A1 * x + A2 * x ** 2 + B * (T0 / T - 1)) -
    (Mw / kappa) * (solute.inverseMolarMass - 1 / Msuc) * u +
    solute.interaction * (T0 / T) * u ** 2
  );
}

/** How far the logarithm moves if the interaction is wrong by what it may be. */
export function lnWaterActivityPlusMinus(
  dissolvedMassFraction: number,
  temperatureC: number,
  solute: Solute,
): number {
  const T = temperatureC + 273.15;
  const perInteraction =
    (BOILING_CONSTANTS.referenceTemperatureK / T) * crowding(dissolvedMassFraction) ** 2;
  return solute.interactionPlusMinus * perInteraction;
}

function moleFractionAsSucrose(s: number): number {
  const { waterMolarMassGPerMol: Mw, sucroseMolarMassGPerMol: Msuc } = BOILING_CONSTANTS;
  const sugar = s / Msuc;
  return sugar / (sugar + (1 - s) / Mw);
}

function crowding(s: number): number {
  const crowded = BOILING_CONSTANTS.kappa * s;
  return crowded / (crowded + 1 - s);
}
