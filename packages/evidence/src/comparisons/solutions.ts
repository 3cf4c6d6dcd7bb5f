import { densityFromBrix, sucroseSolubility } from 'vitrose';
import type { EvidenceRow } from '../types.js';
import type { Comparison } from './types.js';
import { numberIn } from './types.js';

const warmth = (row: EvidenceRow): string => `${numberIn(row, 'temperatureC')} °C`;

/** Density of sucrose solutions and how much sugar water takes up. */
export const SOLUTION_COMPARISONS: readonly Comparison[] = [
  {
    table: 'density-sucrose-20c',
    column: 'densityKgPerM3',
    model: 'densityFromBrix',
    answer: (row) => {
      const brix = numberIn(row, 'drySolidsPercent');
      return {
        label: `${brix} % solids`,
        computed: densityFromBrix({ brix, temperatureC: 20 }).densityKgPerM3,
      };
    },
  },
  {
    table: 'density-water',
    column: 'densityKgPerM3',
    model: 'densityFromBrix',
    answer: (row) => ({
      label: warmth(row),
      computed: densityFromBrix({ brix: 0, temperatureC: numberIn(row, 'temperatureC') })
        .densityKgPerM3,
    }),
  },
  ...(['byVavrineczPercent', 'solubilityPercent'] as const).map(
    (column): Comparison => ({
      table: 'graining-sucrose-solubility',
      column,
      model: 'sucroseSolubility',
      answer: (row) => ({
        label: warmth(row),
        computed: sucroseSolubility(numberIn(row, 'temperatureC')).sucroseMassFraction * 100,
      }),
    }),
  ),
];
