import { inversionActivationEnergyTable } from './inversion-activation-energy.js';
import { inversionAfterCookingTable } from './inversion-after-cooking.js';
import { inversionBrowningEnergyTable } from './inversion-browning-energy.js';
import { inversionCandyScenariosTable } from './inversion-candy-scenarios.js';
import { inversionCaramelOnsetTable } from './inversion-caramel-onset.js';
import { inversionCheckRowsTable } from './inversion-check-rows.js';
import { inversionComputedGridTable } from './inversion-computed-grid.js';
import { inversionPhRowsTable } from './inversion-ph-rows.js';
import { inversionPkaTable } from './inversion-pka.js';
import { inversionTgCostTable } from './inversion-tg-cost.js';
import { inversionVukovTable } from './inversion-vukov.js';

export {
  inversionActivationEnergyTable,
  inversionAfterCookingTable,
  inversionBrowningEnergyTable,
  inversionCandyScenariosTable,
  inversionCaramelOnsetTable,
  inversionCheckRowsTable,
  inversionComputedGridTable,
  inversionPhRowsTable,
  inversionPkaTable,
  inversionTgCostTable,
  inversionVukovTable,
};

/** Every table of this family. */
export const INVERSION_TABLES = [
  inversionActivationEnergyTable,
  inversionAfterCookingTable,
  inversionBrowningEnergyTable,
  inversionCandyScenariosTable,
  inversionCaramelOnsetTable,
  inversionCheckRowsTable,
  inversionComputedGridTable,
  inversionPhRowsTable,
  inversionPkaTable,
  inversionTgCostTable,
  inversionVukovTable,
] as const;
