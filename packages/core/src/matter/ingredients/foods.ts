// biome-ignore-all format: one row a line, to be held against its source

import type { Ingredient, IngredientId } from './types.js';

/** Milk, fat, nuts, gelatine and egg; only the boil of the sugars beside them is modelled. */
export const FOODS = {
  butter: {
    kind: 'food',
    drySolidsMassFraction: { value: 0.84, low: 0.8, high: 0.85, source: 'recalled-compositions', grade: 'memory' },
    solids: { protein: 0.01, lactose: 0.008, ash: 0.017 },
    apart: { fat: 0.965 },
    compositionGrade: 'memory',
  },
  cream: {
    kind: 'food',
    drySolidsMassFraction: { value: 0.42, low: 0.36, high: 0.5, source: 'recalled-compositions', grade: 'memory' },
    solids: { protein: 0.049, lactose: 0.073, ash: 0.021 },
    apart: { fat: 0.857 },
    compositionGrade: 'memory',
  },
  'whole-milk': {
    kind: 'food',
    drySolidsMassFraction: { value: 0.12, low: 0.115, high: 0.135, source: 'recalled-compositions', grade: 'memory' },
    solids: { protein: 0.265, lactose: 0.4, ash: 0.06 },
    apart: { fat: 0.275 },
    compositionGrade: 'memory',
  },
  'condensed-milk': {
    kind: 'food',
    drySolidsMassFraction: { value: 0.73, low: 0.7, high: 0.76, source: 'recalled-compositions', grade: 'memory' },
    solids: { sucrose: 0.615, lactose: 0.14, protein: 0.105, ash: 0.025 },
    apart: { fat: 0.115 },
    compositionGrade: 'memory',
  },
  nuts: {
    kind: 'food',
    drySolidsMassFraction: { value: 0.95, low: 0.93, high: 0.98, source: 'recalled-compositions', grade: 'memory' },
    solids: { protein: 0.22, ash: 0.03 },
    apart: { fat: 0.54, insoluble: 0.21 },
    compositionGrade: 'memory',
  },
  gelatin: {
    kind: 'food',
    drySolidsMassFraction: { value: 0.88, low: 0.85, high: 0.9, source: 'recalled-compositions', grade: 'memory' },
    solids: { protein: 0.985, ash: 0.015 },
    compositionGrade: 'memory',
  },
  'egg-white': {
    kind: 'food',
    drySolidsMassFraction: { value: 0.12, low: 0.115, high: 0.13, source: 'recalled-compositions', grade: 'memory' },
    solids: { protein: 0.88, glucose: 0.04, ash: 0.055 },
    apart: { insoluble: 0.025 },
    compositionGrade: 'memory',
  },
} as const satisfies Partial<Record<IngredientId, Ingredient>>;
