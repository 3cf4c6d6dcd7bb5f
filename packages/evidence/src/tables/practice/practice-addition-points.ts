// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** When things go into the pan. */
export const practiceAdditionPointsTable = {
  id: 'practice-addition-points',
  title: 'When things go into the pan',
  source: {
    authors: 'Common practice',
    year: 'n.d.',
    title: 'Common practice of the trade',
    locator: 'none',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  units: { lowC: '°C of the mass', highC: '°C of the mass' },
  constants: {
    stepOrder: ['off the heat', 'rest until clear, about 5 min', 'colour', 'flavour', 'acid', 'pour at once'],
  },
  rows: [
    { what: 'glucose syrup', when: 'after sucrose is dissolved, about 100-110 °C', lowC: 100, highC: 110, why: 'less foam, less colour on the wall', publication: 'sugar-craft class notes', grade: 'secondary' },
    { what: 'cream of tartar', when: 'at the first boil', lowC: null, highC: null, why: 'controlled inversion', publication: 'Hess, Hard Candy: Cooking', grade: 'secondary' },
    { what: 'water-based colour', when: 'off the heat after the rest, before the acid; or at 125-140 °C (260-285 °F)', lowC: 125, highC: 140, why: 'part of its water flashes off, at 140 °C most of it', publication: 'class notes and a teaching lab sheet', grade: 'secondary' },
    { what: 'tartaric acid for pulled sugar', when: '130 °C / 138 °C (280 °F) / 163 °C (325 °F): three schools disagree', lowC: 130, highC: 163, why: 'the later, the less inversion; the earlier, the softer and stickier', publication: 'three pastry schools, which disagree', grade: 'secondary' },
    { what: 'citric / malic acid for taste', when: 'last, after the rest and after colour and flavour, at 115-122 °C, stirred in within a minute and poured at once; as fine dry powder or 50 % solution with a moisture allowance', lowC: 115, highC: 122, why: 'inversion slows 2.3 times per 10 K, 10.5 times from 150 to 120 °C', grade: 'practice' },
    { what: 'oil flavour', when: 'off the heat when boiling has stopped and bubbles are clear, at or below 125 °C', lowC: null, highC: 125, why: 'flash-off', publication: 'a teaching lab sheet', grade: 'secondary' },
    { what: 'acesulfame-K', when: 'at any time, also in the boil', lowC: null, highC: null, why: 'stands the boil (recalled); the choice where a polyol melt is poured above 120 °C', grade: 'practice' },
    { what: 'sucralose, aspartame', when: 'only when the mass is at or below 120 °C; hotter is an error', lowC: null, highC: 120, why: 'sucralose breaks down from 120 °C, with possible chlorinated products; aspartame loses sweetness', publication: 'BfR opinion 012/2019 (sucralose)', grade: 'secondary' },
    { what: 'flavour in propylene glycol, alcohol or glycerol', when: 'flame out, mass at or below 125 °C, face back', lowC: null, highC: 125, why: 'vapour: propylene glycol flashes at about 99 to 104 °C (recalled), alcohol at 16.6 to 29 °C; do not breathe it', grade: 'memory' },
    { what: 'sodium bicarbonate (brittle)', when: 'off the heat, the whole mass in a pan at most a third full', lowC: null, highC: null, why: 'it foams at once', grade: 'practice' },
    { what: 'pouring into moulds', when: 'depositing at Tg + 78 K or more (10 Pa s; 131 °C for 60:40 at 2 %), hand pouring down to Tg + 70 to + 62 K (30-100 Pa s; 122-114 °C for the same sweet); isomalt 130-150 °C', lowC: null, highC: null, why: 'viscosity; below the hand-pouring floor it strings', grade: 'practice' },
    { what: 'slab work, pulling', when: 'mass at 70-90 °C; sugar art at 50-55 °C', lowC: 50, highC: 90, why: 'plastic range just above Tg', publication: 'McGee 2004', grade: 'secondary' },
    { what: 'marking squares on a slab', when: 'about 5 min after pouring a 20 cm square', lowC: null, highC: null, why: 'surface firm, core plastic', publication: 'a teaching lab sheet', grade: 'secondary' },
  ],
  notes: [
    'Acid before the rest: 5 min at 125 to 130 °C inverts roughly 20 to 50 % by the rate law.',
    'Depositing at 131 °C or more leaves no room for acid; hand pouring down to 114 to 122 °C does.',
    'Alcohol in a flavour counts as lost.',
    'The mass burns: pour, fold and mark with gloves and dry tools.',
  ],
  check: {
    rows: 13,
    sums: {
      lowC: 520,
      highC: 995,
    },
  },
} as const satisfies EvidenceTable;
