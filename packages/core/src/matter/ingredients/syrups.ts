// biome-ignore-all format: one row a line, to be held against its source

import type { Ingredient, IngredientId } from './types.js';

/** Starch syrups, liquid and dried. */
export const STARCH_SYRUPS = {
  'glucose-syrup': {
    kind: 'starch-syrup',
    drySolidsMassFraction: { value: 0.8, low: 0.78, high: 0.84, source: 'common-practice', grade: 'practice' },
    dextroseEquivalent: { value: 42, source: 'common-practice', grade: 'practice' },
    conversion: 'acid',
    compositionGrade: 'derived',
  },
  'dried-glucose-syrup': {
    kind: 'starch-syrup',
    drySolidsMassFraction: { value: 0.96, low: 0.95, high: 0.97, source: 'common-practice', grade: 'practice' },
    dextroseEquivalent: { value: 42, low: 20, high: 47, source: 'assumption', grade: 'assumed' },
    conversion: 'acid',
    compositionGrade: 'derived',
  },
  maltodextrin: {
    kind: 'starch-syrup',
    drySolidsMassFraction: { value: 0.95, low: 0.93, high: 0.97, source: 'common-practice', grade: 'practice' },
    dextroseEquivalent: { value: 10, low: 5, high: 19.9, source: 'common-practice', grade: 'practice' },
    compositionGrade: 'derived',
  },
  'high-fructose-syrup': {
    kind: 'starch-syrup',
    drySolidsMassFraction: { value: 0.77, low: 0.71, high: 0.8, source: 'recalled-compositions', grade: 'memory' },
    solids: { fructose: 0.55, glucose: 0.42, 'syrup-oligosaccharides': 0.03 },
    compositionGrade: 'memory',
  },
} as const satisfies Partial<Record<IngredientId, Ingredient>>;
