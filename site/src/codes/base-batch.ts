import type { BatchDocument } from 'vitrose';

const dried = {
  ingredient: 'dried-glucose-syrup',
  dextroseEquivalent: 42,
  drySolidsMassFraction: 0.96,
} as const;

/** An ordinary batch of drops. Each example page shows it with one thing changed. */
export const BASE_BATCH = {
  format: 'vitrose.batch/1',
  formula: [
    { ingredient: 'sucrose', massG: 232 },
    { ...dried, massG: 155 },
    { ingredient: 'water', massG: 116 },
  ],
  cook: { toSeaLevelC: 148 },
} as const satisfies BatchDocument;

/** Sugar-free drops, for what only happens there. */
export const POLYOL_BATCH = {
  format: 'vitrose.batch/1',
  formula: [
    { ingredient: 'isomalt', massG: 400 },
    { ingredient: 'xylitol', massG: 40 },
    { ingredient: 'water', massG: 110 },
  ],
  cook: { toSeaLevelC: 160 },
} as const satisfies BatchDocument;

/** The same lines by shares, for what only happens there. */
export const SHARES_FORMULA = [
  { ingredient: 'sucrose', shareOfDrySolids: 0.6 },
  { ...dried, shareOfDrySolids: 0.4 },
  { ingredient: 'water', shareOfIngredient: { ingredient: 'sucrose', share: 0.33 } },
] as const;
