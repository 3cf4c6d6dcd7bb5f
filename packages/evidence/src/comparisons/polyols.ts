import {
  boilingPoint,
  dryGlassTransition,
  drySolidsAtBoil,
  evaporateTo,
  glassTransition,
  type Mixture,
  mixture,
} from 'vitrose';
import type { EvidenceRow } from '../types.js';
import type { Comparison } from './types.js';
import { answered, numberIn } from './types.js';

/** Isomalt with the xylitol of the row, wet enough to boil down. */
function blend(row: EvidenceRow): Mixture {
  const xylitolG = numberIn(row, 'xylitolPercentOfSolids');
  return mixture([
    { ingredient: 'isomalt', massG: 100 - xylitolG, drySolidsMassFraction: 1 },
    { ingredient: 'xylitol', massG: xylitolG, drySolidsMassFraction: 1 },
    { ingredient: 'water', massG: 100 },
  ]);
}

const label = (row: EvidenceRow): string => `${numberIn(row, 'xylitolPercentOfSolids')} % xylitol`;

const dryTo = (row: EvidenceRow, waterPercent: number): Mixture =>
  evaporateTo(blend(row), { drySolidsMassFraction: 1 - waterPercent / 100 });

function boiledTo(row: EvidenceRow, temperatureC: number): Mixture {
  const { drySolidsMassFraction } = answered(drySolidsAtBoil(blend(row), { temperatureC }));
  return evaporateTo(blend(row), { drySolidsMassFraction });
}

const STOPS = [
  ['150', 150],
  ['155', 155],
  ['160', 160],
  ['165', 165],
  ['170', 170],
  ['175', 175],
  ['180', 180],
  ['185', 185],
  ['190Point6', 190.6],
] as const;

/** Isomalt with xylitol: computed tables, which the library must reproduce. */
export const POLYOL_COMPARISONS: readonly Comparison[] = [
  ...(['practice-xylitol-limit', 'practice-isomalt-xylitol-heat'] as const).map(
    (table): Comparison => ({
      table,
      column: 'dryGlassTransitionC',
      model: 'dryGlassTransition',
      answer: (row) => ({
        label: label(row),
        computed: dryGlassTransition(blend(row)).glassTransitionC,
      }),
    }),
  ),
  ...(
    [
      ['transitionAt05PercentC', 0.5],
      ['transitionAt1PercentC', 1],
      ['transitionAt2PercentC', 2],
      ['transitionAt3PercentC', 3],
    ] as const
  ).map(
    ([column, waterPercent]): Comparison => ({
      table: 'practice-xylitol-limit',
      column,
      model: 'glassTransition',
      answer: (row) => ({
        label: label(row),
        computed: glassTransition(dryTo(row, waterPercent)).glassTransitionC,
      }),
    }),
  ),
  ...STOPS.flatMap(([name, temperatureC]): readonly Comparison[] => [
    {
      table: 'practice-isomalt-xylitol-heat',
      column: `waterAt${name}CPercent`,
      model: 'drySolidsAtBoil',
      answer: (row) => {
        const boiled = boiledTo(row, temperatureC);
        return { label: label(row), computed: (boiled.waterG / boiled.massG) * 100 };
      },
    },
    {
      table: 'practice-isomalt-xylitol-heat',
      column: `transitionAt${name}CC`,
      model: 'glassTransition',
      answer: (row) => ({
        label: label(row),
        computed: glassTransition(boiledTo(row, temperatureC)).glassTransitionC,
      }),
    },
  ]),
  ...(
    [
      ['for1PercentWaterC', 1],
      ['for05PercentWaterC', 0.5],
      ['for03PercentWaterC', 0.3],
      ['for02PercentWaterC', 0.2],
    ] as const
  ).map(
    ([column, waterPercent]): Comparison => ({
      table: 'practice-isomalt-xylitol-heat',
      column,
      model: 'boilingPoint',
      answer: (row) => ({
        label: label(row),
        computed: boilingPoint(dryTo(row, waterPercent)).boilingPointC,
      }),
    }),
  ),
];
