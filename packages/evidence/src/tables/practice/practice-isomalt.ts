// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Isomalt and polyol boiled sweets. */
export const practiceIsomaltTable = {
  id: 'practice-isomalt',
  title: 'Isomalt and polyol boiled sweets',
  source: {
    authors: 'several',
    year: 'n.d.',
    title: 'Named in the rows',
    locator: 'see rows',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  units: {},
  rows: [
    { item: 'raw isomalt, free and crystal water', value: 'at most 7 % by specification, 5 % typical', grade: 'memory' },
    { item: 'added water', value: '10 to 30 % of isomalt, distilled or deionised', grade: 'practice' },
    { item: 'cook temperature, sugar art', value: '163 °C in one demonstration; others 171 and 177', publication: 'a demonstration report', grade: 'secondary' },
    { item: 'cook temperature, boiled sweets', value: '155 to 170 °C in the open, kitchens to about 190; 140 to 150 °C under vacuum', grade: 'practice' },
    { item: 'water left', value: 'under 1 to 2 %; below 1 % wanted', publication: 'University course notes', grade: 'secondary' },
    { item: 'stopping the cook', value: 'pan base in cold water for about 5 s, then 135 °C until the bubbles clear', publication: 'a home account', grade: 'secondary' },
    { item: 'acid', value: 'citric 0.5 to 1 %, last, off the heat, below 125 °C; hot acid frees glucose, which can pass 0.5 g sugars per 100 g', publication: 'patent EP 1421856, abstract', grade: 'secondary' },
    { item: 'effect of xylitol', value: 'more moisture, less hardness, better clarity', publication: 'Jeon, Oh and Cho 2021, Foods 10:2464, abstract', grade: 'secondary' },
    { item: 'effect of acid', value: 'the glass transition falls with citric acid', publication: 'Dogdu 2025, MSc thesis', grade: 'secondary' },
    { item: 'dissolving', value: 'solubility known at 20 and 50 °C only, 25 and 45 %', grade: 'derived' },
    { item: 'dry glass transition', value: '62 °C; 63.6 seen as a midpoint', grade: 'memory' },
  ],
  notes: [
    'Polyols do not invert and have no reducing end.',
  ],
  check: {
    rows: 11,
    sums: {
    },
  },
} as const satisfies EvidenceTable;
