import { densityBrixBaumeTable } from './density-brix-baume.js';
import { densityCandyMassTable } from './density-candy-mass.js';
import { densityIcumsaCoefficientsTable } from './density-icumsa-coefficients.js';
import { densityRiIcumsa1974Table } from './density-ri-icumsa1974.js';
import { densityRiTemperatureTable } from './density-ri-temperature.js';
import { densitySucrose20cTable } from './density-sucrose-20c.js';
import { densityWaterTable } from './density-water.js';

export {
  densityBrixBaumeTable,
  densityCandyMassTable,
  densityIcumsaCoefficientsTable,
  densityRiIcumsa1974Table,
  densityRiTemperatureTable,
  densitySucrose20cTable,
  densityWaterTable,
};

/** Every table of this family. */
export const DENSITY_TABLES = [
  densityBrixBaumeTable,
  densityCandyMassTable,
  densityIcumsaCoefficientsTable,
  densityRiIcumsa1974Table,
  densityRiTemperatureTable,
  densitySucrose20cTable,
  densityWaterTable,
] as const;
