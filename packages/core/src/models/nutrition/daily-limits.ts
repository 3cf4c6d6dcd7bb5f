// biome-ignore-all format: one substance a line, to be held against its source

import type { CitedConstants } from '../../foundation/validity/constants.js';

const source = 'ec-sweeteners-2021', recalled = 'recalled-nutrition';
const primary = 'primary', secondary = 'secondary';

/**
 * Acceptable daily intakes, mg for each kg of body weight. For a caution, not for a plan: nobody
 * knows what else a person eats. Limits are revised; later European rises are recalled, not used.
 */
export const DAILY_LIMITS_MG_PER_KG = {
  aspartame: { value: 40, source, grade: primary, locator: 'EU; 50 in the US' },
  sucralose: { value: 15, source, grade: primary, locator: 'EU; 5 in the US' },
  'acesulfame-k': { value: 9, source, grade: primary, locator: 'EU; 15 in the US' },
  saccharin: { value: 5, source, grade: primary, locator: 'EU; 15 in the US' },
  'steviol-glycosides': { value: 4, source, grade: primary, note: 'as steviol' },
  erythritol: { value: 500, source: 'efsa-erythritol-2023', grade: secondary },
  menthol: { value: 4, source: recalled, grade: 'memory' },
  eugenol: { value: 2.5, source: recalled, grade: 'memory' },
  coumarin: { value: 0.1, source: recalled, grade: 'memory' },
} as const satisfies CitedConstants;
