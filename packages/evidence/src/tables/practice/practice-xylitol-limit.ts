// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Glass transition of isomalt with xylitol at a given moisture. */
export const practiceXylitolLimitTable = {
  id: 'practice-xylitol-limit',
  title: 'Glass transition of isomalt with xylitol at a given moisture',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Computed with Fox for the dry mix and Gordon-Taylor for water',
    locator: 'isomalt 62 °C, xylitol −29 °C',
  },
  grade: 'derived',
  did: 'Computed here.',
  units: {
    xylitolPercentOfSolids: '% of solids',
    dryGlassTransitionC: '°C',
    transitionAt05PercentC: '°C',
    transitionAt1PercentC: '°C',
    transitionAt2PercentC: '°C',
    transitionAt3PercentC: '°C',
  },
  rows: [
    { xylitolPercentOfSolids: 0, dryGlassTransitionC: 62, transitionAt05PercentC: 56.8, transitionAt1PercentC: 51.8, transitionAt2PercentC: 42.4, transitionAt3PercentC: 33.7 },
    { xylitolPercentOfSolids: 5, dryGlassTransitionC: 55.9, transitionAt05PercentC: 50.9, transitionAt1PercentC: 46.2, transitionAt2PercentC: 37.3, transitionAt3PercentC: 29 },
    { xylitolPercentOfSolids: 10, dryGlassTransitionC: 50, transitionAt05PercentC: 45.3, transitionAt1PercentC: 40.8, transitionAt2PercentC: 32.3, transitionAt3PercentC: 24.5 },
    { xylitolPercentOfSolids: 15, dryGlassTransitionC: 44.3, transitionAt05PercentC: 39.8, transitionAt1PercentC: 35.6, transitionAt2PercentC: 27.6, transitionAt3PercentC: 20.1 },
    { xylitolPercentOfSolids: 20, dryGlassTransitionC: 38.7, transitionAt05PercentC: 34.6, transitionAt1PercentC: 30.6, transitionAt2PercentC: 23, transitionAt3PercentC: 15.9 },
    { xylitolPercentOfSolids: 25, dryGlassTransitionC: 33.4, transitionAt05PercentC: 29.5, transitionAt1PercentC: 25.7, transitionAt2PercentC: 18.5, transitionAt3PercentC: 11.8 },
    { xylitolPercentOfSolids: 30, dryGlassTransitionC: 28.3, transitionAt05PercentC: 24.6, transitionAt1PercentC: 21, transitionAt2PercentC: 14.2, transitionAt3PercentC: 7.9 },
  ],
  tolerance: {
    text: '0.1 K.',
    limits: [
      { column: 'dryGlassTransitionC', worst: 0.1 },
      { column: 'transitionAt05PercentC', worst: 0.1 },
      { column: 'transitionAt1PercentC', worst: 0.1 },
      { column: 'transitionAt2PercentC', worst: 0.1 },
      { column: 'transitionAt3PercentC', worst: 0.1 },
    ],
  },
  notes: [
    'With 20 % xylitol 35 °C needs 0.45 % of water or less; with 25 % it cannot be had at any dryness.',
    'Xylitol is dangerous to dogs.',
  ],
  check: {
    rows: 7,
    sums: {
      xylitolPercentOfSolids: 105,
      dryGlassTransitionC: 312.6,
      transitionAt05PercentC: 281.5,
      transitionAt1PercentC: 251.7,
      transitionAt2PercentC: 195.3,
      transitionAt3PercentC: 142.9,
    },
  },
} as const satisfies EvidenceTable;
