import { boilingAltitudeCandyTable } from './boiling-altitude-candy.js';
import { boilingAltitudeShiftTable } from './boiling-altitude-shift.js';
import { boilingAltitudeWaterTable } from './boiling-altitude-water.js';
import { boilingAtmosphereTable } from './boiling-atmosphere.js';
import { boilingCandyAnchorsTable } from './boiling-candy-anchors.js';
import { boilingCandyRegimeTable } from './boiling-candy-regime.js';
import { boilingModelTable } from './boiling-model.js';
import { boilingNorrishKTable } from './boiling-norrish-k.js';
import { boilingPressureReductionTable } from './boiling-pressure-reduction.js';
import { boilingPsatCheckTable } from './boiling-psat-check.js';
import { boilingSoluteParametersTable } from './boiling-solute-parameters.js';
import { boilingSorptionHumectantsTable } from './boiling-sorption-humectants.js';
import { boilingStagesTable } from './boiling-stages.js';
import { boilingSucroseAmorphous25CTable } from './boiling-sucrose-amorphous-25C.js';
import { boilingSucroseAw25CTable } from './boiling-sucrose-aw-25C.js';
import { boilingSucroseFactoryEquationTable } from './boiling-sucrose-factory-equation.js';
import { boilingSucroseGerlachTable } from './boiling-sucrose-gerlach.js';
import { boilingSucroseStarzakPeacockTable } from './boiling-sucrose-starzak-peacock.js';
import { boilingVacuumTable } from './boiling-vacuum.js';

export {
  boilingAltitudeCandyTable,
  boilingAltitudeShiftTable,
  boilingAltitudeWaterTable,
  boilingAtmosphereTable,
  boilingCandyAnchorsTable,
  boilingCandyRegimeTable,
  boilingModelTable,
  boilingNorrishKTable,
  boilingPressureReductionTable,
  boilingPsatCheckTable,
  boilingSoluteParametersTable,
  boilingSorptionHumectantsTable,
  boilingStagesTable,
  boilingSucroseAmorphous25CTable,
  boilingSucroseAw25CTable,
  boilingSucroseFactoryEquationTable,
  boilingSucroseGerlachTable,
  boilingSucroseStarzakPeacockTable,
  boilingVacuumTable,
};

/** Every table of this family. */
export const BOILING_TABLES = [
  boilingAltitudeCandyTable,
  boilingAltitudeShiftTable,
  boilingAltitudeWaterTable,
  boilingAtmosphereTable,
  boilingCandyAnchorsTable,
  boilingCandyRegimeTable,
  boilingModelTable,
  boilingNorrishKTable,
  boilingPressureReductionTable,
  boilingPsatCheckTable,
  boilingSoluteParametersTable,
  boilingSorptionHumectantsTable,
  boilingStagesTable,
  boilingSucroseAmorphous25CTable,
  boilingSucroseAw25CTable,
  boilingSucroseFactoryEquationTable,
  boilingSucroseGerlachTable,
  boilingSucroseStarzakPeacockTable,
  boilingVacuumTable,
] as const;
