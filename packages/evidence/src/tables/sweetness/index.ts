import { sweetnessCheckpointsTable } from './sweetness-checkpoints.js';
import { sweetnessConcentrationResponseTable } from './sweetness-concentration-response.js';
import { sweetnessFactsheet2008Table } from './sweetness-factsheet-2008.js';
import { sweetnessFructoseTemperatureTable } from './sweetness-fructose-temperature.js';
import { sweetnessGlucoseConcentrationTable } from './sweetness-glucose-concentration.js';
import { sweetnessGlucoseSyrupDeTable } from './sweetness-glucose-syrup-de.js';
import { sweetnessRecommendedTable } from './sweetness-recommended.js';
import { sweetnessReview2014Table } from './sweetness-review-2014.js';
import { sweetnessSynergyTable } from './sweetness-synergy.js';

export {
  sweetnessCheckpointsTable,
  sweetnessConcentrationResponseTable,
  sweetnessFactsheet2008Table,
  sweetnessFructoseTemperatureTable,
  sweetnessGlucoseConcentrationTable,
  sweetnessGlucoseSyrupDeTable,
  sweetnessRecommendedTable,
  sweetnessReview2014Table,
  sweetnessSynergyTable,
};

/** Every table of this family. */
export const SWEETNESS_TABLES = [
  sweetnessCheckpointsTable,
  sweetnessConcentrationResponseTable,
  sweetnessFactsheet2008Table,
  sweetnessFructoseTemperatureTable,
  sweetnessGlucoseConcentrationTable,
  sweetnessGlucoseSyrupDeTable,
  sweetnessRecommendedTable,
  sweetnessReview2014Table,
  sweetnessSynergyTable,
] as const;
