import { boilingPoint, SEA_LEVEL_PRESSURE_PA, solutionOf, waterActivity } from 'vitrose';
import type { TableId } from '../tables/index.js';
import type { EvidenceRow } from '../types.js';
import type { Answer, Comparison } from './types.js';
import { numberIn } from './types.js';

const sucroseOf = (row: EvidenceRow) =>
  solutionOf('sucrose', { drySolidsMassFraction: numberIn(row, 'drySolidsPercent') / 100 });

const solidsLabel = (row: EvidenceRow): string => `${numberIn(row, 'drySolidsPercent')} % solids`;

const boilingOf =
  (pressurePa: number) =>
  (row: EvidenceRow): Answer => {
    const { boilingPointC, band } = boilingPoint(sucroseOf(row), { pressurePa });
    return { label: solidsLabel(row), computed: boilingPointC, band };
  };

const atSeaLevel = (table: TableId): Comparison => ({
  table,
  column: 'boilingPointC',
  model: 'boilingPoint',
  answer: boilingOf(SEA_LEVEL_PRESSURE_PA),
});

/** Printed sucrose curves. */
export const SUCROSE_COMPARISONS: readonly Comparison[] = [
  {
    table: 'boiling-sucrose-aw-25C',
    column: 'waterActivity',
    model: 'waterActivity',
    answer: (row) => ({
      label: solidsLabel(row),
      computed: waterActivity(sucroseOf(row), { temperatureC: 25 }).waterActivity,
    }),
  },
  {
    table: 'boiling-sucrose-amorphous-25C',
    column: 'waterActivity',
    model: 'waterActivity',
    answer: (row) => {
      const waterG = numberIn(row, 'waterGPer100GSolids');
      const sucrose = solutionOf('sucrose', { drySolidsMassFraction: 100 / (100 + waterG) });
      return {
        label: `${waterG} g water on 100 g`,
        computed: waterActivity(sucrose, { temperatureC: 25 }).waterActivity,
      };
    },
  },
  ...(
    [
      ['boilingPointAt101KPaC', SEA_LEVEL_PRESSURE_PA],
      ['boilingPointAt60KPaC', 60_000],
      ['boilingPointAt20KPaC', 20_000],
    ] as const
  ).map(
    ([column, pressurePa]): Comparison => ({
      table: 'boiling-sucrose-starzak-peacock',
      column,
      model: 'boilingPoint',
      answer: boilingOf(pressurePa),
    }),
  ),
  atSeaLevel('boiling-candy-regime'),
  atSeaLevel('boiling-sucrose-gerlach'),
  atSeaLevel('stages-boiling-crosscheck'),
  atSeaLevel('practice-boil-curve'),
  {
    table: 'boiling-sucrose-factory-equation',
    column: 'boilingPointElevationK',
    model: 'boilingPoint',
    // The rows are for water that boils at 100 °C exactly.
    answer: (row) => {
      const { boilingPointC, band } = boilingPoint(sucroseOf(row), { pressurePa: 101_418 });
      return {
        label: solidsLabel(row),
        computed: boilingPointC - 100,
        band: [band[0] - 100, band[1] - 100],
      };
    },
  },
];
