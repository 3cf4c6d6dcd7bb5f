import { stagesAltitudeComputedTable } from './stages-altitude-computed.js';
import { stagesAltitudeCsuTable } from './stages-altitude-csu.js';
import { stagesAltitudeRulesTable } from './stages-altitude-rules.js';
import { stagesBoilingCrosscheckTable } from './stages-boiling-crosscheck.js';
import { stagesColdWaterTestTable } from './stages-cold-water-test.js';
import { stagesConsensusTable } from './stages-consensus.js';
import { stagesHistoricTable } from './stages-historic.js';
import { stagesMeltTable } from './stages-melt.js';
import { stagesPressureComputedTable } from './stages-pressure-computed.js';
import { stagesSourceListTable } from './stages-source-list.js';
import { stagesSourcesTable } from './stages-sources.js';
import { stagesTradeTermsEnTable } from './stages-trade-terms-en.js';
import { stagesTradeTermsFrTable } from './stages-trade-terms-fr.js';

export {
  stagesAltitudeComputedTable,
  stagesAltitudeCsuTable,
  stagesAltitudeRulesTable,
  stagesBoilingCrosscheckTable,
  stagesColdWaterTestTable,
  stagesConsensusTable,
  stagesHistoricTable,
  stagesMeltTable,
  stagesPressureComputedTable,
  stagesSourceListTable,
  stagesSourcesTable,
  stagesTradeTermsEnTable,
  stagesTradeTermsFrTable,
};

/** Every table of this family. */
export const STAGES_TABLES = [
  stagesAltitudeComputedTable,
  stagesAltitudeCsuTable,
  stagesAltitudeRulesTable,
  stagesBoilingCrosscheckTable,
  stagesColdWaterTestTable,
  stagesConsensusTable,
  stagesHistoricTable,
  stagesMeltTable,
  stagesPressureComputedTable,
  stagesSourceListTable,
  stagesSourcesTable,
  stagesTradeTermsEnTable,
  stagesTradeTermsFrTable,
] as const;
