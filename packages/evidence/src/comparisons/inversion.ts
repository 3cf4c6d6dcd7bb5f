import {
  type AcidMasses,
  boilingPoint,
  drySolidsAtBoil,
  type HeatPath,
  inversion,
  type Mixture,
  mixture,
  scaleMixture,
  solutionOf,
} from 'vitrose';
import type { EvidenceRow } from '../types.js';
import type { Answer, Comparison } from './types.js';
import { answered, numberIn, textIn } from './types.js';

const numberOr = (row: EvidenceRow, column: string, otherwise: number): number =>
  row[column] === null ? otherwise : numberIn(row, column);

/** 67 per cent of the sucrose of a boiling syrup with a trace of tartaric acid. */
function tartaric(row: EvidenceRow): Answer | undefined {
  if (textIn(row, 'id') !== 'tartaric-20min') return undefined;
  const result = inversion(solutionOf('sucrose', { drySolidsMassFraction: 0.65 }), {
    temperatureC: numberIn(row, 'temperatureC'),
    minutes: 20,
    acids: { 'tartaric-acid': 0.995 * 0.021 },
    syrupPH: 7,
  });
  const { invertedFraction, band } = answered(result);
  return { label: 'tartaric acid, 20 min', computed: 100 * invertedFraction, band: percent(band) };
}

const percent = ([low, high]: readonly [number, number]) => [100 * low, 100 * high] as const;

type End = 'low' | 'middle' | 'upper';

/** One column of a table of the low, the damped and the upper law. */
function inverted(
  table: Comparison['table'],
  column: string,
  end: End,
  of: (row: EvidenceRow) => ReturnType<typeof inversion>,
  label: (row: EvidenceRow) => string,
): Comparison {
  return {
    table,
    column,
    model: 'inversion',
    answer: (row) => {
      if (row[column] === null) return undefined;
      const { invertedFraction, band } = answered(of(row));
      const fraction = { low: band[0], middle: invertedFraction, upper: band[1] }[end];
      return { label: label(row), computed: 100 * fraction };
    },
  };
}

/** 10 g of citric acid in a kilogram of cooked sucrose, held. */
function afterCooking(row: EvidenceRow): ReturnType<typeof inversion> {
  const cooked = scaleMixture(solutionOf('sucrose', { drySolidsMassFraction: 0.975 }), 10);
  return inversion(cooked, {
    temperatureC: numberIn(row, 'temperatureC'),
    minutes: numberIn(row, 'minutes'),
    acids: { 'citric-acid': 10 },
    syrupPH: 7,
  });
}

const syrup = (): Mixture =>
  mixture([
    { ingredient: 'sucrose', massG: 1_000 },
    { ingredient: 'water', massG: 400 },
  ]);

/** Water falling evenly in time, the temperature that at which it then boils. */
function evenBoil(toC: number, minutes: number): HeatPath {
  const STEPS = 100;
  const { drySolidsMassFraction: end } = answered(drySolidsAtBoil(syrup(), { temperatureC: toC }));
  const endG = (1_000 * (1 - end)) / end;
  return Array.from({ length: STEPS + 1 }, (_, step) => {
    const waterG = 400 + ((endG - 400) * step) / STEPS;
    const drySolidsMassFraction = 1_000 / (1_000 + waterG);
    const { boilingPointC } = boilingPoint(solutionOf('sucrose', { drySolidsMassFraction }));
    const timeS = (60 * minutes * step) / STEPS;
    return { timeS, temperatureC: boilingPointC, drySolidsMassFraction };
  });
}

const ACIDS_OF_SCENARIOS: Readonly<Record<string, (g: number) => AcidMasses>> = {
  'cream-of-tartar': (g) => ({ 'potassium-hydrogen-tartrate': g }),
  citric: (g) => ({ 'citric-acid': g }),
};

/** A kilogram of sucrose boiled with acid, as far as 85 per cent of solids or to the end. */
function boiled(row: EvidenceRow, toDry?: number): ReturnType<typeof inversion> {
  const toC = numberIn(row, 'toC');
  const minutes = numberIn(row, 'minutes');
  const whole = evenBoil(toC, minutes);
  const acids = ACIDS_OF_SCENARIOS[textIn(row, 'acid')]?.(numberIn(row, 'acidGPerKg')) ?? {};
  const last = whole.findIndex((point) => point.drySolidsMassFraction > (toDry ?? 1));
  return inversion(syrup(), {
    path: last < 0 ? whole : whole.slice(0, last),
    acids,
    alkalinityMmolPerL: numberOr(row, 'waterAlkalinityMmolPerL', 0),
    syrupPH: numberOr(row, 'ph', 7),
  });
}

const scenarioLabel = (row: EvidenceRow): string => {
  const hard = numberOr(row, 'waterAlkalinityMmolPerL', 0);
  const dose = row.acidGPerKg === null ? `pH ${row.ph}` : `${row.acidGPerKg} g/kg`;
  return `${textIn(row, 'acid')}, ${dose}, ${row.minutes} min to ${row.toC} °C${hard > 0 ? `, ${hard} mmol/L` : ''}`;
};

/** What acid and heat invert, by the low, the damped and the upper law. */
export const INVERSION_COMPARISONS: readonly Comparison[] = [
  {
    table: 'inversion-check-rows',
    column: 'invertedPercent',
    model: 'inversion',
    answer: tartaric,
  },
  ...(
    [
      ['invertedLowPercent', 'low'],
      ['invertedDampedPercent', 'middle'],
      ['invertedUpperPercent', 'upper'],
    ] as const
  ).flatMap(([column, end]) => [
    inverted(
      'inversion-after-cooking',
      column,
      end,
      afterCooking,
      (row) => `${row.temperatureC} °C, ${row.minutes} min`,
    ),
    inverted('inversion-candy-scenarios', column, end, (row) => boiled(row), scenarioLabel),
  ]),
  inverted(
    'inversion-candy-scenarios',
    'invertedBy85PercentSolids',
    'middle',
    (row) => boiled(row, 0.85),
    scenarioLabel,
  ),
];
