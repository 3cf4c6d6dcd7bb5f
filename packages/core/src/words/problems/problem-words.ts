import type { Catalogue } from '../types.js';

/** What to change, for each problem. `{place}` is where, `{field}` what, `{received}` what stands there. */
export const PROBLEM_WORDS = {
  'not-json':
    'This is not JSON. Look for a missing comma, quote or bracket near line {line}, column {column}.',
  'too-large': 'The document is larger than 256 kB. Take something out.',
  'too-deep': 'The document is nested more than 12 levels deep. Make it flatter.',
  'too-many-lines': 'The formula has more than 200 lines. Put some of them together.',
  'hostile-key': 'The name ‘{key}’ cannot be used here. Take another.',
  'wrong-format': 'The format should be {known}; {received} is written there.',
  'newer-format': 'This was made by a newer version: {received}. Bring the library up to date.',
  missing: 'Fill in {field}: {known}. | Fill in {field}.',
  'wrong-type':
    '{field} should be {known}; {received} is written there. | {field} is of another kind than {received}.',
  'unknown-field':
    'There is no field ‘{key}’. Did you mean {known}? | There is no field ‘{key}’. Take it out.',
  'unknown-name':
    '{received} is not a name known here. Did you mean {known}? | {received} is not a name known here.',
  'one-of': 'Give exactly one of {allKnown}.',
  'name-taken': 'The name {received} is an ingredient of the library already. Take another.',
  'not-a-number': '{field} should be a number; {received} is written there.',
  'outside-range': '{field} can lie between {low} and {high}; {received} is written there.',
  'not-whole': '{field} is a whole number: {wholeBelow} or {wholeAbove}?',
  'perhaps-a-percentage':
    'Fractions run from 0 to 1. Is {received} a percentage? Then write {asFraction}.',
  'perhaps-fahrenheit': '{received} °C? Probably {received} °F: then write {asCelsius}.',
  'shares-do-not-sum': 'The shares have to sum to 1; they sum to {sum}.',
  'shares-need-a-size':
    'Shares say how much of what, not how big. Give the number and the size of the pieces, or the finished mass.',
  'share-of-nothing': 'There is no such line to take a share of. Add it, or give grams.',
  'circular-share': 'This is a share of itself, by way of other lines. Give one of them in grams.',
  'only-water':
    'Only water can make up for the water of a dried syrup. Change the ingredient, or the amount.',
  'only-starch-syrup': 'Only a starch syrup has {field}. Take it out, or change the ingredient.',
  'no-weight-for-measure': 'Nobody has weighed this by the spoon or cup. Give grams.',
  'which-dram': 'A dram is a fluid dram (3.70 ml) or an avoirdupois dram (1.77 g). Say which.',
  'which-unit': 'Say which unit: {anyKnown}.',
  'nothing-to-cook': 'There is nothing to boil. Add sugar, a syrup or a sugar alcohol.',
  'no-water':
    'There is too little water to dissolve it in. Add about a third of the mass of the sugar.',
  'two-cavity-sizes': 'Two cavity sizes are given, here and in {also}. Keep one.',
  'piece-without-size': 'Give the size of a piece, in grams or as a cavity.',
  'below-first-boil': 'At that stop the mix does not boil yet. Ask for a hotter one.',
  'already-drier':
    'The mix is drier than that before it boils. Add water, or ask for a drier {sweet}.',
  'off-scale-dry': 'That is drier than anything a boil is known for. Ask for a little more water.',
  'vacuum-deeper-than-air':
    'The vacuum is deeper than the air there is. Look at the gauge and its unit.',
  'equal-readings': 'Ice and boiling water cannot read the same. Take both readings again.',
  'readings-disagree':
    'This thermometer shows {boilingWaterReadingC} in boiling water, your second one {waterBoilsAtC}. More than five degrees apart, one of them cannot be trusted: check both. | This thermometer shows {boilingWaterReadingC} in boiling water. No kitchen boils water below {lowC} or above {highC}: give your altitude, and the thermometer is allowed for.',
  'late-water-exceeds-target':
    'What goes in late brings {lateWaterG} of water, more than the {sweet} may keep. Take less of it, powder colour or a flavour in oil, or ask for more water left.',
  'beyond-the-knee':
    'That hardness lies where hotter buys little. Ask for less, or take less xylitol.',
  'glass-point-out-of-reach':
    'Even dry, this mix stays hard only up to about {hardestC}. Ask for less, or change the mix.',
  'stage-leaves-it-soft':
    'Cooked to this stage the mix is soft in your room, even if the model is kind. Ask for how warm it must stay hard.',
} as const satisfies Catalogue['problems'];

/** What to change when a function of the library refuses a number. */
export const RANGE_ERROR_WORDS = {
  'not-a-number': 'Give a number. Text, nothing and NaN cannot be computed with.',
  'outside-range':
    'Give a number within the limits. Fractions run from 0 to 1, temperatures are in °C, masses in grams.',
  'not-allowed-together': 'These cannot be given together. Leave one out.',
  'unknown-name': 'That name is not known here. Look for it in the list of ids.',
} as const satisfies Catalogue['rangeErrors'];
