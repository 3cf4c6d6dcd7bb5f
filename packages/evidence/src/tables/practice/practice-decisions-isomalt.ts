// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** From brief to wrapped sweet: isomalt and xylitol. */
export const practiceDecisionsIsomaltTable = {
  id: 'practice-decisions-isomalt',
  title: 'From brief to wrapped sweet: isomalt and xylitol',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Worked batch',
    locator: '200 drops of 4 g',
  },
  grade: 'derived',
  did: 'A worked batch: computed with the models where they speak, common practice elsewhere.',
  units: { step: 'count' },
  rows: [
    { step: 1, decision: 'Brief', input: 'order', answer: '200 drops of 4.0 g, sugar-free, mint or lemon', goesWrong: 'claim not legal for the market' },
    { step: 2, decision: 'Sweetener choice', input: 'GI, sweetness, energy, laxation', answer: 'isomalt 90 : xylitol 10 (solids)', goesWrong: 'too much xylitol sags', rule: 'weighted sums', allowance: '± 2' },
    { step: 3, decision: 'GI estimate', input: 'GI isomalt about 9, xylitol about 13 (recalled)', answer: 'about 9', goesWrong: 'never print a GI without a test; information only, no claim', rule: '0.9x9+0.1x13' },
    { step: 4, decision: 'Sweetness', input: 'isomalt 0.50, xylitol 0.95 (sucrose = 1)', answer: '0.545 (0.45-0.70)', goesWrong: 'flat', rule: '0.9x0.50+0.1x0.95', allowance: '± 0.05' },
    { step: 5, decision: 'Intense sweetener', input: 'gap to 0.85-1.0', answer: '0.05 % gives about +0.30', goesWrong: 'sucralose or aspartame in a mass above 120 °C: error; use acesulfame-K', rule: '(target - 0.545)/600 for a 600x sweetener, then the dose curve', allowance: 'legal limit' },
    { step: 6, decision: 'Xylitol ceiling', input: 'Tg(w)', answer: '10 % at 1 % water: Tg 40.8 °C, margin 15.8 K at 25 °C; 20 %: 30.6', goesWrong: 'soft, sticky; ten points of xylitol cost 10-11 K', rule: 'Fox for the dry mix, Gordon-Taylor for water; margin rule', allowance: '2 %' },
    { step: 7, decision: 'Losses', input: 'isomalt strings less; pan residue', answer: '841.8 g finished mass', rule: '4 % + 1 %', allowance: '1 %' },
    { step: 8, decision: 'Crystal water of isomalt', input: 'certificate (3-7 %)', answer: '740.2 g solids = 779.1 g as is (5 %)', goesWrong: '9 pieces of 200 short if ignored', rule: 'as-is = solids/(1-w)', allowance: '1 %' },
    { step: 9, decision: 'Xylitol amount', input: 'solids', answer: '82.2 g', rule: '0.1 x solids', allowance: '1 %' },
    { step: 10, decision: 'Add xylitol at start or end', input: 'cook load', answer: 'start for clarity, end for less boil-off mass', goesWrong: 'undissolved grains seed', rule: 'at start: counts in the boiling curve; at end: no change in the cook, but heat loss' },
    { step: 11, decision: 'Water, distilled', input: '25 % of isomalt', answer: '194.8 g', goesWrong: 'minerals tint; too little: grit', rule: '0.25 x 779.1', allowance: '10 %' },
    { step: 12, decision: 'Moisture target', input: 'Tg', answer: '1.0 % (base 1.01 %)', goesWrong: '2 % loses 8-9 K of Tg', rule: '1.0 %', allowance: '± 0.3 %' },
    { step: 13, decision: 'Cook temperature', input: 'boiling curve, blend moles', answer: '159.4 °C for 1.0 %, 167 for 0.5 %, 175.8 for 0.3 %; knee near 165-170', goesWrong: 'bubbles; past the knee little is gained', rule: 'boiling model of the blend (+0.7 °C at 1 % for 10 % xylitol)', allowance: '± 8 K' },
    { step: 14, decision: 'Altitude correction', input: 'as for the sugared sweet', rule: 'equal solids at the two pressures by the boiling model' },
    { step: 15, decision: 'Evaporation', input: 'mass balance', answer: '225.3 g', goesWrong: 'time', rule: '779.1+82.2+194.8-830.8', allowance: '3 %' },
    { step: 16, decision: 'Acid', input: '0.5-1.0 %', answer: '8.4 g', goesWrong: 'acid in hot mass frees glucose: may pass 0.5 g sugars per 100 g; claim needs analysis', rule: 'of finished mass', allowance: '0.1 %' },
    { step: 17, decision: 'Flavour, colour', input: 'oil forms, no water', answer: '2.1 g; colour powder', goesWrong: 'water-based colour spoils 1 % target', rule: 'at or below 125 °C' },
    { step: 18, decision: 'Stirring', input: 'crystallisation of isomalt', goesWrong: 'haze', rule: 'none below 130 °C while cooling' },
    { step: 19, decision: 'Hold', input: 'bubbles', answer: 'clear mass', goesWrong: 'long hold darkens', rule: '130-140 °C until clear, 5-10 min' },
    { step: 20, decision: 'Pour', input: 'viscosity higher than sugar', answer: '130-150 °C, never above the mould limit', goesWrong: 'strings', rule: '135-150 °C', allowance: '5 K' },
    { step: 21, decision: 'Mould', input: 'silicone or metal, warm', goesWrong: 'isomalt sticks to oiled plastic', rule: 'cooling table' },
    { step: 22, decision: 'Cooling', input: 'slow', answer: '40-80 min', goesWrong: 'cracks in thick pieces', rule: '30-60 min' },
    { step: 23, decision: 'Room', input: 'hygroscopicity low but not nil', answer: 'relative humidity < 0.50', rule: 'room against the critical humidity; sucrose isotherm stands in' },
    { step: 24, decision: 'Wrap', input: 'airtight + silica gel', goesWrong: 'dull in weeks', rule: 'sealed + silica gel' },
    { step: 25, decision: 'Laxative warning', input: '> 10 % added polyols in EU labels (Reg. 1169/2011)', answer: 'warning needed', goesWrong: 'complaint', rule: '97.7 % polyols', allowance: 'law' },
    { step: 26, decision: 'Energy', input: '2.4 kcal/g polyols, 3 kcal/g acid (EU factors, memory)', answer: '238 kcal/100 g', goesWrong: 'calling it calorie-free', rule: '2.4x97.75+3x1', allowance: '5 %' },
    { step: 27, decision: 'Sugar-free claim', input: '<= 0.5 g sugars/100 g', answer: 'allowed if certificate says so', goesWrong: 'wrong isomalt grade', rule: 'sugars in isomalt < 0.5 %', allowance: 'law' },
    { step: 28, decision: 'Pet and child safety', input: 'xylitol is dangerous to dogs', answer: 'warning line' },
    { step: 29, decision: 'Keeping', input: 'Tg - store = 15.8 K at 25 °C (middle)', answer: 'no estimate in days for polyol glass', goesWrong: 'at 35 °C the middle margin is 5.8 K: little in reserve', rule: 'margin rule; wrap life' },
    { step: 30, decision: 'Record', input: 'as for the sugared sweet' },
  ],
  notes: [
    'Xylitol is dangerous to dogs.',
    'Glycaemic indices and claims are information only.',
  ],
  check: {
    rows: 30,
    sums: {
      step: 465,
    },
  },
} as const satisfies EvidenceTable;
