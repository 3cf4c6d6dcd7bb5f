import {
  type BoilDown,
  boilDown,
  coolingTime,
  evaporateTo,
  type HeatSource,
  hobPower,
  type Mixture,
  mixture,
  specificHeat,
} from 'vitrose';
import type { EvidenceRow } from '../types.js';
import type { Comparison } from './types.js';
import { answered, numberIn, textIn } from './types.js';

const RESISTANCE: HeatSource = { kind: 'resistance', powerW: 2_000 };
const GAS: HeatSource = { kind: 'gas', powerW: 3_000 };
const INDUCTION: HeatSource = { kind: 'induction', powerW: 1_800 };

/** The charge of the worked example. */
const example = (): Mixture =>
  mixture([
    { ingredient: 'sucrose', massG: 1_000 },
    {
      ingredient: 'glucose-syrup',
      massG: 350,
      drySolidsMassFraction: 0.803,
      dextroseEquivalent: 42,
    },
    { ingredient: 'water', massG: 350 },
  ]);

const boiled = (hob: HeatSource = RESISTANCE): BoilDown =>
  answered(boilDown(example(), { hob, targetDrySolidsMassFraction: 0.975 }));

/** What the library says to each quantity of the worked example. */
const QUANTITIES: Readonly<Record<string, () => number>> = {
  'start solids, 0 to 1': () => example().drySolidsMassFraction,
  'boil starts, °C': () => boiled().firstBoilC,
  'water evaporated, kg': () => boiled().evaporatedG / 1_000,
  'water left, kg': () => boiled().waterLeftG / 1_000,
  'finished mass, kg': () => evaporateTo(example(), { drySolidsMassFraction: 0.975 }).massG / 1_000,
  'heat to the boil, kJ': () => boiled().heatKJ.warming,
  'dissolving the sucrose, kJ': () => boiled().heatKJ.dissolving,
  'evaporation, kJ': () => boiled().heatKJ.evaporation,
  'warming after the boil starts, kJ': () => boiled().heatKJ.concentrating,
  'total, kJ': () => boiled().heatKJ.total,
  'electric 2.0 kW at 0.75, min': () => boiled(RESISTANCE).minutes,
  'gas 3.0 kW at 0.36, min': () => boiled(GAS).minutes,
  'induction 1.8 kW at 0.85, min': () => boiled(INDUCTION).minutes,
  'end temperature, °C': () => boiled().endC,
};

const HOBS: Readonly<Record<string, 'gas' | 'resistance' | 'induction'>> = {
  gas: 'gas',
  'electric resistance': 'resistance',
  induction: 'induction',
};

/** A kilowatt that reaches the pan, whatever the hob wastes. */
const KILOWATT: HeatSource = { kind: 'resistance', powerW: 1_000 / 0.75 };

/** Boil-down of the practice table to the solids of a row; its first row is where it starts. */
function curveTo(row: EvidenceRow): BoilDown | undefined {
  const charge = mixture([
    { ingredient: 'sucrose', massG: 1_000 },
    { ingredient: 'water', massG: 330 },
  ]);
  const solids = numberIn(row, 'drySolidsPercent') / 100;
  if (numberIn(row, 'minutes') === 0) return undefined;
  const found = boilDown(charge, { hob: KILOWATT, targetDrySolidsMassFraction: solids });
  return answered(found);
}

const alongTheCurve = (column: string, computedOf: (boil: BoilDown) => number): Comparison => ({
  table: 'practice-boil-curve',
  column,
  model: 'boilDown',
  answer: (row) => {
    const boil = curveTo(row);
    if (boil === undefined) return undefined;
    return {
      label: `${numberIn(row, 'drySolidsPercent')} % solids`,
      computed: computedOf(boil),
    };
  },
});

/** Mass and cooled surface of a printed shape, at the 1.5 g/mL of the table. */
function shape(text: string): { readonly massG: number; readonly areaCm2: number } {
  const sizeCm = Number(/(\d+) mm/.exec(text)?.[1]) / 10;
  if (text.startsWith('sphere')) {
    return { massG: (1.5 * Math.PI * sizeCm ** 3) / 6, areaCm2: Math.PI * sizeCm ** 2 };
  }
  // The rim of a disc is left out, as in print: any face does.
  const faceCm2 = 10;
  return {
    massG: 1.5 * faceCm2 * sizeCm,
    areaCm2: text.includes('one face') ? faceCm2 : 2 * faceCm2,
  };
}

/** The library against the heat tables. */
export const HEAT_COMPARISONS: readonly Comparison[] = [
  {
    table: 'heat-cp',
    column: 'specificHeatKJPerKgK',
    model: 'specificHeat',
    answer: (row) => {
      const [brix, temperatureC] = [numberIn(row, 'brix'), numberIn(row, 'temperatureC')];
      const found = specificHeat({ brix, temperatureC, purity: numberIn(row, 'purityPercent') });
      return {
        label: `${brix} °Bx, ${temperatureC} °C`,
        computed: found.specificHeatKJPerKgK,
        band: found.band,
      };
    },
  },
  {
    table: 'heat-efficiency',
    column: 'use',
    model: 'hobPower',
    answer: (row) => {
      const kind = HOBS[textIn(row, 'kind')];
      if (kind === undefined) return undefined;
      const { powerW, band } = hobPower({ kind, powerW: 1 });
      return {
        label: textIn(row, 'kind'),
        printedRange: [numberIn(row, 'low'), numberIn(row, 'high')],
        computed: powerW,
        band,
      };
    },
  },
  {
    table: 'heat-worked-example',
    column: 'value',
    model: 'boilDown',
    answer: (row) => {
      const label = textIn(row, 'quantity');
      const computed = QUANTITIES[label];
      return computed && { label, computed: computed() };
    },
  },
  alongTheCurve('minutes', ({ minutes, firstBoilS }) => minutes - firstBoilS / 60),
  alongTheCurve('waterLeftG', ({ waterLeftG }) => waterLeftG),
  alongTheCurve('rateKPerMin', ({ rateAtEndKPerMin }) => rateAtEndKPerMin),
  {
    table: 'practice-cooling-times',
    column: 'minutes',
    model: 'coolingTime',
    answer: (row) => {
      const label = textIn(row, 'shape');
      const found = coolingTime({
        ...shape(label),
        fromC: 140,
        toC: 35,
        coefficientWPerM2K: numberIn(row, 'coefficientWPerM2K'),
      });
      const { minutes, band } = answered(found);
      return { label, computed: minutes, band };
    },
  },
];
