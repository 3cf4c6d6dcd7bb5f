/**
 * The bibliography: every source a constant of the library names.
 *
 * @module sources
 */

import type { SourceId } from './ids.js';
import { ACID_SOURCES } from './registry/acids.js';
import { BOILING_SOURCES } from './registry/boiling.js';
import { CAUTION_SOURCES } from './registry/cautions.js';
import { GENERAL_SOURCES } from './registry/general.js';
import { GRAINING_SOURCES } from './registry/graining.js';
import { HEAT_SOURCES } from './registry/heat.js';
import { JOB_SOURCES } from './registry/job.js';
import { KEEPING_SOURCES } from './registry/keeping.js';
import { MOISTURE_SOURCES } from './registry/moisture.js';
import { NUTRITION_SOURCES } from './registry/nutrition.js';
import { PAN_SOURCES } from './registry/pan.js';
import { STAGE_SOURCES } from './registry/stages.js';
import { SYRUP_SOURCES } from './registry/syrups.js';
import { TASTE_SOURCES } from './registry/taste.js';
import { WATER_SOURCES } from './registry/water.js';
import type { Source } from './types.js';

export type { SourceId } from './ids.js';
export type { Source } from './types.js';

/** Every source, by its key. */
export const SOURCES: Readonly<Record<SourceId, Source>> = {
  ...GENERAL_SOURCES,
  ...WATER_SOURCES,
  ...BOILING_SOURCES,
  ...STAGE_SOURCES,
  ...SYRUP_SOURCES,
  ...KEEPING_SOURCES,
  ...CAUTION_SOURCES,
  ...JOB_SOURCES,
  ...PAN_SOURCES,
  ...HEAT_SOURCES,
  ...ACID_SOURCES,
  ...MOISTURE_SOURCES,
  ...GRAINING_SOURCES,
  ...TASTE_SOURCES,
  ...NUTRITION_SOURCES,
};

/**
 * A source as one line of a bibliography.
 *
 * @param id - Key of the source, as constants name it.
 * @returns authors, year, title, container and address where there is one.
 * @example
 * cite('common-practice') // 'Common practice of the trade.'
 */
export function cite(id: SourceId): string {
  const { authors, year, title, container, address } = SOURCES[id];
  const head = authors === '' ? '' : `${authors} (${year}). `;
  const tail = [container, address].filter((part) => part !== undefined).join('. ');
  return `${head}${title}.${tail === '' ? '' : ` ${tail}.`}`;
}
