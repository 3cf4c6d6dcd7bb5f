import { isNone } from '../../foundation/results/is-none.js';
import { findIngredient } from '../../matter/ingredients/ingredient.js';
import { swapDriedForSyrup, swapSyrupForDried } from '../../models/syrups/index.js';
import type { Change } from '../advice/types.js';
import { type OpenLine, openAmounts } from '../batch/amounts.js';
import { readLines } from '../batch/lines.js';
import type { BatchDocument, FormulaLine } from '../batch/types.js';
import { newLedger } from '../ledger.js';
import { tidyGrams } from './tidy-grams.js';
import type { ChangesOf } from './types.js';

const OTHER_FORM = {
  'glucose-syrup': 'dried-glucose-syrup',
  'dried-glucose-syrup': 'glucose-syrup',
} as const;

/**
 * The same batch with dried syrup in the place of liquid, or liquid in the place of dried.
 *
 * The solids, their dextrose equivalent and the water of the whole stay what they are: a powder
 * needs the water the syrup would have brought, and a syrup brings the water the powder needed.
 *
 * @param batch - As `readBatch` of `vitrose/documents` returns it.
 * @param index - Place of the syrup in the formula, from 0.
 * @returns the changes, or `none`: `no-such-line`, `not-a-starch-syrup`, `too-little-water` where the
 *   recipe has less water than the syrup brings, `not-readable`.
 * @example
 * const batch = {
 *   format: 'vitrose.batch/1' as const,
 *   formula: [{ ingredient: 'glucose-syrup', drySolidsMassFraction: 0.8, massG: 300 }, { ingredient: 'water', massG: 100 }],
 *   cook: { toSeaLevelC: 148 },
 * };
 * const answer = swapSyrupForm(batch, 0);
 * answer.kind === 'changes' ? answer.changes.length : 0 // 2
 */
export function swapSyrupForm(batch: BatchDocument, index: number): ChangesOf {
  const line = batch.formula[index];
  if (line === undefined) return { kind: 'none', reason: 'no-such-line' };
  const other = OTHER_FORM[line.ingredient as keyof typeof OTHER_FORM];
  if (other === undefined) return { kind: 'none', reason: 'not-a-starch-syrup' };
  const ledger = newLedger();
  const lines = openAmounts(readLines(batch, ledger), ledger);
  const open = lines.find(({ path }) => path === `/formula/${index}`);
  if (open === undefined || ledger.problems.length > 0)
    return { kind: 'none', reason: 'not-readable' };
  if (!('massG' in line || 'measure' in line)) return swapShare(batch, line, index, other);
  const toDried = other === 'dried-glucose-syrup';
  const drySolidsMassFraction = findIngredient(other)?.drySolidsMassFraction.value ?? 1;
  const [here, there] = [
    { drySolidsMassFraction: open.drySolids.value },
    { drySolidsMassFraction },
  ];
  const recipeWaterG = waterLines(batch, lines, line.ingredient).reduce(
    (sum, { massG }) => sum + massG,
    0,
  );
  const swapped = toDried
    ? swapSyrupForDried({ syrupG: open.mass.grams, syrup: here, dried: there, recipeWaterG })
    : swapDriedForSyrup({ driedG: open.mass.grams, dried: here, syrup: there, recipeWaterG });
  if (isNone(swapped)) return { kind: 'none', reason: 'too-little-water' };
  const massG = 'driedG' in swapped ? swapped.driedG : swapped.syrupG;
  return {
    kind: 'changes',
    changes: [
      { path: `/formula/${index}`, value: { ...named(line, other), massG: tidyGrams(massG) } },
      ...waterChanges(batch, lines, line, swapped.waterChangeG),
    ],
  };
}

/** A share of the dry solids is the same share in either form; only the make-up water goes. */
function swapShare(
  batch: BatchDocument,
  line: FormulaLine,
  index: number,
  other: string,
): ChangesOf {
  const { massG: _mass, ...rest } = { massG: undefined, ...line };
  const { drySolidsMassFraction: _dry, ...kept } = rest;
  const makeUp = batch.formula.flatMap((water, at) =>
    'makeUpWaterFor' in water && water.makeUpWaterFor.ingredient === line.ingredient ? [at] : [],
  );
  return {
    kind: 'changes',
    changes: [
      { path: `/formula/${index}`, value: { ...kept, ingredient: other } },
      ...makeUp.reverse().map((at) => ({ path: `/formula/${at}`, value: null })),
    ],
  };
}

/** What the label of one form says does not hold for the other; how far the starch is cut does. */
function named(line: FormulaLine, ingredient: string): object {
  const { when, dextroseEquivalent, conversion, profile } = line;
  return {
    ingredient,
    ...(dextroseEquivalent === undefined ? {} : { dextroseEquivalent }),
    ...(conversion === undefined ? {} : { conversion }),
    ...(profile === undefined ? {} : { profile }),
    ...(when === undefined ? {} : { when }),
  };
}

type WaterLine = { readonly at: number; readonly massG: number; readonly isMakeUp: boolean };

/** Lines of water in grams, the powder's own make-up water first. */
function waterLines(
  batch: BatchDocument,
  lines: readonly OpenLine[],
  syrup: string,
): readonly WaterLine[] {
  return batch.formula
    .flatMap((line, at): WaterLine[] => {
      const mass = lines.find(({ path }) => path === `/formula/${at}`)?.mass;
      const fixed = mass !== undefined && mass.perSolid === 0 && mass.perFinished === 0;
      if (line.ingredient !== 'water' || !fixed || line.when === 'off-heat') return [];
      const isMakeUp = 'makeUpWaterFor' in line && line.makeUpWaterFor.ingredient === syrup;
      return [{ at, massG: mass.grams, isMakeUp }];
    })
    .sort((a, b) => Number(b.isMakeUp) - Number(a.isMakeUp));
}

function waterChanges(
  batch: BatchDocument,
  lines: readonly OpenLine[],
  { ingredient }: FormulaLine,
  waterChangeG: number,
): readonly Change[] {
  const waters = waterLines(batch, lines, ingredient);
  if (waterChangeG >= 0) {
    const [first] = waters.filter(({ isMakeUp }) => !isMakeUp);
    return first === undefined
      ? [{ path: '/formula/-', value: { ingredient: 'water', massG: tidyGrams(waterChangeG) } }]
      : [
          {
            path: `/formula/${first.at}`,
            value: waterLine(batch, first, first.massG + waterChangeG),
          },
        ];
  }
  const changes: Change[] = [];
  const gone: number[] = [];
  let left = -waterChangeG;
  for (const water of waters) {
    const taken = Math.min(left, water.massG);
    left -= taken;
    // The make-up water of a powder that is gone goes with it, whole; what it is short of comes back below.
    if (taken >= water.massG - LEAST_WATER_G || water.isMakeUp) gone.push(water.at);
    else if (taken > 0)
      changes.push({
        path: `/formula/${water.at}`,
        value: waterLine(batch, water, water.massG - taken),
      });
    if (water.isMakeUp && taken < water.massG) left -= water.massG - taken;
  }
  if (left < -LEAST_WATER_G)
    changes.push({ path: '/formula/-', value: { ingredient: 'water', massG: tidyGrams(-left) } });
  for (const at of gone.sort((a, b) => b - a))
    changes.push({ path: `/formula/${at}`, value: null });
  return changes;
}

/** Nobody weighs a twentieth of a gram of water. */
const LEAST_WATER_G = 0.05;

function waterLine(batch: BatchDocument, { at }: WaterLine, massG: number): object {
  const when = batch.formula[at]?.when;
  return {
    ingredient: 'water',
    massG: tidyGrams(massG),
    ...(when === undefined ? {} : { when }),
  };
}
