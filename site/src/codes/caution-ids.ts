import type { CautionId } from 'vitrose';

/** Every caution; the type of the record keeps the list whole. */
const KNOWN: Readonly<Record<CautionId, true>> = {
  'hot-sugar': true,
  'burn-first-aid': true,
  'never-water-on-hot-mass': true,
  'weighing-hot-pan': true,
  'pan-a-third-full': true,
  'above-165': true,
  unattended: true,
  'no-glass-thermometer': true,
  'vacuum-vessels': true,
  'late-liquids': true,
  'alcohol-flavour': true,
  'glycol-flavour-vapour': true,
  'strong-oils': true,
  'acid-powder': true,
  'bicarbonate-foams': true,
  'mould-heat': true,
  'dogs-xylitol': true,
  choking: true,
  'honey-under-one': true,
  'polyol-child': true,
  laxative: true,
  'fructose-intolerance': true,
  phenylalanine: true,
  'sour-teeth': true,
  allergens: true,
  'sweetener-heat': true,
  'sweetener-daily-limits': true,
  'acid-in-isomalt': true,
  'limits-are-local': true,
  'not-for-illness': true,
};

/** In the order a cook meets them: at the pan, with what goes in, for those who eat. */
export const CAUTION_IDS = Object.keys(KNOWN) as readonly CautionId[];
