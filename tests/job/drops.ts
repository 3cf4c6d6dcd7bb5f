import type { BatchDocument, FormulaLine, Hob, PlannedCooking } from 'vitrose';
import { planOf } from './plan-of.js';

export const syrup = {
  ingredient: 'dried-glucose-syrup',
  dextroseEquivalent: 42,
  drySolidsMassFraction: 0.96,
} as const;
export const drops: BatchDocument = {
  format: 'vitrose.batch/1',
  formula: [
    { ingredient: 'sucrose', massG: 232 },
    { ...syrup, massG: 155 },
    { ingredient: 'water', massG: 116 },
  ],
  cook: { toSeaLevelC: 148 },
};
export const withLine = (line: FormulaLine): BatchDocument => ({
  ...drops,
  formula: [...drops.formula, line],
});
export const kettle = (boilsInMin: number): Hob => ({
  kind: 'timed',
  waterG: 500,
  fromC: 20,
  boilsInMin,
});

export function cookingOf(batch: BatchDocument): PlannedCooking {
  const { cooking } = planOf(batch);
  if (cooking === undefined) throw new Error('it never boils');
  return cooking;
}

export const codesOf = (batch: BatchDocument): readonly string[] =>
  planOf(batch).advice.map(({ code }) => code);
