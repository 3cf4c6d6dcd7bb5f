import type { Shape } from './types.js';

const speciesIds = [
  'sucrose',
  'glucose',
  'fructose',
  'maltose',
  'lactose',
  'trehalose',
  'isomaltulose',
  'allulose',
  'tagatose',
  'syrup-oligosaccharides',
  'isomalt',
  'maltitol',
  'xylitol',
  'sorbitol',
  'mannitol',
  'erythritol',
  'lactitol',
  'glycerol',
  'propylene-glycol',
  'hydrogenated-oligosaccharides',
  'polydextrose',
  'inulin',
  'citric-acid',
  'malic-acid',
  'tartaric-acid',
  'lactic-acid',
  'potassium-hydrogen-tartrate',
  'sodium-citrate',
  'sodium-lactate',
  'sodium-bicarbonate',
  'sodium-chloride',
  'sucralose',
  'acesulfame-k',
  'aspartame',
  'saccharin',
  'steviol-glycosides',
  'protein',
  'ash',
] as const;

/** How the starch of a syrup was cut. */
export const conversionShape = ['acid', 'enzyme', 'high-maltose'] as const satisfies Shape;

/** Shares of chain lengths. */
export const profileShape = {
  fields: { dp1: 'number', dp2: 'number', dp3: 'number', dp4plus: 'number' },
} as const satisfies Shape;

/** An ingredient of one's own. */
export const ownIngredientShape = {
  fields: {
    kind: [
      'water',
      'sugar',
      'starch-syrup',
      'polyol',
      'fibre',
      'acid',
      'salt',
      'intense-sweetener',
      'flavour',
      'colour',
      'food',
    ],
    'name?': 'string',
    drySolidsMassFraction: 'number',
    'solids?': { entries: 'number', names: speciesIds },
    'apart?': { entries: 'number', names: ['fat', 'oil', 'ethanol', 'pigment', 'insoluble'] },
    'dextroseEquivalent?': 'number',
    'conversion?': conversionShape,
    'maxAdditionC?': 'number',
  },
} as const satisfies Shape;
