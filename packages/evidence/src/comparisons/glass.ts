import {
  dryGlassTransition,
  glassTransition,
  type IngredientId,
  type Mixture,
  mixture,
  type Part,
  type SpeciesId,
  solutionOf,
  viscosity,
  type WorkingStepId,
  workingTemperatures,
} from 'vitrose';
import type { EvidenceRow } from '../types.js';
import type { Comparison } from './types.js';
import { answered, numberIn, textIn } from './types.js';

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

/** Solutes of the table of dry transitions by species, where the name differs. */
const SPECIES: Readonly<Record<string, SpeciesId>> = {
  maltotriose: 'syrup-oligosaccharides',
  'inulin (DP about 10)': 'inulin',
  'citric acid': 'citric-acid',
  'malic acid': 'malic-acid',
  'tartaric acid': 'tartaric-acid',
  'hydrogenated maltooligosaccharides': 'hydrogenated-oligosaccharides',
};

/** What is in no sweet and has no species. */
const NO_SPECIES = ['galactose', 'raffinose', 'water'];

/** The solute of a row, with this share of water. */
function soluteIn(row: EvidenceRow, waterMassFraction: number): Mixture | undefined {
  const solute = textIn(row, 'solute');
  if (solute === 'syrup solids, any DE') {
    return withWater([syrupSolids(42, 1 - waterMassFraction)], waterMassFraction);
  }
  if (NO_SPECIES.includes(solute)) return undefined;
  return solutionOf(SPECIES[solute] ?? (solute as SpeciesId), {
    drySolidsMassFraction: 1 - waterMassFraction,
  });
}

/** Landmarks of the table of windows that are steps of the library. */
const STEPS: Readonly<Record<string, WorkingStepId>> = {
  deposit: 'deposit',
  'hand pouring, easy': 'pour-easily',
  'hand pouring, last': 'pour-last',
  'working point: folding, rope, first pulls': 'fold',
  'plastic forming': 'stamp',
  'softening point: pulling ends, holds its shape for minutes': 'keep-shape',
  'sticky surface': 'stick',
  'sags in weeks under its own weight': 'sag',
  glass: 'demould',
  wrap: 'wrap',
};

/** A column of the windows, as a distance above the glass transition. */
const windows = (
  column: string,
  of: (step: ReturnType<typeof workingTemperatures>['steps'][WorkingStepId]) => number,
): Comparison => ({
  table: 'glass-windows',
  column,
  model: 'workingTemperatures',
  answer: (row) => {
    const landmark = textIn(row, 'landmark');
    const step = STEPS[landmark];
    if (step === undefined) return undefined;
    const { steps, glassTransitionC } = workingTemperatures(
      solutionOf('sucrose', { drySolidsMassFraction: 0.98 }),
    );
    return { label: landmark, computed: of(steps[step]) - glassTransitionC };
  },
});

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
      const of = soluteIn(row, 0);
      if (of === undefined || row.recommendedC === null) return undefined;
      const { glassTransitionC, band } = dryGlassTransition(of);
      return { label: textIn(row, 'solute'), computed: glassTransitionC, band };
    },
  },
  {
    table: 'glass-gordon-taylor',
    column: 'k',
    model: 'glassTransition',
    answer: (row) => {
      const dryOf = soluteIn(row, 0);
      const wetOf = soluteIn(row, 0.05);
      if (dryOf === undefined || wetOf === undefined) return undefined;
      const dryC = dryGlassTransition(dryOf).glassTransitionC;
      const { glassTransitionC } = glassTransition(wetOf);
      // The equation of the table, solved for k.
      const k = (0.95 * (dryC - glassTransitionC)) / (0.05 * (glassTransitionC + 135));
      return { label: textIn(row, 'solute'), computed: k };
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
  {
    table: 'glass-viscosity',
    column: 'viscosityMPaS',
    model: 'viscosity',
    answer: (row) => {
      const percent = numberIn(row, 'drySolidsPercent');
      const temperatureC = numberIn(row, 'temperatureC');
      const { viscosityPaS, band } = answered(
        viscosity(solutionOf('sucrose', { drySolidsMassFraction: percent / 100 }), {
          temperatureC,
        }),
      );
      return {
        label: `${percent} % at ${temperatureC} °C, ${textIn(row, 'column')}`,
        computed: 1_000 * viscosityPaS,
        band: [1_000 * band[0], 1_000 * band[1]],
      };
    },
  },
  {
    table: 'syrup-viscosity',
    column: 'viscosityPaS',
    model: 'viscosity',
    answer: (row) => {
      const temperatureC = numberIn(row, 'temperatureC');
      const { viscosityPaS, band } = answered(
        viscosity(withWater([syrupSolids(42, 80)], 20), { temperatureC }),
      );
      return { label: `${temperatureC} °C`, computed: viscosityPaS, band };
    },
  },
  windows('aboveTransitionK', (step) => step.temperatureC),
  windows('aboveTransitionByFitK', (step) => step.betweenCurvesC[0]),
  windows('aboveTransitionUniversalK', (step) => step.betweenCurvesC[1]),
];
