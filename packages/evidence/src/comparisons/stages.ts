import {
  cookTarget,
  drySolidsAtBoil,
  SEA_LEVEL_PRESSURE_PA,
  solutionOf,
  stageLadder,
  standardPressure,
  waterBoilingPoint,
} from 'vitrose';
import type { EvidenceRow } from '../types.js';
import type { Comparison } from './types.js';
import { answered, celsius, fahrenheit, numberIn, textIn } from './types.js';

const METRES_PER_FOOT = 0.3048;

const sucrose = () => solutionOf('sucrose', { drySolidsMassFraction: 0.9 });

const pressureOf = (row: EvidenceRow): number =>
  standardPressure(numberIn(row, 'elevationFt') * METRES_PER_FOOT).pressurePa;

function becomesF(row: EvidenceRow, seaLevelF: number): number {
  const { temperatureC } = answered(
    cookTarget(sucrose(), {
      temperatureC: celsius(seaLevelF),
      fromPressurePa: SEA_LEVEL_PRESSURE_PA,
      toPressurePa: pressureOf(row),
    }),
  );
  return fahrenheit(temperatureC);
}

function ladderC(row: EvidenceRow, end: 'lowC' | 'highC'): number | undefined {
  const stage = textIn(row, 'stage');
  return stageLadder().find((rung) => rung.kind === 'stage' && rung.id === stage)?.[end];
}

function solidsPercentAt(temperatureF: number): number {
  const asked = { temperatureC: celsius(temperatureF) };
  return answered(drySolidsAtBoil(sucrose(), asked)).drySolidsMassFraction * 100;
}

/** Stage ranges, their solids, and where they move with altitude. */
export const STAGES_COMPARISONS: readonly Comparison[] = [
  {
    table: 'stages-altitude-computed',
    column: 'waterBoilingPointC',
    model: 'waterBoilingPoint',
    answer: (row) => ({
      label: `${numberIn(row, 'elevationFt')} ft`,
      computed: waterBoilingPoint(pressureOf(row)).boilingPointC,
    }),
  },
  ...([234, 240, 248, 266, 290, 300, 310] as const).map(
    (seaLevelF): Comparison => ({
      table: 'stages-altitude-computed',
      column: `seaLevel${seaLevelF}BecomesF`,
      model: 'cookTarget',
      answer: (row) => ({
        label: `${numberIn(row, 'elevationFt')} ft`,
        computed: becomesF(row, seaLevelF),
      }),
    }),
  ),
  ...(['lowC', 'highC'] as const).map(
    (end): Comparison => ({
      table: 'stages-consensus',
      column: end,
      model: 'stageLadder',
      answer: (row) => {
        const computed = ladderC(row, end);
        return computed === undefined ? undefined : { label: textIn(row, 'stage'), computed };
      },
    }),
  ),
  ...(
    [
      ['solidsAtLowPercent', (row: EvidenceRow) => numberIn(row, 'lowF')],
      ['solidsAtHighPercent', (row: EvidenceRow) => numberIn(row, 'highF')],
      [
        'solidsAtMiddlePercent',
        (row: EvidenceRow) => (numberIn(row, 'lowF') + numberIn(row, 'highF')) / 2,
      ],
    ] as const
  ).map(
    ([column, temperatureF]): Comparison => ({
      table: 'stages-consensus',
      column,
      model: 'drySolidsAtBoil',
      answer: (row) => {
        if (row[column] === null) return undefined;
        return { label: textIn(row, 'stage'), computed: solidsPercentAt(temperatureF(row)) };
      },
    }),
  ),
];
