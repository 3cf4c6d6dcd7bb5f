import { practiceAdditionPointsTable } from './practice-addition-points.js';
import { practiceBoilCurveTable } from './practice-boil-curve.js';
import { practiceBoiledSweetFormulaTable } from './practice-boiled-sweet-formula.js';
import { practiceCaramelRatioTable } from './practice-caramel-ratio.js';
import { practiceCoolingTimesTable } from './practice-cooling-times.js';
import { practiceDecisionsIsomaltTable } from './practice-decisions-isomalt.js';
import { practiceDecisionsSugaredTable } from './practice-decisions-sugared.js';
import { practiceDefectsTable } from './practice-defects.js';
import { practiceDissolvingWaterTable } from './practice-dissolving-water.js';
import { practiceExplainersTable } from './practice-explainers.js';
import { practiceIsomaltTable } from './practice-isomalt.js';
import { practiceIsomaltXylitolHeatTable } from './practice-isomalt-xylitol-heat.js';
import { practiceMisconceptionsTable } from './practice-misconceptions.js';
import { practiceMoistureAwTable } from './practice-moisture-aw.js';
import { practiceMouldsTable } from './practice-moulds.js';
import { practiceOtherBoilsTable } from './practice-other-boils.js';
import { practicePanSpreadTable } from './practice-pan-spread.js';
import { practicePiecesTable } from './practice-pieces.js';
import { practiceSensitivityTable } from './practice-sensitivity.js';
import { practiceStorageTable } from './practice-storage.js';
import { practiceThermometersTable } from './practice-thermometers.js';
import { practiceXylitolLimitTable } from './practice-xylitol-limit.js';
import { practiceYieldLossTable } from './practice-yield-loss.js';

export {
  practiceAdditionPointsTable,
  practiceBoilCurveTable,
  practiceBoiledSweetFormulaTable,
  practiceCaramelRatioTable,
  practiceCoolingTimesTable,
  practiceDecisionsIsomaltTable,
  practiceDecisionsSugaredTable,
  practiceDefectsTable,
  practiceDissolvingWaterTable,
  practiceExplainersTable,
  practiceIsomaltTable,
  practiceIsomaltXylitolHeatTable,
  practiceMisconceptionsTable,
  practiceMoistureAwTable,
  practiceMouldsTable,
  practiceOtherBoilsTable,
  practicePanSpreadTable,
  practicePiecesTable,
  practiceSensitivityTable,
  practiceStorageTable,
  practiceThermometersTable,
  practiceXylitolLimitTable,
  practiceYieldLossTable,
};

/** Every table of this family. */
export const PRACTICE_TABLES = [
  practiceAdditionPointsTable,
  practiceBoilCurveTable,
  practiceBoiledSweetFormulaTable,
  practiceCaramelRatioTable,
  practiceCoolingTimesTable,
  practiceDecisionsIsomaltTable,
  practiceDecisionsSugaredTable,
  practiceDefectsTable,
  practiceDissolvingWaterTable,
  practiceExplainersTable,
  practiceIsomaltTable,
  practiceIsomaltXylitolHeatTable,
  practiceMisconceptionsTable,
  practiceMoistureAwTable,
  practiceMouldsTable,
  practiceOtherBoilsTable,
  practicePanSpreadTable,
  practicePiecesTable,
  practiceSensitivityTable,
  practiceStorageTable,
  practiceThermometersTable,
  practiceXylitolLimitTable,
  practiceYieldLossTable,
] as const;
