/**
 * Heat: what a boil costs, how long it takes on a hob, and how long it cools. The boil follows the
 * boiling curve of its own mass; everything about pans, flames and air is an estimate.
 */
export { boilDown } from './boil-down.js';
export { type BoilDownMoment, boilDownPoint } from './boil-down-point.js';
export type {
  BoilDown,
  BoilDownHeat,
  BoilDownOptions,
  BoilDownPoint,
  BoilDownTarget,
  NoBoilDown,
} from './boil-down-types.js';
export { type CarryOver, carryOver } from './carry-over.js';
export {
  BOIL_DOWN_DOMAIN_PA,
  BOIL_DOWN_SPREAD,
  COOLING_AIR_C,
  COOLING_SPREAD_TIMES,
  COOLING_TESTED_BIOT,
  COOLING_W_PER_M2K,
  DISSOLUTION_CONSTANTS,
  DRY_MELT_CONSTANTS,
  HEAT_DOMAIN_C,
  HOB_DOMAIN_W,
  HOB_EFFICIENCY,
  KETTLE_TEST_SPREAD,
  PAN_ASSUMPTIONS,
  PAN_CONSTANTS,
  PIECE_CONSTANTS,
  SPECIFIC_HEAT_CONSTANTS,
  STEAM_CONSTANTS,
  SUGAR_CRYSTAL_CONSTANTS,
} from './constants.js';
export {
  type CoolingOptions,
  type CoolingSurface,
  type CoolingTime,
  coolingTime,
  type NoCooling,
  PIECE_MASS_DOMAIN_G,
} from './cooling-time.js';
export { POWER_STEPS_DOMAIN, type PowerStep } from './flame.js';
export {
  type HeatSource,
  type HobOptions,
  hobPower,
  KETTLE_TEST_DOMAIN_MIN,
  PAN_MASS_DOMAIN_G,
} from './hob-power.js';
export { type PanCoolingTime, panCoolingTime } from './pan-cooling-time.js';
export { PAN_DIAMETER_DOMAIN_MM, type PanLossOptions } from './pan-loss.js';
export { dissolutionHeat, evaporationHeat } from './phase-heat.js';
export {
  BOIL_RATE_DOMAIN_K_PER_MIN,
  LAG_DOMAIN_S,
  type PowerForRate,
  powerForRate,
} from './power-for-rate.js';
export { type SpecificHeat, specificHeat, sucroseCrystalSpecificHeat } from './specific-heat.js';
