// biome-ignore-all format: one row a line, to be held against its source

import type { Ingredient, IngredientId } from './types.js';

/**
 * Water, sugars, and what is mostly free sugars. The acid of honey, mostly gluconic, stands under
 * citric acid, the nearest the models know.
 */
export const SUGARS = {
  water: {
    kind: 'water',
    drySolidsMassFraction: { value: 0, source: 'definition', grade: 'derived' },
    compositionGrade: 'derived',
  },
  sucrose: {
    kind: 'sugar',
    drySolidsMassFraction: { value: 1, low: 0.999, high: 1, source: 'definition', grade: 'derived' },
    solids: { sucrose: 1 },
    compositionGrade: 'derived',
  },
  glucose: {
    kind: 'sugar',
    drySolidsMassFraction: { value: 1, low: 0.98, high: 1, source: 'definition', grade: 'derived' },
    solids: { glucose: 1 },
    compositionGrade: 'derived',
  },
  'dextrose-monohydrate': {
    kind: 'sugar',
    drySolidsMassFraction: { value: 0.9091, low: 0.9, high: 0.915, source: 'definition', grade: 'derived' },
    solids: { glucose: 1 },
    compositionGrade: 'derived',
  },
  fructose: {
    kind: 'sugar',
    drySolidsMassFraction: { value: 0.998, low: 0.995, high: 1, source: 'common-practice', grade: 'practice' },
    solids: { fructose: 1 },
    compositionGrade: 'derived',
  },
  maltose: {
    kind: 'sugar',
    drySolidsMassFraction: { value: 0.95, low: 0.94, high: 1, source: 'recalled-compositions', grade: 'memory' },
    solids: { maltose: 1 },
    compositionGrade: 'derived',
  },
  lactose: {
    kind: 'sugar',
    drySolidsMassFraction: { value: 1, low: 0.995, high: 1, source: 'definition', grade: 'derived' },
    solids: { lactose: 1 },
    compositionGrade: 'derived',
  },
  'lactose-monohydrate': {
    kind: 'sugar',
    drySolidsMassFraction: { value: 0.95, source: 'definition', grade: 'derived' },
    solids: { lactose: 1 },
    compositionGrade: 'derived',
  },
  trehalose: {
    kind: 'sugar',
    drySolidsMassFraction: { value: 1, source: 'definition', grade: 'derived' },
    solids: { trehalose: 1 },
    compositionGrade: 'derived',
  },
  'trehalose-dihydrate': {
    kind: 'sugar',
    drySolidsMassFraction: { value: 0.9048, source: 'definition', grade: 'derived' },
    solids: { trehalose: 1 },
    compositionGrade: 'derived',
  },
  isomaltulose: {
    kind: 'sugar',
    drySolidsMassFraction: { value: 0.95, low: 0.94, high: 1, source: 'recalled-compositions', grade: 'memory' },
    solids: { isomaltulose: 1 },
    compositionGrade: 'derived',
  },
  allulose: {
    kind: 'sugar',
    drySolidsMassFraction: { value: 0.998, low: 0.98, high: 1, source: 'assumption', grade: 'assumed' },
    solids: { allulose: 1 },
    compositionGrade: 'derived',
  },
  tagatose: {
    kind: 'sugar',
    drySolidsMassFraction: { value: 0.998, low: 0.98, high: 1, source: 'assumption', grade: 'assumed' },
    solids: { tagatose: 1 },
    compositionGrade: 'derived',
  },
  'invert-syrup': {
    kind: 'sugar',
    drySolidsMassFraction: { value: 0.77, low: 0.62, high: 0.82, source: 'common-practice', grade: 'practice' },
    solids: { glucose: 0.475, fructose: 0.475, sucrose: 0.05 },
    compositionGrade: 'assumed',
  },
  honey: {
    kind: 'sugar',
    drySolidsMassFraction: { value: 0.828, low: 0.771, high: 0.866, source: 'white-1962', grade: 'secondary' },
    solids: { fructose: 0.461, glucose: 0.378, maltose: 0.088, sucrose: 0.016, 'syrup-oligosaccharides': 0.018, 'citric-acid': 0.007, ash: 0.002 },
    apart: { insoluble: 0.03 },
    compositionGrade: 'secondary',
  },
  'golden-syrup': {
    kind: 'sugar',
    drySolidsMassFraction: { value: 0.82, low: 0.8, high: 0.84, source: 'recalled-compositions', grade: 'memory' },
    solids: { sucrose: 0.4, glucose: 0.29, fructose: 0.29, ash: 0.02 },
    compositionGrade: 'memory',
  },
} as const satisfies Partial<Record<IngredientId, Ingredient>>;
