import type { ModelWarning } from '../../foundation/results/types.js';
import { ingredientName } from '../names/ingredients.js';
import { fieldName } from '../names/places.js';
import { speciesName } from '../names/species.js';
import { fillAll } from '../text/fill.js';
import type { DisplayOptions } from '../types.js';
import { formatByKey } from '../units/by-key.js';
import { WARNING_PARAMETERS, WARNING_WORDS } from './warning-words.js';

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
  const { code, parameter, value, limits, subject } = warning;
  const share = formatByKey('share', value, options);
  const names: Record<string, string> = {
    parameter: Object.hasOwn(WARNING_PARAMETERS, parameter)
      ? WARNING_PARAMETERS[parameter as keyof typeof WARNING_PARAMETERS]
      : fieldName(parameter),
    value: formatByKey(parameter, value, options),
    low: formatByKey(parameter, limits[0], options),
    high: formatByKey(parameter, limits[1], options),
    share,
  };
  // The sweetness is a sum over all that is dry; what boils or keeps, over what is dissolved.
  if (parameter === 'shareOfDrySolids') names.tasteShare = share;
  if (parameter === 'shareOfAcids') names.sourShare = share;
  if (parameter === 'shareOfLabel') names.labelShare = share;
  if (subject !== undefined) {
    names.subject =
      code === 'shown-from-memory' ? ingredientName(subject, options) : speciesName(subject);
    if (parameter === 'addedSweetness') names.sweetener = speciesName(subject);
    if (parameter === 'solubleMassFraction') names.solute = speciesName(subject);
  }
  return fillAll(WARNING_WORDS[code], { names }, options);
}
