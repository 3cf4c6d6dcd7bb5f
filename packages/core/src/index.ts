/**
 * The science of boiled sugar: pure functions, plain objects, every number with its source.
 *
 * @module main
 */
export { isNone } from './foundation/results/is-none.js';
export type { Checked, ModelWarning, None, Span, WarningCode } from './foundation/results/types.js';
export {
  celsiusFromFahrenheit,
  fahrenheitDifferenceFromKelvin,
  fahrenheitFromCelsius,
  feetFromMetres,
  gFromLb,
  gFromOz,
  hpaFromPa,
  inHgFromPa,
  kelvinDifferenceFromFahrenheit,
  lbFromG,
  metresFromFeet,
  mmHgFromPa,
  ozFromG,
  paFromHpa,
  paFromInHg,
  paFromMmHg,
} from './foundation/units/index.js';
export type { Cited, CitedConstants, CitedRange, Grade } from './foundation/validity/constants.js';
export {
  isModelRangeError,
  ModelRangeError,
  type RangeErrorCode,
  type RangeErrorDetails,
} from './foundation/validity/model-range-error.js';
export {
  ADVICE_THRESHOLDS,
  type Advice,
  type AdviceCode,
  applyChanges,
  type Change,
  type Remedy,
  type RemedyCode,
  type Severity,
} from './job/advice/index.js';
export { BATCH_LIMITS } from './job/batch/limits.js';
export type { Problem, ProblemCode } from './job/batch/problems.js';
export type {
  Aim,
  Air,
  Amount,
  BatchDocument,
  Cook,
  CookTarget as BatchTarget,
  FormulaLine,
  Handling,
  Hob,
  Kitchen,
  LineDetails,
  MakeUpWater,
  Measure,
  Mould,
  MouldKind,
  OwnIngredient,
  Pan,
  Pieces,
  ShareOfIngredient,
  Store,
  Thermometer,
  ThermometerKind,
  Water,
  When,
  Wrap,
} from './job/batch/types.js';
export type { PlanModelId } from './job/plan/models.js';
export { type PlanResult, planBatch } from './job/plan/plan-batch.js';
export type {
  CautionId,
  CurvePoint,
  Figure,
  Moment,
  PlanDocument,
  PlanModel,
  PlannedCaution,
  PlannedComposition,
  PlannedKeeping,
  PlannedKitchen,
  PlannedLateWater,
  PlannedLine,
  PlannedPan,
  PlannedPolyols,
  PlannedPour,
  PlannedStep,
  PlannedTarget,
  PlannedTaste,
  PlannedYield,
  StepId,
  TakenDefault,
  WindowEnd,
} from './job/plan/types.js';
export {
  absolutePressure,
  SEA_LEVEL_PRESSURE_PA,
  standardPressure,
  stationPressure,
} from './matter/air/index.js';
export {
  INGREDIENT_IDS,
  type Ingredient,
  type IngredientId,
  type IngredientKind,
  ingredient,
} from './matter/ingredients/index.js';
export {
  type KitchenMeasure,
  MEASURE_UNITS,
  type MeasuredGrams,
  type MeasureUnit,
  measureForms,
  measureToGrams,
} from './matter/measures/index.js';
export {
  type Apart,
  combine,
  evaporateTo,
  type Mixture,
  mixture,
  type Part,
  type Solid,
  scaleMixture,
  solutionOf,
} from './matter/mixture/index.js';
export {
  CONVERSION_DEXTROSE_EQUIVALENTS,
  type Conversion,
  dextroseEquivalentFromProfile,
  molarMassFromDextroseEquivalent,
  molarMassFromProfile,
  type Profile,
  profileFromDextroseEquivalent,
  typicalProfile,
} from './matter/saccharides/index.js';
export type { ApartKind, SpeciesId } from './matter/species.js';
export { waterBoilingPoint, waterLatentHeat, waterVapourPressure } from './matter/water/index.js';
export {
  BOIL_TESTED_C,
  BOIL_TESTED_PA,
  type BoilingPoint,
  boilingPoint,
  type CookTarget,
  cookTarget,
  DISSOLVED_DOMAIN,
  DISSOLVED_TESTED,
  type DrySolidsAtBoil,
  drySolidsAtBoil,
  type NoBoil,
  waterActivity,
} from './models/boiling/index.js';
export {
  type CandyDensity,
  type CandyKind,
  type CandyState,
  candyMassDensity,
  cavityFromPieceMass,
  chargeDensity,
  densityFromBrix,
  pieceMassFromCavity,
} from './models/density/index.js';
export { dryGlassTransition, type GlassTransition, glassTransition } from './models/glass/index.js';
export { SUCROSE_SOLUBILITY_DOMAIN_C, sucroseSolubility } from './models/graining/index.js';
export {
  type AltitudeRules,
  type KitchenAir,
  type RuleAnswer,
  altitudeRules,
  type KitchenTemperature,
  type StageAim,
  type StageGapId,
  type StageId,
  type StageRange,
  type StageTarget,
  type Standing,
  type SugarStage,
  stageLadder,
  stagesApply,
  stageTarget,
  sugarStage,
  temperatureAtKitchen,
} from './models/stages/index.js';
export {
  type RelativeSweetness,
  relativeSweetness,
  type TastingOptions,
} from './models/sweetness/index.js';
export {
  readingSpread,
  type SpreadCause,
  type SpreadCauseId,
  type Correction,
  stemCorrection,
  type ThermometerChecks,
  type ThermometerReading,
  type TrueTemperature,
  thermometerLag,
  thermometerReading,
  trueFromReading,
} from './models/thermometer/index.js';
