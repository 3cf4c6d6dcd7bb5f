export { KITCHEN_PRESSURE_DOMAIN_PA, type KitchenAir } from './kitchen-pressure.js';
export {
  type AltitudeRules,
  altitudeRules,
  KITCHEN_RULE_CONSTANTS,
  KITCHEN_RULES_DOMAIN_C,
  type RuleAnswer,
} from './kitchen-rules.js';
export { DRY_SUGAR_FROM_F, type Rung, STAGE_RUNGS } from './rungs.js';
export { stageLadder } from './stage-ladder.js';
export { type StageTarget, stageTarget } from './stage-target.js';
export { STAGE_NAME_CONSTANTS, stagesApply } from './stages-apply.js';
export { type Standing, SUGAR_STAGE_DOMAIN_C, type SugarStage, sugarStage } from './sugar-stage.js';
export { type KitchenTemperature, temperatureAtKitchen } from './temperature-at-kitchen.js';
export type { StageAim, StageGapId, StageId, StageRange } from './types.js';
