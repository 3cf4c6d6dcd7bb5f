// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** From brief to wrapped sweet: sucrose, dried glucose syrup, acid. */
export const practiceDecisionsSugaredTable = {
  id: 'practice-decisions-sugared',
  title: 'From brief to wrapped sweet: sucrose, dried glucose syrup, acid',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Worked batch',
    locator: '100 lollipops of 12 g',
  },
  grade: 'derived',
  did: 'A worked batch: computed with the models where they speak, common practice elsewhere.',
  units: { step: 'count' },
  rows: [
    { step: 1, decision: 'Brief: pieces, mass, shape, flavour, sour or not, keeping time', input: 'order', answer: '100 lollipops of 12.0 g, fruit, sour, 6 months wrapped', goesWrong: 'size chosen after the mould is bought' },
    { step: 2, decision: 'Losses to allow', input: 'pan, tools, batch size', answer: '3.5 % residue + 1 % breakage', goesWrong: '20 pieces short', rule: 'sum of the losses', allowance: '± 1 % of batch' },
    { step: 3, decision: 'Finished mass to make', input: 'pieces, mass, losses', answer: '1256.1 g', goesWrong: 'weighing error at small batch', rule: 'N m /((1-break)(1-loss))', allowance: '1 %' },
    { step: 4, decision: 'Cavity volume and mould count', input: 'piece mass, density 1.50', answer: '8.0 mL', goesWrong: 'aerated mass needs more', rule: 'm/rho', allowance: '3 %' },
    { step: 5, decision: 'Finished moisture target', input: 'keeping time, Tg, store temperature', answer: '2.0 %', goesWrong: 'above about 4 % Tg nears a warm room; below 1 % browner and brittle', rule: 'Tg band against the store by the margin rule', allowance: '± 0.5 %' },
    { step: 6, decision: 'Sucrose : glucose solids ratio', input: 'grain risk against stickiness, climate', answer: '60:40', goesWrong: 'graining below 25 % doctor; sticky above 55 %', rule: 'ratio of solids; graining and humidity', allowance: '± 2' },
    { step: 7, decision: 'DE of glucose syrup', input: 'Tg, humidity, viscosity', answer: '42 DE -> 16.8 g reducing sugar per 100 g solids', goesWrong: '63 DE: cold flow; 28 DE: strings', rule: 'blend DE = share x DE', allowance: '± 1' },
    { step: 8, decision: 'Form of glucose: dried', input: 'powder moisture 4 %', answer: '485.0 g solids = 505.3 g powder (liquid 606.3 g)', goesWrong: 'treated 1:1 with liquid: 20 % too much glucose', rule: 'powder = solids /(1-w); liquid equivalent = solids / 0.80', allowance: '0.5 %' },
    { step: 9, decision: 'Make-up water of the powder', input: 'liquid equivalent - powder', answer: '101.1 g', goesWrong: 'lumps, slow wetting; sieve powder, mix with dry sugar', rule: '606.3 - 505.3', allowance: '5 %' },
    { step: 10, decision: 'Water to dissolve the sucrose', input: '33 % of sucrose', answer: '240.1 g (total water 361 g incl. powder moisture; sucrose:water 66.8 %, dissolved from 20-21 °C; without the 101 g from about 58 °C)', goesWrong: 'too little: crystals survive; too much: long boil, colour', rule: '0.33 x 727.6; check by solubility curve', allowance: '10 %' },
    { step: 11, decision: 'Acid type and amount', input: 'flavour, sourness, hygroscopicity', answer: '15.1 g citric = 1.2 %', goesWrong: '> 2 % weeps, < 0.5 % flat', rule: '% of finished mass; citric anhydrous reference, malic x0.85-0.9, tartaric x0.8 for equal sourness (trade)', allowance: '± 0.1 %' },
    { step: 12, decision: 'Buffer for the acid', input: 'pH, hot time', answer: 'optional 2 g sodium citrate', goesWrong: 'none: more inversion at the same sourness', rule: 'citrate 10-20 % of acid' },
    { step: 13, decision: 'Flavour dose', input: 'supplier dose', answer: '3.1 g = 0.25 %', goesWrong: 'volatile loss above 135 °C', rule: '% of finished mass', allowance: 'supplier limit' },
    { step: 14, decision: 'Colour', input: 'form (water or powder), water content', answer: '6.3 g of a 2 % solution carries 6.15 g water = 0.49 % of batch', goesWrong: 'adds 0.45 % moisture if the base is cooked to 2.0 % (finished 2.45 %); at 140 °C most of it flashes off again: wet bound, band 0-100 %', rule: 'colour mass x water content = late water' },
    { step: 15, decision: 'Base moisture before additions', input: 'late water', answer: '1.54 %', goesWrong: 'softer sweets than intended', rule: 'w_base = (w M - late water)/(M - additions)', allowance: '± 0.2 %' },
    { step: 16, decision: 'Cook temperature at sea level', input: 'base moisture, composition', answer: '154.4 °C / 310 °F (152.3 at 2.0 %)', goesWrong: '2 K = 0.4-0.5 % moisture', rule: 'boiling curve of the mix at 1.54 %', allowance: '± 4 to 6 K' },
    { step: 17, decision: 'Altitude / pressure correction', input: 'altitude or own boiling-water reading', answer: 'at 5000 ft: 310 °F -> 299 °F', goesWrong: 'dry and brown if ignored', rule: 'equal solids at the two pressures by the boiling model', allowance: '± 1 °F' },
    { step: 18, decision: 'Thermometer correction', input: 'ice and boil readings', answer: 'sheet value -> dial value', goesWrong: 'target missed by 2-5 °F; correction counted twice', rule: 'linear interpolation; if the pressure came from the same thermometer, its boil offset is already used', allowance: '0.5 K' },
    { step: 19, decision: 'Pan and heat plan', input: 'charge 1574 g, volume', answer: '4-5 L pan; about 12.6 min at 1 kW net', goesWrong: 'boil-over; wall crystals; slow boil browns', rule: 'fill <= 1/3 of pan; evaporation 342 g / power' },
    { step: 20, decision: 'Dissolve stage', input: 'mix dry, wet, heat gently', answer: 'clear by 60-85 °C, wall washed', goesWrong: 'stir after the boil: grain', rule: 'solubility curve', allowance: 'no grit' },
    { step: 21, decision: 'Boil stage', input: 'heat falls from 140 °C', answer: 'stop 1-2 K early (pan carry-over 3 K per kg steel)', goesWrong: 'overshoot, colour', rule: 'dT/dt about 8 K/min (15 °F/min) near the end at 1 kW per kg', allowance: '1 K' },
    { step: 22, decision: 'Additions: fixed order', input: 'acid, flavour, colour', answer: 'colour, flavour <= 125 °C, acid 115-122 °C', goesWrong: 'acid before the rest: 20-50 % inverted', rule: 'off the heat, rest until clear (5 min), colour, flavour, acid, pour at once', allowance: '1-2 min between acid and pour' },
    { step: 23, decision: 'Pour temperature', input: 'mould, viscosity', answer: '131 °C or more depositing; 122-114 °C by hand', goesWrong: 'strings or bubbles', rule: 'deposit >= Tg + 78 K; hand pour down to Tg + 70 to + 62 K; not above the mould limit', allowance: '5 K' },
    { step: 24, decision: 'Cooling', input: 'thickness', answer: '40-60 min to 35 °C in still air; demould <= Tg, wrap <= Tg - 10 K', goesWrong: 'cracks; condensation if refrigerated', rule: 'cooling times' },
    { step: 25, decision: 'Stick insertion time', input: 'skin formation', answer: 'when the pop stands: 1-2 min after pour', goesWrong: 'leaning sticks' },
    { step: 26, decision: 'Inspection', input: 'piece mass, count, gloss, moisture', answer: '98-100 pieces of 12 ± 0.5 g', goesWrong: 'find loss source', rule: 'yield report', allowance: '5 %' },
    { step: 27, decision: 'Wrap and pack', input: 'room relative humidity, critical humidity', answer: 'room <= 0.45 and sealed within 30 min', goesWrong: 'sticky in days', rule: 'room < critical humidity (0.30 at 25 °C)' },
    { step: 28, decision: 'Label', input: 'composition', answer: 'label draft', goesWrong: 'missing warnings', rule: 'sugars, energy (390 kcal/100 g), colour and acid names, net mass, allergens', allowance: 'rounding rules' },
    { step: 29, decision: 'Keeping', input: 'moisture, room, film, seals', answer: 'days from the wrap equation, or never below the critical humidity; no months', goesWrong: 'a printed shelf life nobody measured', rule: 'wrap life; margin of Tg over the store' },
    { step: 30, decision: 'Cost and waste', input: 'prices, yield', answer: 'per piece', goesWrong: 'loss hidden', rule: 'cost / good piece', allowance: '2 %' },
    { step: 31, decision: 'Record', input: 'actual weights and temperatures', answer: 'next batch correction', goesWrong: 'same error again', rule: 'compare plan' },
  ],
  notes: [
    'Late acid costs no glass transition at once and 2.8 K per 10 % inverted once the piece takes its water back.',
  ],
  check: {
    rows: 31,
    sums: {
      step: 496,
    },
  },
} as const satisfies EvidenceTable;
