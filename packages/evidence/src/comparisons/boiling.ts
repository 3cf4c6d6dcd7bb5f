import {
  boilingPoint,
  cookTarget,
  type IngredientId,
  type Mixture,
  mixture,
  SEA_LEVEL_PRESSURE_PA,
  solutionOf,
  standardPressure,
  waterActivity,
  waterBoilingPoint,
} from 'vitrose';
import type { EvidenceRow } from '../types.js';
import type { Comparison } from './types.js';
import { answered, celsius, fahrenheit, numberIn, textIn } from './types.js';

const METRES_PER_FOOT = 0.3048;

/** Dry grams of each ingredient in 100 g of the dissolved solids of a check row. */
const CHECK_MIXES = {
  sucrose: [['sucrose', 100]],
  'invert sugar (50/50)': [
    ['glucose', 50],
    ['fructose', 50],
  ],
  'glucose syrup 42 DE': [['glucose-syrup', 100]],
  '60 sucrose/40 syrup 42 DE (dry mass)': [
    ['sucrose', 60],
    ['glucose-syrup', 40],
  ],
  isomalt: [['isomalt', 100]],
  '90 isomalt/10 xylitol': [
    ['isomalt', 90],
    ['xylitol', 10],
  ],
} as const;

function checkMix(row: EvidenceRow): Mixture {
  const solute = textIn(row, 'solute') as keyof typeof CHECK_MIXES;
  const solids = numberIn(row, 'dissolvedMassFraction');
  return mixture([
    ...CHECK_MIXES[solute].map(([ingredient, massG]) => ({
      ingredient,
      massG,
      drySolidsMassFraction: 1,
      ...(ingredient === 'glucose-syrup' ? { dextroseEquivalent: 42 } : {}),
    })),
    { ingredient: 'water', massG: (100 * (1 - solids)) / solids },
  ]);
}

const checkLabel = (row: EvidenceRow): string =>
  `${textIn(row, 'solute')}, ${numberIn(row, 'dissolvedMassFraction')}, ${numberIn(row, 'pressurePa')} Pa`;

const sucrose = (drySolidsMassFraction: number): Mixture =>
  solutionOf('sucrose', { drySolidsMassFraction });

/** The solids each stage is held at in the table of shifts. */
const SHIFT_SOLIDS = [
  ['shiftSoftBallF', 0.85],
  ['shiftFirmBallF', 0.87],
  ['shiftHardBallF', 0.92],
  ['shiftSoftCrackF', 0.95],
  ['shiftHardCrackF', 0.975],
] as const;

function shiftF(row: EvidenceRow, solids: number): number {
  const { pressurePa } = standardPressure(numberIn(row, 'elevationFt') * METRES_PER_FOOT);
  const low = boilingPoint(sucrose(solids), { pressurePa }).boilingPointC;
  const high = boilingPoint(sucrose(solids), { pressurePa: SEA_LEVEL_PRESSURE_PA }).boilingPointC;
  return (high - low) * 1.8;
}

function waterShiftF(row: EvidenceRow): number {
  const { pressurePa } = standardPressure(numberIn(row, 'elevationFt') * METRES_PER_FOOT);
  const sea = waterBoilingPoint(SEA_LEVEL_PRESSURE_PA).boilingPointC;
  return (sea - waterBoilingPoint(pressurePa).boilingPointC) * 1.8;
}

/** A sea-level finish temperature of an extension sheet, taken up the hill at equal solids. */
function finishAt(elevationFt: number, seaLevelF: number): number {
  const { temperatureC } = answered(
    cookTarget(sucrose(0.9), {
      temperatureC: celsius(seaLevelF),
      fromPressurePa: SEA_LEVEL_PRESSURE_PA,
      toPressurePa: standardPressure(elevationFt * METRES_PER_FOOT).pressurePa,
    }),
  );
  return fahrenheit(temperatureC);
}

const HUMECTANTS: Readonly<Record<string, IngredientId>> = {
  sucrose: 'sucrose',
  sorbitol: 'sorbitol',
  fructose: 'fructose',
  'corn syrup': 'glucose-syrup',
};

/** Solids with the water they were found to hold. */
function humectant(row: EvidenceRow, column: string): Mixture | undefined {
  const ingredient = HUMECTANTS[textIn(row, 'solute')];
  if (ingredient === undefined) return undefined;
  return mixture([
    { ingredient, massG: 100, drySolidsMassFraction: 1 },
    { ingredient: 'water', massG: numberIn(row, column) },
  ]);
}

/** The boiling model itself: check values, altitude, vacuum, humectants. */
export const BOILING_COMPARISONS: readonly Comparison[] = [
  {
    table: 'boiling-model',
    column: 'boilingPointC',
    model: 'boilingPoint',
    answer: (row) => ({
      label: checkLabel(row),
      computed: boilingPoint(checkMix(row), { pressurePa: numberIn(row, 'pressurePa') })
        .boilingPointC,
    }),
  },
  {
    table: 'boiling-model',
    column: 'waterActivity',
    model: 'waterActivity',
    answer: (row) => ({
      label: checkLabel(row),
      computed: waterActivity(checkMix(row), { temperatureC: numberIn(row, 'boilingPointC') })
        .waterActivity,
    }),
  },
  {
    table: 'boiling-altitude-shift',
    column: 'shiftWaterF',
    model: 'waterBoilingPoint',
    answer: (row) => ({
      label: `${numberIn(row, 'elevationFt')} ft`,
      computed: waterShiftF(row),
    }),
  },
  ...SHIFT_SOLIDS.map(
    ([column, solids]): Comparison => ({
      table: 'boiling-altitude-shift',
      column,
      model: 'boilingPoint',
      answer: (row) => ({
        label: `${numberIn(row, 'elevationFt')} ft`,
        computed: shiftF(row, solids),
      }),
    }),
  ),
  ...([5_000, 7_500] as const).flatMap((elevationFt) =>
    (['Low', 'High'] as const).map(
      (end): Comparison => ({
        table: 'boiling-altitude-candy',
        column: `at${elevationFt}Ft${end}F`,
        model: 'cookTarget',
        answer: (row) => ({
          label: textIn(row, 'stage'),
          computed: finishAt(elevationFt, numberIn(row, `seaLevel${end}F`)),
        }),
      }),
    ),
  ),
  ...([950, 970, 980, 985, 990] as const).map(
    (perMille): Comparison => ({
      table: 'boiling-vacuum',
      column: `boilingPointAt${perMille}PerMilleC`,
      model: 'boilingPoint',
      answer: (row) => ({
        label: `${numberIn(row, 'vacuumMmHg')} mmHg`,
        computed: boilingPoint(sucrose(perMille / 1_000), {
          pressurePa: numberIn(row, 'pressurePa'),
        }).boilingPointC,
      }),
    }),
  ),
  ...([60, 70, 80, 90] as const).map(
    (percent): Comparison => ({
      table: 'boiling-sorption-humectants',
      column: `waterAtActivity0${percent}GPer100G`,
      model: 'waterActivity',
      unit: 'water activity, 0 to 1',
      answer: (row) => {
        const whole = humectant(row, `waterAtActivity0${percent}GPer100G`);
        if (whole === undefined) return undefined;
        return {
          label: textIn(row, 'solute'),
          printed: percent / 100,
          computed: waterActivity(whole, { temperatureC: 25 }).waterActivity,
        };
      },
    }),
  ),
];
