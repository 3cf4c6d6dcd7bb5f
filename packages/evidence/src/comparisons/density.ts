import {
  baumeFromBrix,
  brixTemperatureCorrection,
  densityFromBrix,
  drySolidsFromCommercialBaume,
  glucoseSyrupCommercialBaume,
  glucoseSyrupDensity,
  glucoseSyrupRefractiveIndex,
  refractiveIndexFromBrix,
  type TemperatureCorrection,
} from 'vitrose';
import type { EvidenceRow } from '../types.js';
import { answered, type Comparison, numberIn, textIn } from './types.js';

const strength = (row: EvidenceRow): string => `${numberIn(row, 'brix')} °Bx`;
const solids = (row: EvidenceRow): number => numberIn(row, 'drySolidsPercent') / 100;

/** One printed syrup: its figure, its degrees and what it holds. */
const drum = (row: EvidenceRow): string =>
  `DE ${numberIn(row, 'dextroseEquivalent')}, ${numberIn(row, 'drySolidsPercent')} % solids`;

/** Refraction, Baumé and the density of glucose syrup. */
export const DENSITY_COMPARISONS: readonly Comparison[] = [
  {
    table: 'density-brix-baume',
    column: 'baume',
    model: 'baumeFromBrix',
    answer: (row) => ({
      label: strength(row),
      computed: baumeFromBrix(numberIn(row, 'brix')).baume,
    }),
  },
  {
    table: 'density-ri-icumsa1974',
    column: 'refractiveIndex',
    model: 'refractiveIndexFromBrix',
    answer: (row) => ({
      label: strength(row),
      computed: refractiveIndexFromBrix(numberIn(row, 'brix')).refractiveIndex,
    }),
  },
  {
    table: 'density-ri-temperature',
    column: 'correctionBrix',
    model: 'brixTemperatureCorrection',
    answer: (row) => {
      const [brix, temperatureC] = [numberIn(row, 'readBrix'), numberIn(row, 'temperatureC')];
      const { correctionBrix, band } = answered<TemperatureCorrection>(
        brixTemperatureCorrection({ brix, temperatureC }),
      );
      return { label: `${brix} °Bx at ${temperatureC} °C`, computed: correctionBrix, band };
    },
  },
  ...([20, 30, 45, 60] as const).map(
    (temperatureC): Comparison => ({
      table: 'syrup-refractive-index',
      column: `indexAt${temperatureC}C`,
      model: 'glucoseSyrupRefractiveIndex',
      answer: (row) => ({
        label: `${numberIn(row, 'drySolidsPercent')} % solids at ${temperatureC} °C`,
        computed: glucoseSyrupRefractiveIndex({ drySolidsMassFraction: solids(row), temperatureC })
          .refractiveIndex,
      }),
    }),
  ),
  {
    table: 'syrup-density',
    column: 'ratioToSucrose',
    model: 'glucoseSyrupDensity',
    answer: (row) => {
      const temperatureC = numberIn(row, 'temperatureC');
      const sucrose = densityFromBrix({ brix: 100 * solids(row), temperatureC }).densityKgPerM3;
      const { densityKgPerM3, band } = glucoseSyrupDensity({
        dextroseEquivalent: numberIn(row, 'dextroseEquivalent'),
        drySolidsMassFraction: solids(row),
        temperatureC,
      });
      return {
        label: drum(row),
        computed: densityKgPerM3 / sucrose,
        band: [band[0] / sucrose, band[1] / sucrose],
      };
    },
  },
  {
    table: 'density-candy-mass',
    column: 'densityGPerMl',
    model: 'glucoseSyrupDensity',
    answer: (row) => {
      const mass = textIn(row, 'mass');
      if (mass !== '42 DE syrup 80 % ds, 20 C') return undefined;
      const { densityKgPerM3, band } = glucoseSyrupDensity({
        dextroseEquivalent: 42,
        drySolidsMassFraction: 0.8,
        temperatureC: 20,
      });
      return {
        label: 'DE 42, 80 % solids at 20 °C',
        printedRange: [numberIn(row, 'lowGPerMl'), numberIn(row, 'highGPerMl')],
        computed: densityKgPerM3 / 1_000,
        band: [band[0] / 1_000, band[1] / 1_000],
      };
    },
  },
  {
    table: 'syrup-solids-baume',
    column: 'commercialBaume',
    model: 'glucoseSyrupCommercialBaume',
    answer: (row) => {
      const { commercialBaume, band } = glucoseSyrupCommercialBaume({
        dextroseEquivalent: numberIn(row, 'dextroseEquivalent'),
        drySolidsMassFraction: solids(row),
      });
      return { label: drum(row), computed: commercialBaume, band };
    },
  },
  {
    table: 'syrup-solids-baume',
    column: 'drySolidsPercent',
    model: 'drySolidsFromCommercialBaume',
    answer: (row) => {
      const { drySolidsMassFraction, band } = drySolidsFromCommercialBaume({
        commercialBaume: numberIn(row, 'commercialBaume'),
        dextroseEquivalent: numberIn(row, 'dextroseEquivalent'),
      });
      return {
        label: `DE ${numberIn(row, 'dextroseEquivalent')}, ${numberIn(row, 'commercialBaume')} °Bé`,
        computed: 100 * drySolidsMassFraction,
        band: [100 * band[0], 100 * band[1]],
      };
    },
  },
];
