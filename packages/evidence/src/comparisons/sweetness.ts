import {
  boosterForSweetness,
  type IngredientId,
  type IntenseSweetener,
  type Mixture,
  mixture,
  relativeSweetness,
} from 'vitrose';
import type { EvidenceRow } from '../types.js';
import type { Answer, Comparison } from './types.js';
import { answered, numberIn, textIn } from './types.js';

/** Printed names that are not those of an ingredient. */
const RENAMED: Readonly<Record<string, IngredientId>> = {
  hfcs: 'high-fructose-syrup',
  hsh: 'hydrogenated-starch-hydrolysate',
};

/** Printed sweeteners the library has no value for. */
const NOT_MODELLED: readonly string[] = ['lactulose', 'leucrose', 'maltulose', 'trehalulose'];

const dry = (ingredient: IngredientId): Mixture =>
  mixture([{ ingredient, massG: 100, drySolidsMassFraction: 1 }]);

const syrup = (dextroseEquivalent: number): Mixture =>
  mixture([
    { ingredient: 'glucose-syrup', massG: 100, drySolidsMassFraction: 1, dextroseEquivalent },
  ]);

function printedRange(row: EvidenceRow, low: string, high: string) {
  const range = [numberIn(row, low), numberIn(row, high)] as const;
  return { printedRange: range, printed: (range[0] + range[1]) / 2 };
}

function inPrint(row: EvidenceRow): Answer | undefined {
  const species = textIn(row, 'species');
  if (NOT_MODELLED.includes(species)) return undefined;
  const answer = relativeSweetness(dry(RENAMED[species] ?? (species as IngredientId)));
  return {
    label: species,
    ...printedRange(row, 'sweetnessLow', 'sweetnessHigh'),
    computed: answer.relativeSweetness,
    band: answer.band,
  };
}

/** A row of the recommended values that one ingredient or one starch syrup stands for. */
function recommended(row: EvidenceRow): Mixture | undefined {
  const id = textIn(row, 'id');
  const syrupDe = /^glucose-syrup-(\d+)-de$/.exec(id);
  if (syrupDe !== null) return syrup(Number(syrupDe[1]));
  const group = textIn(row, 'class');
  const single =
    (group === 'sugar' || group === 'polyol') &&
    !['invert-sugar', 'galactose', 'honey-solids', 'maltitol-syrup', 'hsh'].includes(id);
  return single ? dry(id as IngredientId) : undefined;
}

/**
 * How many times as sweet as sugar a sweetener is, at the dose that is as sweet as sugar at so many
 * per cent: salt brings no sweetness of its own, and 50 g in 100 mL leave room for strong doses.
 */
function potency(sweetener: IntenseSweetener, sucroseEquivalencePercent: number): number {
  const targetRelativeSweetness = sucroseEquivalencePercent / 50;
  const { massFraction } = answered(
    boosterForSweetness(dry('salt'), {
      sweetener,
      targetRelativeSweetness,
      tastingConcentrationGPer100Ml: 50,
    }),
  );
  return targetRelativeSweetness / massFraction;
}

/** Relative sweetness against printed ranges, and against strength. */
export const SWEETNESS_COMPARISONS: readonly Comparison[] = [
  ...(['sweetness-review-2014', 'sweetness-factsheet-2008'] as const).map(
    (table): Comparison => ({
      table,
      column: 'sweetnessLow',
      model: 'relativeSweetness',
      answer: inPrint,
    }),
  ),
  {
    table: 'sweetness-recommended',
    column: 'recommended',
    model: 'relativeSweetness',
    answer: (row) => {
      const asked = recommended(row);
      if (asked === undefined) return undefined;
      const answer = relativeSweetness(asked);
      return {
        label: textIn(row, 'id'),
        computed: answer.relativeSweetness,
        band: answer.band,
      };
    },
  },
  {
    table: 'sweetness-glucose-syrup-de',
    column: 'low',
    model: 'relativeSweetness',
    answer: (row) => {
      const answer = relativeSweetness(syrup(numberIn(row, 'dextroseEquivalent')));
      return {
        label: `DE ${numberIn(row, 'dextroseEquivalent')}`,
        ...printedRange(row, 'low', 'high'),
        computed: answer.relativeSweetness,
        band: answer.band,
      };
    },
  },
  {
    table: 'sweetness-fructose-temperature',
    column: 'relativeSweetness',
    model: 'relativeSweetness',
    answer: (row) => ({
      label: `${numberIn(row, 'temperatureC')} °C`,
      computed: relativeSweetness(dry('fructose'), {
        tastingTemperatureC: numberIn(row, 'temperatureC'),
      }).relativeSweetness,
    }),
  },
  {
    table: 'sweetness-glucose-concentration',
    column: 'relativeSweetness',
    model: 'relativeSweetness',
    answer: (row) => ({
      label: `as sweet as sugar at ${numberIn(row, 'sucrosePercent')} %`,
      computed: relativeSweetness(dry('glucose'), {
        sucroseEquivalencePercent: numberIn(row, 'sucrosePercent'),
      }).relativeSweetness,
    }),
  },
  {
    table: 'sweetness-checkpoints',
    column: 'potency',
    model: 'boosterForSweetness',
    answer: (row) => {
      const strength = numberIn(row, 'sucroseEquivalencePercent');
      const cold = typeof row.temperatureC === 'number' ? `, ${row.temperatureC} °C` : '';
      return {
        label: `${textIn(row, 'sweetener')} as sweet as sugar at ${strength} %${cold}`,
        computed: potency(textIn(row, 'sweetener') as IntenseSweetener, strength),
      };
    },
  },
];
