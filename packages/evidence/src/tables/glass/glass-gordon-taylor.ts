// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Gordon-Taylor constant of a solute with water. */
export const glassGordonTaylorTable = {
  id: 'glass-gordon-taylor',
  title: 'Gordon-Taylor constant of a solute with water',
  source: {
    authors: 'Roos, Y.',
    year: '1993',
    title: 'Melting and glass transitions of low molecular weight carbohydrates, Carbohydrate Research 238:39-48',
    locator: 'rule k = 0.0293 Tg + 3.61',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  units: {
    dryGlassTransitionC: '°C',
    k: 'dimensionless',
    kByRule: 'dimensionless',
  },
  constants: {
    equation: 'Tg = (ws Tgs + k ww Tgw)/(ws + k ww)',
    waterGlassTransitionC: -135,
    ruleSlopePerC: 0.0293,
    ruleIntercept: 3.61,
  },
  rows: [
    { solute: 'sucrose', dryGlassTransitionC: 62, k: 5.42, kByRule: 5.427, alternatives: [{ k: 4.7, what: 'Roos and Karel 1991' }], grade: 'memory' },
    { solute: 'glucose', dryGlassTransitionC: 31, k: 4.52, kByRule: 4.518, grade: 'memory' },
    { solute: 'fructose', dryGlassTransitionC: 5, k: 3.76, kByRule: 3.756, grade: 'memory' },
    { solute: 'galactose', dryGlassTransitionC: 30, k: 4.49, kByRule: 4.489, grade: 'memory' },
    { solute: 'maltose', dryGlassTransitionC: 87, k: 6.15, kByRule: null, grade: 'memory' },
    { solute: 'lactose', dryGlassTransitionC: 101, k: 6.56, kByRule: 6.569, alternatives: [{ k: 7, what: 'reproduces 6.8 g water per 100 g at 25 °C' }], grade: 'memory' },
    { solute: 'trehalose', dryGlassTransitionC: 100, k: 6.54, kByRule: 6.54, grade: 'memory' },
    { solute: 'raffinose', dryGlassTransitionC: 70, k: 5.66, kByRule: 5.661, grade: 'memory' },
    { solute: 'isomalt', dryGlassTransitionC: 62, k: 5.43, kByRule: 5.427, grade: 'derived' },
    { solute: 'maltitol', dryGlassTransitionC: 39, k: 4.75, kByRule: 4.753, grade: 'memory' },
    { solute: 'lactitol', dryGlassTransitionC: 52, k: 5.13, kByRule: 5.134, grade: 'derived' },
    { solute: 'xylitol', dryGlassTransitionC: -29, k: 2.76, kByRule: 2.76, grade: 'memory' },
    { solute: 'sorbitol', dryGlassTransitionC: -9, k: 3.35, kByRule: 3.346, grade: 'memory' },
    { solute: 'syrup solids, any DE', dryGlassTransitionC: null, k: 6, kByRule: null, alternatives: [{ k: 7, what: 'Roos and Karel 1991, DE 10' }, { k: 7.7, what: 'Roos and Karel 1991, DE 5' }, { k: 6.5, what: 'Roos and Karel 1991, DE 20' }, { k: 6, what: 'Roos and Karel 1991, DE 36' }], grade: 'derived' },
  ],
  tolerance: {
    text: '0.01, the printed digit; lactose and maltose are truncated in print.',
    limits: [{ column: 'k', worst: 0.01 }],
  },
  notes: [
    'The rule is for sugars of one or two rings and for polyols; for maltodextrins it errs by −21 K at 8.2 g water per 100 g.',
  ],
  check: {
    rows: 14,
    sums: {
      dryGlassTransitionC: 601,
      k: 70.52,
      kByRule: 58.38,
    },
  },
} as const satisfies EvidenceTable;
