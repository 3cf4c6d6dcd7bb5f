// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Rules of proportion for doctored boils. */
export const grainingDoctorRulesTable = {
  id: 'graining-doctor-rules',
  title: 'Rules of proportion for doctored boils',
  source: {
    authors: 'Hartel, R.W.; Walstra, P.; older manuals',
    year: '2012; 2003',
    title: 'Hard candy: from hard crack to the glass transition; Physical Chemistry of Foods',
    locator: 'in the text',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  units: {
    reducingSugarsLowPercent: '% of the finished sweet',
    reducingSugarsHighPercent: '% of the finished sweet',
  },
  rows: [
    { rule: 'range met in trade', sucroseToSyrup: '80:20 to 30:70', reducingSugarsLowPercent: null, reducingSugarsHighPercent: null, grade: 'secondary' },
    { rule: 'common range', sucroseToSyrup: '60:40 to 40:60', reducingSugarsLowPercent: null, reducingSugarsHighPercent: null, grade: 'secondary' },
    { rule: 'reducing sugar target begins at', reducingSugarsLowPercent: 16, reducingSugarsHighPercent: null, grade: 'secondary' },
    { rule: 'equal dry masses prevent crystallisation', sucroseToSyrup: '50:50', reducingSugarsLowPercent: null, reducingSugarsHighPercent: null, grade: 'secondary' },
    { rule: 'grains below, does not grain above, about a quarter syrup', sucroseToSyrup: '75:25', reducingSugarsLowPercent: null, reducingSugarsHighPercent: null, grade: 'secondary' },
    { rule: 'open-pan', sucroseToSyrup: '70:30', reducingSugarsLowPercent: null, reducingSugarsHighPercent: null, grade: 'practice' },
    { rule: 'vacuum cooker', sucroseToSyrup: '60:40 to 55:45', reducingSugarsLowPercent: null, reducingSugarsHighPercent: null, grade: 'practice' },
    { rule: 'reducing sugars for stable, not sticky', reducingSugarsLowPercent: 12, reducingSugarsHighPercent: 20, grade: 'practice' },
    { rule: 'stickiness above', reducingSugarsLowPercent: 20, reducingSugarsHighPercent: 25, grade: 'practice' },
    { rule: 'graining likely below', reducingSugarsLowPercent: 10, reducingSugarsHighPercent: 12, grade: 'practice' },
    { rule: 'acid-only doctor (cream of tartar)', reducingSugarsLowPercent: 8, reducingSugarsHighPercent: 15, grade: 'practice' },
  ],
  notes: [
    'Sucrose to syrup solids, dry.',
    'Reducing sugars and doctor solids differ: long chains doctor and reduce little.',
    'More doctor never grains sooner at an equal distance from the glass transition; at equal water it can, with invert, fructose, sorbitol or xylitol.',
  ],
  check: {
    rows: 11,
    sums: {
      reducingSugarsLowPercent: 66,
      reducingSugarsHighPercent: 72,
    },
  },
} as const satisfies EvidenceTable;
