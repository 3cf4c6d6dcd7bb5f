import type { EvidenceTable } from '../../types.js';

/** 1.0 kg sucrose, 0.35 kg of 42 DE syrup at 80.3 % and 0.35 kg water taken to 97.5 %. */
export const heatWorkedExampleTable = {
  id: 'heat-worked-example',
  title: '1.0 kg sucrose, 0.35 kg of 42 DE syrup at 80.3 % and 0.35 kg water taken to 97.5 %',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Computed with the boiling curve and the specific heat',
    locator: 'from 20 °C, even evaporation, 101325 Pa',
  },
  grade: 'derived',
  did: 'Computed here.',
  units: { value: 'as the quantity says' },
  rows: [
    { quantity: 'start solids, 0 to 1', value: 0.7536 },
    { quantity: 'boil starts, °C', value: 106.7 },
    { quantity: 'water evaporated, kg', value: 0.3861 },
    { quantity: 'water left, kg', value: 0.0328 },
    { quantity: 'finished mass, kg', value: 1.3139 },
    { quantity: 'heat to the boil, kJ', value: 391 },
    { quantity: 'dissolving the sucrose, kJ', value: 18 },
    { quantity: 'evaporation, kJ', value: 856 },
    { quantity: 'warming after the boil starts, kJ', value: 149 },
    { quantity: 'total, kJ', value: 1415 },
    { quantity: 'electric 2.0 kW at 0.75, min', value: 15.7 },
    { quantity: 'gas 3.0 kW at 0.36, min', value: 21.8 },
    { quantity: 'induction 1.8 kW at 0.85, min', value: 15.4 },
    { quantity: 'end temperature, °C', value: 150.5 },
  ],
  tolerance: {
    text: '2 % on total heat and times, 5 % on single terms, 0.1 °C, 0.0001 kg.',
    limits: [
      {
        column: 'value',
        worst: 0.02,
        relative: true,
        rows: {
          column: 'quantity',
          is: [
            'total, kJ',
            'electric 2.0 kW at 0.75, min',
            'gas 3.0 kW at 0.36, min',
            'induction 1.8 kW at 0.85, min',
          ],
        },
      },
      {
        column: 'value',
        worst: 0.05,
        relative: true,
        rows: {
          column: 'quantity',
          is: [
            'heat to the boil, kJ',
            'dissolving the sucrose, kJ',
            'evaporation, kJ',
            'warming after the boil starts, kJ',
          ],
        },
      },
      {
        column: 'value',
        worst: 0.1,
        rows: { column: 'quantity', is: ['boil starts, °C', 'end temperature, °C'] },
      },
      {
        column: 'value',
        worst: 0.0001,
        rows: {
          column: 'quantity',
          is: [
            'start solids, 0 to 1',
            'water evaporated, kg',
            'water left, kg',
            'finished mass, kg',
          ],
        },
      },
    ],
  },
  notes: [
    'Dissolving at 18 kJ/kg (Belitz and others 2009, p. 879).',
    'Pan and open surface are left out: 80 kJ for a 1.2 kg steel pan, 100 to 200 W of loss.',
  ],
  check: {
    rows: 14,
    sums: {
      value: 3141.5864,
    },
  },
} as const satisfies EvidenceTable;
