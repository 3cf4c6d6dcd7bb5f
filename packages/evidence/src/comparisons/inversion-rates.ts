import { densityFromBrix, inversionRate } from 'vitrose';
import type { EvidenceRow } from '../types.js';
import type { Comparison } from './types.js';
import { numberIn, textIn } from './types.js';

/** pH and g of water per mL of the printed rates; the others say how much was inverted. */
const RATES: Readonly<Record<string, readonly [pH: number, waterGPerMl: number]>> = {
  'hydrochloric-23C': [-Math.log10(0.5), 0.94],
  'hydrochloric-35C': [-Math.log10(0.5), 0.94],
  'neutral-27C': [7, 0.9965],
};

/** Rate at 65 per cent sucrose, the density taken at 100 °C at most. */
function ratePerMin(row: EvidenceRow): number {
  const temperatureC = numberIn(row, 'temperatureC');
  const sucrose = numberIn(row, 'sucroseMassFraction');
  const { densityKgPerM3 } = densityFromBrix({
    brix: 100 * sucrose,
    temperatureC: Math.min(100, temperatureC),
  });
  const waterGPerMl = ((1 - sucrose) * densityKgPerM3) / 1_000;
  return inversionRate({ pH: numberIn(row, 'ph'), temperatureC, waterGPerMl }).ratePerMin;
}

const gridLabel = (row: EvidenceRow): string =>
  `${numberIn(row, 'temperatureC')} °C, pH ${numberIn(row, 'ph')}`;

/** The law beside printed rates, printed energies and its own grid. */
export const INVERSION_RATE_COMPARISONS: readonly Comparison[] = [
  {
    table: 'inversion-activation-energy',
    column: 'activationEnergyKJPerMol',
    model: 'inversionRate',
    answer: (row) => {
      const rate = (temperatureC: number) =>
        inversionRate({ pH: 3, temperatureC, waterGPerMl: 0.4 }).ratePerMin;
      const between = 1 / 393.15 - 1 / 423.15;
      const computed = (0.008314462618 * Math.log(rate(150) / rate(120))) / between;
      return { label: textIn(row, 'publication'), computed };
    },
  },
  {
    table: 'inversion-check-rows',
    column: 'ratePerMin',
    model: 'inversionRate',
    answer: (row) => {
      const id = textIn(row, 'id');
      const [pH, waterGPerMl] = RATES[id] ?? [];
      if (pH === undefined || waterGPerMl === undefined) return undefined;
      const temperatureC = numberIn(row, 'temperatureC');
      return {
        label: id,
        computed: inversionRate({ pH, temperatureC, waterGPerMl }).ratePerMin,
      };
    },
  },
  {
    table: 'inversion-computed-grid',
    column: 'ratePerMin',
    model: 'inversionRate',
    answer: (row) => ({ label: gridLabel(row), computed: ratePerMin(row) }),
  },
  {
    table: 'inversion-computed-grid',
    column: 'invertedPercentPerHour',
    model: 'inversionRate',
    answer: (row) => ({
      label: gridLabel(row),
      computed: -100 * Math.expm1(-60 * ratePerMin(row)),
    }),
  },
];
