import {
  type CriticalHumidity,
  criticalHumidity,
  equilibriumRelativeHumidity,
  type IngredientId,
  type Mixture,
  mixture,
  type Part,
  waterAtRelativeHumidity,
} from 'vitrose';
import type { EvidenceRow } from '../types.js';
import { type Answer, answered, type Comparison, numberIn, textIn } from './types.js';

const dry = (ingredient: IngredientId, massG: number): Part => ({
  ingredient,
  massG,
  drySolidsMassFraction: 1,
});

const syrupSolids = (dextroseEquivalent: number, massG: number): Part => ({
  ...dry('maltodextrin', massG),
  dextroseEquivalent,
});

const SIXTY_FORTY = [dry('sucrose', 60), syrupSolids(42, 40)] as const;

/** Water of a boiled sweet, per cent of the whole. */
const wet = (waterPercent: number): Mixture =>
  mixture([
    ...SIXTY_FORTY,
    { ingredient: 'water', massG: (100 * waterPercent) / (100 - waterPercent) },
  ]);

/** The row of critical water in the words of the library; nothing where its water was never measured. */
function criticalOf(row: EvidenceRow): CriticalHumidity | undefined {
  const material = textIn(row, 'material');
  const syrup = /DE (\d+)$/.exec(material);
  const isSweet = /^hard candy|^the same/.test(material);
  const parts = isSweet
    ? SIXTY_FORTY
    : [syrup === null ? dry(material as IngredientId, 100) : syrupSolids(Number(syrup[1]), 100)];
  if (material === 'maltitol' || material === 'lactitol') return undefined;
  return answered(criticalHumidity(mixture(parts), { storeC: 25 }));
}

/** Which of the three damp states a row means. */
function stateOf(row: EvidenceRow, critical: CriticalHumidity) {
  const material = textIn(row, 'material');
  if (material.includes('sticking starts')) return critical.sticksFrom;
  return material.includes('fully sticky') ? critical.stickyAt : critical;
}

/** Boiled sweets of the printed tables of confections; the other rows are other recipes. */
const ownHumidity = (
  table: 'glass-erh-candies' | 'practice-moisture-aw',
  name: 'product' | 'class',
  end: 'Low' | 'High',
): Comparison => ({
  table,
  column: `waterActivity${end}`,
  model: 'equilibriumRelativeHumidity',
  answer: (row) => {
    if (textIn(row, name) !== 'hard candy') return undefined;
    const water = numberIn(row, `moisture${end}Percent`);
    const { relativeHumidity, band } = answered(
      equilibriumRelativeHumidity(wet(water), { temperatureC: 25 }),
    );
    return { label: `hard candy at ${water} % water`, computed: relativeHumidity, band };
  },
});

const HUMECTANTS: Readonly<Record<string, Part>> = {
  sucrose: dry('sucrose', 100),
  sorbitol: dry('sorbitol', 100),
  'corn syrup': syrupSolids(42, 100),
  fructose: dry('fructose', 100),
};

/** One column of water held at a humidity. */
const held = (hundredths: 60 | 70 | 80 | 90): Comparison => ({
  table: 'boiling-sorption-humectants',
  column: `waterAtActivity0${hundredths}GPer100G`,
  model: 'waterAtRelativeHumidity',
  answer: (row): Answer | undefined => {
    const solute = textIn(row, 'solute');
    const part = HUMECTANTS[solute];
    if (part === undefined) return undefined;
    const { waterGPer100GSolids, moistureMassFraction, band } = answered(
      waterAtRelativeHumidity(mixture([part]), {
        relativeHumidity: hundredths / 100,
        temperatureC: 25,
      }),
    );
    const gOf = (moisture: number): number => (100 * moisture) / (1 - moisture);
    return {
      label: `${solute}, ${(100 * moistureMassFraction).toFixed(0)} % of the whole`,
      computed: waterGPer100GSolids,
      band: [gOf(band[0]), gOf(band[1])],
    };
  },
});

/** The library against the moisture tables. */
export const MOISTURE_COMPARISONS: readonly Comparison[] = [
  {
    table: 'glass-critical-water',
    column: 'waterActivity',
    model: 'criticalHumidity',
    answer: (row) => {
      const critical = criticalOf(row);
      if (critical === undefined || row.waterActivity === null) return undefined;
      const state = stateOf(row, critical);
      return {
        label: textIn(row, 'material'),
        computed: state.relativeHumidity,
        ...(state === critical ? { band: critical.band } : {}),
      };
    },
  },
  {
    table: 'glass-critical-water',
    column: 'waterPercent',
    model: 'criticalHumidity',
    answer: (row) => {
      const critical = criticalOf(row);
      if (critical === undefined) return undefined;
      return {
        label: textIn(row, 'material'),
        computed: 100 * stateOf(row, critical).moistureMassFraction,
      };
    },
  },
  ownHumidity('glass-erh-candies', 'product', 'Low'),
  ownHumidity('glass-erh-candies', 'product', 'High'),
  ownHumidity('practice-moisture-aw', 'class', 'Low'),
  ownHumidity('practice-moisture-aw', 'class', 'High'),
  held(60),
  held(70),
  held(80),
  held(90),
];
