// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Energy of what is eaten, by jurisdiction. */
export const nutritionEnergyFactorsTable = {
  id: 'nutrition-energy-factors',
  title: 'Energy of what is eaten, by jurisdiction',
  source: {
    authors: 'US FDA; EU; Codex; Health Canada; FSANZ',
    year: '2024',
    title: '21 CFR 101.9(c)(1)(i); Regulation (EU) 1169/2011 Annex XIV; CXG 2-1985; Food Standards Code Schedule 11',
    locator: 'as cited',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  address: 'https://www.ecfr.gov/current/title-21/chapter-I/subchapter-B/part-101/subpart-A/section-101.9',
  units: {
    usKcalPerG: 'kcal/g',
    euKcalPerG: 'kcal/g',
    euKJPerG: 'kJ/g',
    canadaKcalPerG: 'kcal/g',
    australiaNewZealandKJPerG: 'kJ/g',
  },
  constants: { kJPerKcal: 4.184, kJPerKcalAustraliaNewZealand: 4.18 },
  rows: [
    { id: 'digestible-carbohydrate', usKcalPerG: 4, euKcalPerG: 4, euKJPerG: 17, canadaKcalPerG: 4, australiaNewZealandKJPerG: 17, grades: { us: 'memory', eu: 'secondary', others: 'memory' }, grade: 'memory' },
    { id: 'protein', usKcalPerG: 4, euKcalPerG: 4, euKJPerG: 17, canadaKcalPerG: 4, australiaNewZealandKJPerG: 17, grades: { us: 'memory', eu: 'secondary', others: 'memory' }, grade: 'memory' },
    { id: 'fat', usKcalPerG: 9, euKcalPerG: 9, euKJPerG: 37, canadaKcalPerG: 9, australiaNewZealandKJPerG: 37, grades: { us: 'memory', eu: 'secondary', others: 'memory' }, grade: 'memory' },
    { id: 'ethanol', usKcalPerG: 7, euKcalPerG: 7, euKJPerG: 29, canadaKcalPerG: 7, australiaNewZealandKJPerG: 29, grades: { us: 'memory', eu: 'secondary', others: 'memory' }, grade: 'memory' },
    { id: 'organic-acid', usKcalPerG: 4, euKcalPerG: 3, euKJPerG: 13, canadaKcalPerG: 4, australiaNewZealandKJPerG: 13, grades: { us: 'memory', eu: 'secondary', others: 'memory' }, note: 'The US has no factor of its own: acid counts as carbohydrate.', grade: 'memory' },
    { id: 'dietary-fibre', usKcalPerG: 2, euKcalPerG: 2, euKJPerG: 8, canadaKcalPerG: 2, australiaNewZealandKJPerG: 8, grades: { us: 'memory', eu: 'secondary', others: 'memory' }, note: 'US 2 for soluble fibre, 0 for insoluble.', grade: 'memory' },
    { id: 'salatrim', usKcalPerG: null, euKcalPerG: 6, euKJPerG: 25, canadaKcalPerG: null, australiaNewZealandKJPerG: null, grades: { us: 'memory', eu: 'secondary', others: 'memory' }, grade: 'memory' },
    { id: 'isomalt', usKcalPerG: 2, euKcalPerG: 2.4, euKJPerG: 10, canadaKcalPerG: 2, australiaNewZealandKJPerG: 11, grades: { us: 'secondary', eu: 'secondary', others: 'memory' }, grade: 'secondary' },
    { id: 'lactitol', usKcalPerG: 2, euKcalPerG: 2.4, euKJPerG: 10, canadaKcalPerG: 2, australiaNewZealandKJPerG: 11, grades: { us: 'secondary', eu: 'secondary', others: 'memory' }, grade: 'secondary' },
    { id: 'maltitol', usKcalPerG: 2.1, euKcalPerG: 2.4, euKJPerG: 10, canadaKcalPerG: 3, australiaNewZealandKJPerG: 13, grades: { us: 'secondary', eu: 'secondary', others: 'memory' }, grade: 'secondary' },
    { id: 'maltitol-syrup', usKcalPerG: 3, euKcalPerG: 2.4, euKJPerG: 10, canadaKcalPerG: 3, australiaNewZealandKJPerG: 13, grades: { us: 'secondary', eu: 'secondary', others: 'memory' }, note: 'US as a hydrolysate.', grade: 'secondary' },
    { id: 'hsh', usKcalPerG: 3, euKcalPerG: 2.4, euKJPerG: 10, canadaKcalPerG: null, australiaNewZealandKJPerG: null, grades: { us: 'secondary', eu: 'secondary', others: 'memory' }, grade: 'secondary' },
    { id: 'mannitol', usKcalPerG: 1.6, euKcalPerG: 2.4, euKJPerG: 10, canadaKcalPerG: 1.6, australiaNewZealandKJPerG: 9, grades: { us: 'secondary', eu: 'secondary', others: 'memory' }, grade: 'secondary' },
    { id: 'sorbitol', usKcalPerG: 2.6, euKcalPerG: 2.4, euKJPerG: 10, canadaKcalPerG: 2.6, australiaNewZealandKJPerG: 14, grades: { us: 'secondary', eu: 'secondary', others: 'memory' }, grade: 'secondary' },
    { id: 'xylitol', usKcalPerG: 2.4, euKcalPerG: 2.4, euKJPerG: 10, canadaKcalPerG: 3, australiaNewZealandKJPerG: 14, grades: { us: 'secondary', eu: 'secondary', others: 'memory' }, grade: 'secondary' },
    { id: 'erythritol', usKcalPerG: 0, euKcalPerG: 0, euKJPerG: 0, canadaKcalPerG: 0.2, australiaNewZealandKJPerG: 1, grades: { us: 'secondary', eu: 'secondary', others: 'memory' }, note: 'US 0.2 before 2016.', grade: 'secondary' },
    { id: 'glycerol', usKcalPerG: 4.32, euKcalPerG: 2.4, euKJPerG: 10, canadaKcalPerG: 4.32, australiaNewZealandKJPerG: 18, grades: { us: 'memory', eu: 'secondary', others: 'memory' }, note: 'A polyol in the EU.', grade: 'memory' },
    { id: 'polydextrose', usKcalPerG: 1, euKcalPerG: 2, euKJPerG: 8, canadaKcalPerG: 1, australiaNewZealandKJPerG: 5, grades: { us: 'memory', eu: 'secondary', others: 'memory' }, grade: 'memory' },
    { id: 'inulin-oligofructose', usKcalPerG: 1.5, euKcalPerG: 2, euKJPerG: 8, canadaKcalPerG: 2.2, australiaNewZealandKJPerG: 8, grades: { us: 'memory', eu: 'memory', others: 'memory' }, note: 'The US accepts 1.5 to 2 with evidence.', grade: 'memory' },
    { id: 'allulose', usKcalPerG: 0.4, euKcalPerG: 4, euKJPerG: 17, canadaKcalPerG: null, australiaNewZealandKJPerG: null, grades: { us: 'secondary', eu: 'memory', others: 'memory' }, note: 'Not authorised as a food in the EU when written down.', grade: 'memory' },
    { id: 'tagatose', usKcalPerG: 1.5, euKcalPerG: 4, euKJPerG: 17, canadaKcalPerG: null, australiaNewZealandKJPerG: 11, grades: { us: 'memory', eu: 'memory', others: 'memory' }, note: 'A sugar in the EU.', grade: 'memory' },
    { id: 'isomaltulose', usKcalPerG: 4, euKcalPerG: 4, euKJPerG: 17, canadaKcalPerG: 4, australiaNewZealandKJPerG: 17, grades: { us: 'derived', eu: 'derived', others: 'derived' }, note: 'A sugar everywhere.', grade: 'derived' },
    { id: 'trehalose', usKcalPerG: 4, euKcalPerG: 4, euKJPerG: 17, canadaKcalPerG: 4, australiaNewZealandKJPerG: 17, grades: { us: 'derived', eu: 'derived', others: 'derived' }, note: 'A sugar everywhere.', grade: 'derived' },
    { id: 'aspartame', usKcalPerG: 4, euKcalPerG: 4, euKJPerG: 17, canadaKcalPerG: 4, australiaNewZealandKJPerG: 17, grades: { us: 'derived', eu: 'derived', others: 'derived' }, note: 'Like protein; the dose is negligible.', grade: 'derived' },
    { id: 'water-ash-other-high-intensity', usKcalPerG: 0, euKcalPerG: 0, euKJPerG: 0, canadaKcalPerG: 0, australiaNewZealandKJPerG: 0, grades: { us: 'derived', eu: 'derived', others: 'derived' }, grade: 'derived' },
  ],
  tolerance: {
    text: 'To the printed digit. A hydrogenated syrup is counted by its parts: there the band must reach the factor of the whole.',
    limits: [
      { column: 'usKcalPerG', insideBand: true, rows: { column: 'id', is: ['hsh', 'maltitol-syrup'] } },
      { column: 'usKcalPerG', worst: 1e-9 },
      { column: 'euKcalPerG', worst: 1e-9 },
      { column: 'euKJPerG', worst: 1e-9 },
    ],
  },
  extra: {
    checkOf15G2PercentWaterUsKcal: { '60:40 sucrose : 42 DE': 58.8, isomalt: 29.4, maltitol: 30.9, 'hydrogenated-starch-hydrolysate': 44.1, xylitol: 35.3, erythritol: 0 },
  },
  notes: [
    'EU kilojoules come from their own factors, not by conversion.',
    'Of the law itself the EU annex was read in a copy; the US and Australian tables were not.',
    'The US rule has no general factor for a polyol it does not list.',
    'Law changes: let the user override.',
  ],
  check: {
    rows: 25,
    sums: {
      usKcalPerG: 69.42,
      euKcalPerG: 80.6,
      euKJPerG: 337,
      canadaKcalPerG: 66.92,
      australiaNewZealandKJPerG: 300,
    },
  },
} as const satisfies EvidenceTable;
