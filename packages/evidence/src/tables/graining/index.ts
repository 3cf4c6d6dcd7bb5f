import { grainingAnchorsTable } from './graining-anchors.js';
import { grainingDoctorRulesTable } from './graining-doctor-rules.js';
import { grainingSaturationTable } from './graining-saturation.js';
import { grainingSolubilityOthersTable } from './graining-solubility-others.js';
import { grainingSucroseSolubilityTable } from './graining-sucrose-solubility.js';

export {
  grainingAnchorsTable,
  grainingDoctorRulesTable,
  grainingSaturationTable,
  grainingSolubilityOthersTable,
  grainingSucroseSolubilityTable,
};

/** Every table of this family. */
export const GRAINING_TABLES = [
  grainingAnchorsTable,
  grainingDoctorRulesTable,
  grainingSaturationTable,
  grainingSolubilityOthersTable,
  grainingSucroseSolubilityTable,
] as const;
