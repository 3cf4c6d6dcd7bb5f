import {
  dryGlassTransition,
  glassTransition,
  type IngredientId,
  type Mixture,
  mixture,
  type Part,
} from 'vitrose';
import type { EvidenceRow } from '../types.js';
import type { Comparison } from './types.js';
import { numberIn, textIn } from './types.js';

const dry = (ingredient: IngredientId, massG: number): Part => ({
  ingredient,
  massG,
  drySolidsMassFraction: 1,
});

const syrupSolids = (dextroseEquivalent: number, massG: number): Part => ({
  ...dry('maltodextrin', massG),
  dextroseEquivalent,
});

const withWater = (solids: readonly Part[], waterG: number): Mixture =>
  mixture([...solids, { ingredient: 'water', massG: waterG }]);

const SIXTY_FORTY = [dry('sucrose', 60), syrupSolids(42, 40)] as const;

/** Solutes of the table of dry transitions, under the name of an ingredient. */
const DRY_SOLUTES: Readonly<Record<string, IngredientId>> = {
  sucrose: 'sucrose',
  glucose: 'glucose',
  fructose: 'fructose',
  maltose: 'maltose',
  lactose: 'lactose',
  trehalose: 'trehalose',
  isomaltulose: 'isomaltulose',
  isomalt: 'isomalt',
  maltitol: 'maltitol',
  lactitol: 'lactitol',
  xylitol: 'xylitol',
  sorbitol: 'sorbitol',
  mannitol: 'mannitol',
  erythritol: 'erythritol',
  glycerol: 'glycerol',
  polydextrose: 'polydextrose',
  'inulin (DP about 10)': 'inulin',
  'citric acid': 'citric-acid',
  'malic acid': 'malic-acid',
  'tartaric acid': 'tartaric-acid',
};

/** Dry parts of a material of the table of critical water, and the transition it is asked for. */
function critical(material: string): { readonly parts: readonly Part[]; readonly atC: number } {
  const syrup = /DE (\d+)$/.exec(material);
  if (material === 'hard candy 60:40 sucrose:DE 42') return { parts: SIXTY_FORTY, atC: 25 };
  if (material.includes('sticking starts')) return { parts: SIXTY_FORTY, atC: 15 };
  if (material.includes('fully sticky')) return { parts: SIXTY_FORTY, atC: 5 };
  if (syrup !== null) return { parts: [syrupSolids(Number(syrup[1]), 100)], atC: 25 };
  return { parts: [dry(material as IngredientId, 100)], atC: 25 };
}

/** Water, g on 100 g of solids, that brings the transition down to a temperature. */
function waterThatMeets({ parts, atC }: ReturnType<typeof critical>): number {
  let low = 0;
  let high = 60;
  while (high - low > 1e-6) {
    const middle = (low + high) / 2;
    if (glassTransition(withWater(parts, middle)).glassTransitionC > atC) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

const pointSolids = (row: EvidenceRow): readonly Part[] =>
  textIn(row, 'system') === 'maltodextrin' ? [syrupSolids(10, 100)] : [dry('lactose', 100)];

/** Dry transitions and what water does to them. */
export const GLASS_COMPARISONS: readonly Comparison[] = [
  {
    table: 'glass-tg-dry',
    column: 'recommendedC',
    model: 'dryGlassTransition',
    answer: (row) => {
      const solute = textIn(row, 'solute');
      const ingredient = DRY_SOLUTES[solute];
      if (ingredient === undefined) return undefined;
      const { glassTransitionC, band } = dryGlassTransition(mixture([dry(ingredient, 100)]));
      return { label: solute, computed: glassTransitionC, band };
    },
  },
  {
    table: 'glass-tg-de',
    column: 'glassTransitionC',
    model: 'dryGlassTransition',
    answer: (row) => {
      const dextroseEquivalent = numberIn(row, 'dextroseEquivalent');
      const { glassTransitionC, band } = dryGlassTransition(
        mixture([syrupSolids(dextroseEquivalent, 100)]),
      );
      return { label: `DE ${dextroseEquivalent}`, computed: glassTransitionC, band };
    },
  },
  {
    table: 'glass-tg-water-points',
    column: 'glassTransitionC',
    model: 'glassTransition',
    answer: (row) => {
      const { glassTransitionC, band } = glassTransition(
        withWater(pointSolids(row), numberIn(row, 'waterGPer100GSolids')),
      );
      return { label: textIn(row, 'system'), computed: glassTransitionC, band };
    },
  },
  {
    table: 'glass-critical-water',
    column: 'waterGPer100GSolids',
    model: 'glassTransition',
    answer: (row) => {
      const material = textIn(row, 'material');
      return { label: material, computed: waterThatMeets(critical(material)) };
    },
  },
];
