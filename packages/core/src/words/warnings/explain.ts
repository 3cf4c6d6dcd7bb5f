import type { ModelWarning } from '../../foundation/results/types.js';
import { fieldName } from '../names/places.js';
import { speciesName } from '../names/species.js';
import { fillAll } from '../text/fill.js';
import type { DisplayOptions } from '../types.js';
import { formatByKey } from '../units/by-key.js';
import { WARNING_WORDS } from './warning-words.js';

/**
 * A warning of a model in a sentence or two.
 *
 * @param warning - From `warnings` of any result or plan.
 * @param options - Units, region and locale.
 * @example
 * explain({ code: 'outside-tested-range', parameter: 'elevationM', value: 10_500, limits: [-500, 10_000] })
 * // 'The altitude: 10 500 m here, tested from −500 m to 10 000 m. The answer stands, with less behind it.'
 */
export function explain(warning: ModelWarning, options: DisplayOptions = {}): string {
  const { parameter, value, limits, subject } = warning;
  const names: Record<string, string> = {
    parameter: fieldName(parameter),
    value: formatByKey(parameter, value, options),
    low: formatByKey(parameter, limits[0], options),
    high: formatByKey(parameter, limits[1], options),
    share: formatByKey('share', value, options),
  };
  if (subject !== undefined) names.subject = speciesName(subject);
  return fillAll(WARNING_WORDS[warning.code], { names }, options);
}
