import { glassCriticalWaterTable } from './glass-critical-water.js';
import { glassErhCandiesTable } from './glass-erh-candies.js';
import { glassGordonTaylorTable } from './glass-gordon-taylor.js';
import { glassSorptionTable } from './glass-sorption.js';
import { glassTgDeTable } from './glass-tg-de.js';
import { glassTgDryTable } from './glass-tg-dry.js';
import { glassTgWaterPointsTable } from './glass-tg-water-points.js';
import { glassViscosityTable } from './glass-viscosity.js';
import { glassWindowsTable } from './glass-windows.js';
import { glassWvtrTable } from './glass-wvtr.js';

export {
  glassCriticalWaterTable,
  glassErhCandiesTable,
  glassGordonTaylorTable,
  glassSorptionTable,
  glassTgDeTable,
  glassTgDryTable,
  glassTgWaterPointsTable,
  glassViscosityTable,
  glassWindowsTable,
  glassWvtrTable,
};

/** Every table of this family. */
export const GLASS_TABLES = [
  glassCriticalWaterTable,
  glassErhCandiesTable,
  glassGordonTaylorTable,
  glassSorptionTable,
  glassTgDeTable,
  glassTgDryTable,
  glassTgWaterPointsTable,
  glassViscosityTable,
  glassWindowsTable,
  glassWvtrTable,
] as const;
