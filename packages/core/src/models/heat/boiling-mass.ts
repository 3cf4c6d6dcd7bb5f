import type { Mixture } from '../../matter/mixture/types.js';
import { boilingTemperatureC, waterBoilingPoint } from '../../matter/water/boiling-point.js';
import { boilExcess } from '../boiling/boil.js';
import { type Solute, soluteOf } from '../boiling/solute.js';
import { evaporationHeatFrom } from './phase-heat.js';
import { specificHeatKJPerKgKAt } from './specific-heat.js';

/** What stays in a pan that boils, and the pressure it boils under. */
export type BoilingMass = {
  readonly solute: Solute;
  /** Everything but water, g. */
  readonly dryG: number;
  readonly pressurePa: number;
  /** Plain water would boil here, °C. */
  readonly waterBoilsAtC: number;
  /** Heat that leaves with a kilogram of steam out of a syrup at a temperature, kJ/kg. */
  readonly steamKJPerKg: (temperatureC: number) => number;
  /** Heat the empty pan takes for a kelvin, J/K. */
  readonly panJPerK: number;
};

/** Takes the mass of a mixture apart once for a whole boil. */
export function boilingMass(mixture: Mixture, pressurePa: number, panJPerK: number): BoilingMass {
  const { boilingPointC } = waterBoilingPoint(pressurePa);
  return {
    solute: soluteOf(mixture),
    dryG: mixture.massG - mixture.waterG,
    pressurePa,
    waterBoilsAtC: boilingPointC,
    steamKJPerKg: evaporationHeatFrom(boilingPointC),
    panJPerK,
  };
}

/** Dry solids, 0 to 1, with some water left. */
export function drySolidsWith({ dryG }: BoilingMass, waterG: number): number {
  return dryG / (dryG + waterG);
}

/** Dissolved solids in solids and water, 0 to 1, with some water left. */
export function dissolvedWith({ solute }: BoilingMass, waterG: number): number {
  return solute.massG / (solute.massG + waterG);
}

/** Water, g, that makes the dissolved solids a share of solids and water. */
export function waterAtDissolved({ solute }: BoilingMass, dissolvedMassFraction: number): number {
  return solute.massG * (1 / dissolvedMassFraction - 1);
}

/** Boil, °C, with some water left, between a wetter and a drier mass whose boils are known. */
export function boilBetweenC(
  mass: BoilingMass,
  waterG: number,
  [lowC, highC]: readonly [number, number],
): number {
  const dissolved = dissolvedWith(mass, waterG);
  return boilingTemperatureC([lowC - 0.01, highC + 0.01], (temperatureC) =>
    boilExcess(dissolved, temperatureC, mass.pressurePa, mass.solute),
  );
}

/** Heat the mass and its pan take for a kelvin without boiling, J/K. */
export function warmingJPerK(mass: BoilingMass, waterG: number, temperatureC: number): number {
  const brix = 100 * drySolidsWith(mass, waterG);
  return (mass.dryG + waterG) * specificHeatKJPerKgKAt(brix, temperatureC) + mass.panJPerK;
}

/**
 * Water that has to leave for the boil to rise a kelvin, g/K.
 *
 * The boil is where the excess is nought, so the slope of its line follows from the two slopes of
 * the excess, without another boiling point to search for.
 */
export function waterGPerK(mass: BoilingMass, waterG: number, temperatureC: number): number {
  const dissolved = dissolvedWith(mass, waterG);
  const excess = (s: number, atC: number): number =>
    boilExcess(s, atC, mass.pressurePa, mass.solute);
  const stepC = 0.01;
  const step = 1e-4 * Math.min(dissolved, 1 - dissolved);
  const perK =
    (excess(dissolved, temperatureC + stepC) - excess(dissolved, temperatureC - stepC)) / stepC;
  const perSolids =
    (excess(dissolved + step, temperatureC) - excess(dissolved - step, temperatureC)) / step;
  return ((-perK / perSolids) * mass.solute.massG) / dissolved ** 2;
}

/** Heat a boiling mass takes for a kelvin: warming, and the steam that has to leave, J/K. */
export function boilingJPerK(mass: BoilingMass, waterG: number, temperatureC: number): number {
  return (
    warmingJPerK(mass, waterG, temperatureC) +
    mass.steamKJPerKg(temperatureC) * waterGPerK(mass, waterG, temperatureC)
  );
}
