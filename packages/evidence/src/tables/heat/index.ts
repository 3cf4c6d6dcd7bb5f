import { heatCoolingTable } from './heat-cooling.js';
import { heatCpTable } from './heat-cp.js';
import { heatEfficiencyTable } from './heat-efficiency.js';
import { heatLatentTable } from './heat-latent.js';
import { heatWorkedExampleTable } from './heat-worked-example.js';

export {
  heatCoolingTable,
  heatCpTable,
  heatEfficiencyTable,
  heatLatentTable,
  heatWorkedExampleTable,
};

/** Every table of this family. */
export const HEAT_TABLES = [
  heatCoolingTable,
  heatCpTable,
  heatEfficiencyTable,
  heatLatentTable,
  heatWorkedExampleTable,
] as const;
