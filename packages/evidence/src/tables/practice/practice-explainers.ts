// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Check questions with their answers. */
export const practiceExplainersTable = {
  id: 'practice-explainers',
  title: 'Check questions with their answers',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Computed with the models',
    locator: 'sea level unless said',
  },
  grade: 'derived',
  did: 'Computed here.',
  units: {},
  rows: [
    { id: 'water-gauge', question: 'Sucrose syrup at sea level boils at 116.1 °C: water in 100 g?', answer: '13.6 g' },
    { id: 'stall-then-climb', question: '1 kg sugar and 330 g water: water driven off from 75.2 to 85 %, and from 85 to 95 %?', answer: '154 g; 124 g' },
    { id: 'mountain', question: '240 °F at sea level, kitchen at 5000 ft: target? And 300 °F?', answer: '230.1 °F; 289.1 °F' },
    { id: 'cold-water', question: '87 % solids: which stage, which temperature?', answer: 'between soft ball and firm ball, 116.9 °C' },
    { id: 'doctor', question: '60:40 sucrose to 42 DE solids: reducing sugars per 100 g solids?', answer: '16.8 g' },
    { id: 'dried-for-liquid', question: 'Replace 500 g of 80 % syrup by powder with 4 % moisture', answer: '416.7 g powder and 83.3 g water' },
    { id: 'acid-clock', question: 'Rate of inversion at 150 °C over that at 120 °C?', answer: '10.5' },
    { id: 'glass-or-goo', question: 'Sucrose glass, 62 °C dry: transition at 2 % and 4 % water?', answer: '42.4 °C; 25.7 °C' },
    { id: 'humid-room', question: 'A 12.0 g pop goes from 2.0 to 3.0 % water: mass gained?', answer: '0.124 g' },
    { id: 'probe', question: 'Dial thermometer, time constant 22.5 s, rise 10 °F/min: how much low?', answer: '3.75 °F' },
    { id: 'yield', question: '1256 g batch, 5 % losses, 1 % breakage, 12 g pops?', answer: '98' },
    { id: 'xylitol', question: 'Isomalt 0.50, xylitol 0.95: sweetness of 90:10? Transition at 1 % water?', answer: '0.545; 40.8 °C' },
  ],
  tolerance: { text: '1 % or 0.5 K.' },
  check: {
    rows: 12,
    sums: {
    },
  },
} as const satisfies EvidenceTable;
