import type { ACID_SOURCES } from './registry/acids.js';
import type { BOILING_SOURCES } from './registry/boiling.js';
import type { CAUTION_SOURCES } from './registry/cautions.js';
import type { GENERAL_SOURCES } from './registry/general.js';
import type { GRAINING_SOURCES } from './registry/graining.js';
import type { HEAT_SOURCES } from './registry/heat.js';
import type { JOB_SOURCES } from './registry/job.js';
import type { KEEPING_SOURCES } from './registry/keeping.js';
import type { MOISTURE_SOURCES } from './registry/moisture.js';
import type { NUTRITION_SOURCES } from './registry/nutrition.js';
import type { PAN_SOURCES } from './registry/pan.js';
import type { STAGE_SOURCES } from './registry/stages.js';
import type { SYRUP_SOURCES } from './registry/syrups.js';
import type { TASTE_SOURCES } from './registry/taste.js';
import type { WATER_SOURCES } from './registry/water.js';

/** The key of an entry in the bibliography. */
export type SourceId =
  | keyof typeof GENERAL_SOURCES
  | keyof typeof WATER_SOURCES
  | keyof typeof BOILING_SOURCES
  | keyof typeof STAGE_SOURCES
  | keyof typeof SYRUP_SOURCES
  | keyof typeof KEEPING_SOURCES
  | keyof typeof CAUTION_SOURCES
  | keyof typeof JOB_SOURCES
  | keyof typeof PAN_SOURCES
  | keyof typeof HEAT_SOURCES
  | keyof typeof ACID_SOURCES
  | keyof typeof MOISTURE_SOURCES
  | keyof typeof GRAINING_SOURCES
  | keyof typeof TASTE_SOURCES
  | keyof typeof NUTRITION_SOURCES;
