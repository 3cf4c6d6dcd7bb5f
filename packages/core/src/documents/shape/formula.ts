import { conversionShape, profileShape } from './composition.js';
import type { Fields, Shape } from './types.js';

const measureShape = {
  fields: {
    quantity: 'number',
    unit: [
      'kg',
      'oz',
      'lb',
      'ml',
      'us-cup',
      'metric-cup',
      'us-tablespoon',
      'metric-tablespoon',
      'au-tablespoon',
      'us-teaspoon',
      'metric-teaspoon',
      'us-fluid-ounce',
      'us-fluid-dram',
      'drop',
    ],
    'form?': 'string',
  },
} as const satisfies Shape;

const whenShape = {
  either: [['start', 'first-boil', 'off-heat'], { fields: { atC: 'number' } }],
} as const satisfies Shape;

/** What a line says before its amount. */
const before = {
  ingredient: 'string',
  'drySolidsMassFraction?': 'number',
  'dextroseEquivalent?': 'number',
  'conversion?': conversionShape,
  'profile?': profileShape,
} as const satisfies Fields;

/** What a line says after its amount. */
const after = { 'when?': whenShape, 'asWritten?': 'string' } as const satisfies Fields;

/** A line of the formula: exactly one amount, hence one branch for each. */
export const formulaLineShape = {
  either: [
    { fields: { ...before, massG: 'number', ...after } },
    { fields: { ...before, measure: measureShape, ...after } },
    { fields: { ...before, shareOfDrySolids: 'number', ...after } },
    { fields: { ...before, shareOfFinished: 'number', ...after } },
    {
      fields: {
        ...before,
        shareOfIngredient: { fields: { ingredient: 'string', share: 'number' } },
        ...after,
      },
    },
    {
      fields: {
        ...before,
        makeUpWaterFor: { fields: { ingredient: 'string', drySolidsMassFraction: 'number' } },
        ...after,
      },
    },
  ],
} as const satisfies Shape;
