// biome-ignore-all format: one row a line, to be held against its source

import type { Ingredient, IngredientId } from './types.js';

/** Acids, their salts, bicarbonate and salt. */
export const ACIDS_AND_SALTS = {
  'citric-acid': {
    kind: 'acid',
    drySolidsMassFraction: { value: 0.995, low: 0.99, high: 1, source: 'common-practice', grade: 'practice' },
    solids: { 'citric-acid': 1 },
    compositionGrade: 'derived',
  },
  'citric-acid-monohydrate': {
    kind: 'acid',
    drySolidsMassFraction: { value: 0.9143, source: 'definition', grade: 'derived' },
    solids: { 'citric-acid': 1 },
    compositionGrade: 'derived',
  },
  'malic-acid': {
    kind: 'acid',
    drySolidsMassFraction: { value: 0.995, low: 0.99, high: 1, source: 'common-practice', grade: 'practice' },
    solids: { 'malic-acid': 1 },
    compositionGrade: 'derived',
  },
  'tartaric-acid': {
    kind: 'acid',
    drySolidsMassFraction: { value: 0.995, low: 0.99, high: 1, source: 'common-practice', grade: 'practice' },
    solids: { 'tartaric-acid': 1 },
    compositionGrade: 'derived',
  },
  'lactic-acid': {
    kind: 'acid',
    drySolidsMassFraction: { value: 0.88, low: 0.8, high: 0.9, source: 'common-practice', grade: 'practice' },
    solids: { 'lactic-acid': 1 },
    compositionGrade: 'derived',
  },
  'cream-of-tartar': {
    kind: 'acid',
    drySolidsMassFraction: { value: 0.998, source: 'assumption', grade: 'assumed' },
    solids: { 'potassium-hydrogen-tartrate': 1 },
    compositionGrade: 'derived',
  },
  'sodium-citrate': {
    kind: 'salt',
    drySolidsMassFraction: { value: 0.8775, source: 'definition', grade: 'derived' },
    solids: { 'sodium-citrate': 1 },
    compositionGrade: 'derived',
  },
  'sodium-lactate': {
    kind: 'salt',
    drySolidsMassFraction: { value: 0.6, low: 0.58, high: 0.62, source: 'common-practice', grade: 'practice' },
    solids: { 'sodium-lactate': 1 },
    compositionGrade: 'derived',
  },
  'sodium-bicarbonate': {
    kind: 'salt',
    drySolidsMassFraction: { value: 1, source: 'definition', grade: 'derived' },
    solids: { 'sodium-bicarbonate': 1 },
    compositionGrade: 'derived',
  },
  salt: {
    kind: 'salt',
    drySolidsMassFraction: { value: 1, low: 0.995, high: 1, source: 'common-practice', grade: 'practice' },
    solids: { 'sodium-chloride': 1 },
    compositionGrade: 'derived',
  },
} as const satisfies Partial<Record<IngredientId, Ingredient>>;
