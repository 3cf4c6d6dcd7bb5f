// biome-ignore-all format: one row a line, to be held against its source

import type { Ingredient, IngredientId } from './types.js';

/** Sugar alcohols and bulking fibres. Xylitol harms dogs. */
export const POLYOLS_AND_FIBRES = {
  isomalt: {
    kind: 'polyol',
    drySolidsMassFraction: { value: 0.95, low: 0.93, high: 0.975, source: 'recalled-compositions', grade: 'memory' },
    solids: { isomalt: 1 },
    compositionGrade: 'derived',
  },
  'isomalt-dry': {
    kind: 'polyol',
    drySolidsMassFraction: { value: 0.995, low: 0.99, high: 1, source: 'assumption', grade: 'assumed' },
    solids: { isomalt: 1 },
    compositionGrade: 'derived',
  },
  maltitol: {
    kind: 'polyol',
    drySolidsMassFraction: { value: 0.995, low: 0.99, high: 1, source: 'assumption', grade: 'assumed' },
    solids: { maltitol: 1 },
    compositionGrade: 'derived',
  },
  'maltitol-syrup': {
    kind: 'polyol',
    drySolidsMassFraction: { value: 0.75, low: 0.69, high: 0.8, source: 'common-practice', grade: 'practice' },
    solids: { maltitol: 0.53, sorbitol: 0.05, 'hydrogenated-oligosaccharides': 0.42 },
    compositionGrade: 'assumed',
  },
  xylitol: {
    kind: 'polyol',
    drySolidsMassFraction: { value: 0.998, low: 0.995, high: 1, source: 'assumption', grade: 'assumed' },
    solids: { xylitol: 1 },
    compositionGrade: 'derived',
  },
  sorbitol: {
    kind: 'polyol',
    drySolidsMassFraction: { value: 0.99, low: 0.98, high: 1, source: 'common-practice', grade: 'practice' },
    solids: { sorbitol: 1 },
    compositionGrade: 'derived',
  },
  'sorbitol-syrup': {
    kind: 'polyol',
    drySolidsMassFraction: { value: 0.7, low: 0.68, high: 0.72, source: 'common-practice', grade: 'practice' },
    solids: { sorbitol: 0.72, mannitol: 0.02, 'hydrogenated-oligosaccharides': 0.26 },
    compositionGrade: 'assumed',
  },
  mannitol: {
    kind: 'polyol',
    drySolidsMassFraction: { value: 0.998, low: 0.995, high: 1, source: 'assumption', grade: 'assumed' },
    solids: { mannitol: 1 },
    compositionGrade: 'derived',
  },
  erythritol: {
    kind: 'polyol',
    drySolidsMassFraction: { value: 0.998, low: 0.995, high: 1, source: 'assumption', grade: 'assumed' },
    solids: { erythritol: 1 },
    compositionGrade: 'derived',
  },
  lactitol: {
    kind: 'polyol',
    drySolidsMassFraction: { value: 1, source: 'definition', grade: 'derived' },
    solids: { lactitol: 1 },
    compositionGrade: 'derived',
  },
  'lactitol-monohydrate': {
    kind: 'polyol',
    drySolidsMassFraction: { value: 0.9503, source: 'definition', grade: 'derived' },
    solids: { lactitol: 1 },
    compositionGrade: 'derived',
  },
  'hydrogenated-starch-hydrolysate': {
    kind: 'polyol',
    drySolidsMassFraction: { value: 0.75, low: 0.69, high: 0.8, source: 'common-practice', grade: 'practice' },
    solids: { maltitol: 0.35, sorbitol: 0.08, 'hydrogenated-oligosaccharides': 0.57 },
    compositionGrade: 'assumed',
  },
  glycerol: {
    kind: 'polyol',
    drySolidsMassFraction: { value: 0.995, low: 0.99, high: 1, source: 'common-practice', grade: 'practice' },
    solids: { glycerol: 1 },
    compositionGrade: 'derived',
  },
  polydextrose: {
    kind: 'fibre',
    drySolidsMassFraction: { value: 0.96, low: 0.94, high: 0.98, source: 'recalled-compositions', grade: 'memory' },
    solids: { polydextrose: 1 },
    compositionGrade: 'derived',
  },
  inulin: {
    kind: 'fibre',
    drySolidsMassFraction: { value: 0.95, low: 0.93, high: 0.97, source: 'recalled-compositions', grade: 'memory' },
    solids: { inulin: 1 },
    compositionGrade: 'derived',
  },
} as const satisfies Partial<Record<IngredientId, Ingredient>>;
