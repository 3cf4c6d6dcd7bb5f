// biome-ignore-all format: one row a line, to be held against its source

import type { Ingredient, IngredientId } from './types.js';

/**
 * Intense sweeteners, flavours and colours. Oil, alcohol and pigment are weighed but never dissolve;
 * only the water of a flavour counts as water.
 */
export const SMALL_DOSES = {
  sucralose: {
    kind: 'intense-sweetener',
    drySolidsMassFraction: { value: 1, low: 0.97, high: 1, source: 'assumption', grade: 'assumed' },
    solids: { sucralose: 1 },
    compositionGrade: 'derived',
    maxAdditionC: { value: 120, source: 'bfr-2019', grade: 'secondary' },
  },
  'acesulfame-k': {
    kind: 'intense-sweetener',
    drySolidsMassFraction: { value: 1, low: 0.97, high: 1, source: 'assumption', grade: 'assumed' },
    solids: { 'acesulfame-k': 1 },
    compositionGrade: 'derived',
  },
  aspartame: {
    kind: 'intense-sweetener',
    drySolidsMassFraction: { value: 1, low: 0.97, high: 1, source: 'assumption', grade: 'assumed' },
    solids: { aspartame: 1 },
    compositionGrade: 'derived',
    maxAdditionC: { value: 120, source: 'assumption', grade: 'assumed' },
  },
  saccharin: {
    kind: 'intense-sweetener',
    drySolidsMassFraction: { value: 1, low: 0.97, high: 1, source: 'assumption', grade: 'assumed' },
    solids: { saccharin: 1 },
    compositionGrade: 'derived',
  },
  'steviol-glycosides': {
    kind: 'intense-sweetener',
    drySolidsMassFraction: { value: 1, low: 0.97, high: 1, source: 'assumption', grade: 'assumed' },
    solids: { 'steviol-glycosides': 1 },
    compositionGrade: 'derived',
  },
  'flavour-oil': {
    kind: 'flavour',
    drySolidsMassFraction: { value: 1, source: 'assumption', grade: 'assumed' },
    apart: { oil: 1 },
    compositionGrade: 'assumed',
    maxAdditionC: { value: 125, source: 'common-practice', grade: 'practice' },
  },
  'flavour-alcohol': {
    kind: 'flavour',
    drySolidsMassFraction: { value: 0.6, source: 'assumption', grade: 'assumed' },
    apart: { ethanol: 0.9166666666666667, oil: 0.08333333333333334 },
    compositionGrade: 'assumed',
    maxAdditionC: { value: 125, source: 'common-practice', grade: 'practice' },
  },
  'flavour-glycerol': {
    kind: 'flavour',
    drySolidsMassFraction: { value: 1, source: 'assumption', grade: 'assumed' },
    solids: { glycerol: 0.9 },
    apart: { oil: 0.1 },
    compositionGrade: 'assumed',
    maxAdditionC: { value: 125, source: 'common-practice', grade: 'practice' },
  },
  'flavour-propylene-glycol': {
    kind: 'flavour',
    drySolidsMassFraction: { value: 1, source: 'assumption', grade: 'assumed' },
    solids: { 'propylene-glycol': 0.9 },
    apart: { oil: 0.1 },
    compositionGrade: 'assumed',
    maxAdditionC: { value: 125, source: 'common-practice', grade: 'practice' },
  },
  'colour-liquid': {
    kind: 'colour',
    drySolidsMassFraction: { value: 0.02, low: 0.01, high: 0.05, source: 'common-practice', grade: 'practice' },
    apart: { pigment: 1 },
    compositionGrade: 'assumed',
  },
  'colour-powder': {
    kind: 'colour',
    drySolidsMassFraction: { value: 0.95, low: 0.9, high: 1, source: 'assumption', grade: 'assumed' },
    apart: { pigment: 1 },
    compositionGrade: 'assumed',
  },
} as const satisfies Partial<Record<IngredientId, Ingredient>>;
