import {
  grainingTime,
  type IngredientId,
  isNone,
  type Mixture,
  mixture,
  type SpeciesId,
  solubility,
  solutionOf,
  sucroseSolubility,
  sucroseSupersaturation,
  waterAtRelativeHumidity,
} from 'vitrose';
import type { EvidenceRow } from '../types.js';
import { type Answer, answered, type Comparison, numberIn, textIn } from './types.js';

/** Sucrose and other solids on one gram of water. */
const onWater = (sucroseG: number, otherG: number): Mixture =>
  mixture([
    { ingredient: 'sucrose', massG: sucroseG },
    { ingredient: 'glucose' satisfies IngredientId, massG: otherG, drySolidsMassFraction: 1 },
    { ingredient: 'water', massG: 1 },
  ]);

const linearly = (of: Mixture): number =>
  answered(sucroseSupersaturation(of, { temperatureC: 20, equation: 'linear' })).supersaturation;

/** Sucrose that saturates one gram of water beside other solids, g: supersaturation is linear in it. */
const saturatingG = (otherG: number): number => 1 / linearly(onWater(1, otherG));

const others = (row: EvidenceRow): number => numberIn(row, 'nonSucroseGPerGWater');

/** A skin of spun sucrose in air of that humidity at 25 °C. */
function spunSucrose(row: EvidenceRow): Answer | undefined {
  if (typeof row.relativeHumidityPercent !== 'number') return undefined;
  const dry = solutionOf('sucrose', { drySolidsMassFraction: 0.99 });
  const { moistureMassFraction } = answered(
    waterAtRelativeHumidity(dry, {
      relativeHumidity: row.relativeHumidityPercent / 100,
      temperatureC: 25,
    }),
  );
  const skin = solutionOf('sucrose', { drySolidsMassFraction: 1 - moistureMassFraction });
  const { log10Days, band } = answered(grainingTime(skin, { temperatureC: 25 }));
  return {
    label: `${row.relativeHumidityPercent} % relative humidity`,
    computed: log10Days,
    band: [Math.log10(band[0]), Math.log10(band[1])],
  };
}

/** What was seen has one end: it stood longer than that, or it grained before. */
const observed = (column: 'observedFromDays' | 'observedToDays'): Comparison => ({
  table: 'graining-anchors',
  column,
  model: 'grainingTime',
  unit: 'decades of days',
  answer: (row) => {
    if (typeof row[column] !== 'number') return undefined;
    const answer = spunSucrose(row);
    if (answer === undefined) return undefined;
    const printed = Math.log10(numberIn(row, column));
    const printedRange: readonly [number, number] =
      column === 'observedFromDays' ? [printed, Infinity] : [-Infinity, printed];
    return { ...answer, printed, printedRange };
  },
});

/** Solubility, saturation beside other solids, and when spun sugar grained. */
export const GRAINING_COMPARISONS: readonly Comparison[] = [
  {
    table: 'graining-sucrose-solubility',
    column: 'byCharlesPercent',
    model: 'sucroseSolubility',
    answer: (row) => ({
      label: `${numberIn(row, 'temperatureC')} °C`,
      computed:
        sucroseSolubility(numberIn(row, 'temperatureC'), { equation: 'charles' })
          .sucroseMassFraction * 100,
    }),
  },
  {
    table: 'graining-solubility-others',
    column: 'solubilityPercent',
    model: 'solubility',
    answer: (row) => {
      const solute = textIn(row, 'solute');
      const found = solubility(solute as SpeciesId, numberIn(row, 'temperatureC'));
      if (isNone(found)) return undefined;
      return {
        label: `${solute}, ${numberIn(row, 'temperatureC')} °C`,
        computed: found.massFraction * 100,
      };
    },
  },
  {
    table: 'graining-saturation',
    column: 'saturationLinear',
    model: 'sucroseSupersaturation',
    answer: (row) => ({
      label: `${others(row)} g on a gram of water`,
      computed: saturatingG(others(row)) / saturatingG(0),
    }),
  },
  {
    table: 'graining-saturation',
    column: 'totalSolidsAt20CPercent',
    model: 'sucroseSupersaturation',
    answer: (row) => {
      if (row.totalSolidsAt20CPercent === null) return undefined;
      const solidsG = saturatingG(others(row)) + others(row);
      return {
        label: `${others(row)} g on a gram of water`,
        computed: (100 * solidsG) / (1 + solidsG),
      };
    },
  },
  observed('observedFromDays'),
  observed('observedToDays'),
];
