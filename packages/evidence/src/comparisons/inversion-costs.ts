import {
  boilingPoint,
  drySolidsAtBoil,
  evaporateTo,
  glassTransition,
  invertedMixture,
  type Mixture,
  mixture,
} from 'vitrose';
import type { EvidenceRow } from '../types.js';
import type { Comparison } from './types.js';
import { answered, numberIn } from './types.js';

/** 60:40 at 2 per cent of water. */
const sweet = (): Mixture =>
  mixture([
    { ingredient: 'sucrose', massG: 58.8 },
    { ingredient: 'maltodextrin', massG: 39.2, drySolidsMassFraction: 1, dextroseEquivalent: 42 },
    { ingredient: 'water', massG: 2 },
  ]);

const waterPercent = ({ waterG, massG }: Mixture): number => (100 * waterG) / massG;
const glassC = (of: Mixture): number => glassTransition(of).glassTransitionC;
const stopC = (of: Mixture): number => boilingPoint(of).boilingPointC;

/** The sweet inverted after the cook, or before its end and cooked to the same reading. */
function costs(row: EvidenceRow): Readonly<Record<string, number>> {
  const invertedFraction = numberIn(row, 'sucroseInvertedPercent') / 100;
  const late = answered(invertedMixture(sweet(), { invertedFraction }));
  const wet = answered(invertedMixture(sweet(), { invertedFraction, takesWaterBack: true }));
  const thin = answered(invertedMixture(before(sweet(), 10), { invertedFraction }));
  const { drySolidsMassFraction } = answered(
    drySolidsAtBoil(thin, { temperatureC: stopC(sweet()) }),
  );
  const early = evaporateTo(thin, { drySolidsMassFraction });
  return {
    lateWaterPercent: waterPercent(late),
    lateNowC: glassC(late),
    lateAfterRegainC: glassC(wet),
    earlyWaterPercent: waterPercent(early),
    earlyC: glassC(early),
    stopFor2PercentC: stopC(evaporateTo(thin, { drySolidsMassFraction: 0.98 })),
  };
}

/** The sweet before its boil is over. */
function before(of: Mixture, waterG: number): Mixture {
  return { ...of, waterG, massG: of.massG - of.waterG + waterG };
}

const COST_COLUMNS = [
  'lateWaterPercent',
  'lateNowC',
  'lateAfterRegainC',
  'earlyWaterPercent',
  'earlyC',
  'stopFor2PercentC',
] as const;

/** What inversion does to water, glass transition and stop. */
export const INVERSION_COST_COMPARISONS: readonly Comparison[] = [
  ...COST_COLUMNS.map(
    (column): Comparison => ({
      table: 'inversion-tg-cost',
      column,
      model: 'invertedMixture',
      answer: (row) => ({
        label: `${numberIn(row, 'sucroseInvertedPercent')} % inverted`,
        computed: costs(row)[column] ?? Number.NaN,
      }),
    }),
  ),
];
