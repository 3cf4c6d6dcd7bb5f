// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** What learners believe. */
export const practiceMisconceptionsTable = {
  id: 'practice-misconceptions',
  title: 'What learners believe',
  source: {
    authors: 'Keeley, P., for the third row; otherwise common practice',
    year: 'n.d.',
    title: 'Boiling time and temperature, formative probe',
    locator: 'see rows',
  },
  grade: 'practice',
  did: 'Common practice of the trade; no publication stands behind it.',
  units: {},
  rows: [
    { belief: 'the sugar melts in the pan of syrup', correct: 'it dissolves; the crystals are gone at 60-85 °C, and the end point is set by water left' },
    { belief: 'a hotter burner makes hotter syrup at the same moment', correct: 'the boiling temperature is fixed by composition and pressure; power sets the speed only' },
    { belief: 'boiling water is always 100 °C (212 °F)', correct: 'altitude and weather shift it; learners also think a pure liquid gets hotter the longer it boils' },
    { belief: 'the temperature should rise steadily', correct: 'it stalls, then climbs steeply since the last 50 g of water per kg of sugar carry 130 to 150 °C' },
    { belief: 'above 212 °F the sugar gets hotter but not the water', correct: 'one liquid, one temperature; composition decides it' },
    { belief: 'the thermometer measures doneness', correct: 'it measures the water left (a hygrometer for solids), only for the sugar mix it was calibrated on' },
    { belief: 'stirring keeps it from crystallising', correct: 'stirring a supersaturated syrup starts crystals; it is fine before the boil' },
    { belief: 'sugar can be added late to correct the mix', correct: 'undissolved crystals seed the whole batch' },
    { belief: 'corn syrup only makes it sweeter', correct: 'it is less sweet; it blocks crystals, and at equal humidity it holds more water (dry, it raises Tg a little: 62 to 74 °C for 60:40)' },
    { belief: 'humid day: the syrup boils at another temperature', correct: 'room humidity does not affect boiling; it affects the cooling glass' },
    { belief: 'cook longer = harder, always', correct: 'until browning and inversion make it softer and stickier' },
    { belief: 'sugar has a melting point (186 °C)', correct: "sucrose decomposes as it liquefies; the 'melting point' shifts with heating rate" },
    { belief: 'a stage is a temperature', correct: 'a stage is a texture at a solids content; the temperature is a proxy' },
    { belief: 'sugar-free sweets have no calories', correct: 'polyols give about 2.4 kcal/g in EU labelling' },
    { belief: 'acid in at the start gives more sourness', correct: 'it inverts the sugar and makes weeping' },
    { belief: 'a stiff sweet must be crystalline', correct: 'it is a glass; crystalline would be opaque and crumbly' },
  ],
  check: {
    rows: 16,
    sums: {
    },
  },
} as const satisfies EvidenceTable;
