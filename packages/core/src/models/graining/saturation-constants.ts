import type { CitedConstants } from '../../foundation/validity/constants.js';

const source = 'wiklund-vavrinecz',
  grade = 'secondary';

/** How other solids at q grams on a gram of water change the saturation of sucrose. */
export const SATURATION_CONSTANTS = {
  slope: { value: -0.06265, source, grade },
  level: { value: 0.982, source, grade },
  fade: { value: 2.1, source, grade },
  linearFall: { value: 0.088, source: 'icumsa-saturation', grade },
  mostOtherSolidsPerWater: {
    value: 3,
    source,
    grade: 'derived',
    note: 'beyond, both forms run down through zero; the amount is held here',
  },
} as const satisfies CitedConstants;

/** Where the zones of supersaturation begin, for nearly pure sucrose. */
export const SUPERSATURATION_ZONES = {
  metastable: { value: 1, source: 'definition', grade: 'derived', note: 'crystals grow' },
  intermediate: {
    value: 1.2,
    source: 'recalled-sugar-boiling',
    grade: 'memory',
    note: 'false grain where crystals are',
  },
  labile: {
    value: 1.3,
    source: 'recalled-sugar-boiling',
    grade: 'memory',
    note: 'crystals by themselves',
  },
} as const satisfies CitedConstants;
