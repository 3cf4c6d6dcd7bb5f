// biome-ignore-all format: one printed row a line, to be held against its page

import type { Grade } from '../../foundation/validity/constants.js';
import type { SpeciesId } from '../../matter/species.js';
import type { SourceId } from '../../sources/ids.js';

/** A saturated solution: °C, per cent of it that is dissolved, and where that stands. */
export type SolubilityRow = readonly [
  temperatureC: number,
  percent: number,
  source: SourceId,
  grade: Grade,
];

/** Rows in the order of their temperature. */
export type SolubilityRows = readonly [SolubilityRow, SolubilityRow, ...(readonly SolubilityRow[])];

/**
 * Saturated solutions of sugars and sugar alcohols other than sucrose. Where a measured series
 * stands beside the two temperatures of a review, the series is taken. Glucose crystallises with
 * water up to 50 °C and without above.
 */
export const SOLUBILITY_ROWS = {
  glucose: [
    [20, 47.8, 'hartel-2011', 'secondary'],
    [25, 51.2, 'jackson-silsbee-1922', 'memory'],
    [30, 54.6, 'jackson-silsbee-1922', 'memory'],
    [40, 61.9, 'jackson-silsbee-1922', 'memory'],
    [45, 65.7, 'jackson-silsbee-1922', 'memory'],
    [50, 70.9, 'hartel-2011', 'secondary'],
    [60, 74.7, 'jackson-silsbee-1922', 'memory'],
    [70, 78.2, 'jackson-silsbee-1922', 'memory'],
    [80.5, 81.3, 'jackson-silsbee-1922', 'memory'],
    [90, 84.7, 'jackson-silsbee-1922', 'memory'],
  ],
  fructose: [
    [20, 78.9, 'hartel-2011', 'secondary'],
    [25, 80.3, 'young-1952', 'memory'],
    [30, 81.5, 'young-1952', 'memory'],
    [40, 84.3, 'young-1952', 'memory'],
    [50, 86.9, 'hartel-2011', 'secondary'],
    [55, 88.1, 'young-1952', 'memory'],
  ],
  maltose: [
    [0.6, 36.1, 'gillis-lowe', 'secondary'],
    [21, 44.1, 'gillis-lowe', 'secondary'],
    [29.6, 48, 'gillis-lowe', 'secondary'],
    [34.4, 49.6, 'gillis-lowe', 'secondary'],
    [43.5, 55.3, 'gillis-lowe', 'secondary'],
    [49.4, 58.3, 'gillis-lowe', 'secondary'],
    [54.2, 60.2, 'gillis-lowe', 'secondary'],
    [59.8, 63.7, 'gillis-lowe', 'secondary'],
    [66.3, 66.7, 'gillis-lowe', 'secondary'],
    [74.2, 72.3, 'gillis-lowe', 'secondary'],
    [87, 79.3, 'gillis-lowe', 'secondary'],
    [96.5, 85.1, 'gillis-lowe', 'secondary'],
  ],
  lactose: [
    [0, 10.6, 'hudson-lowe', 'secondary'],
    [15, 14.5, 'hudson-lowe', 'secondary'],
    [25, 17.8, 'hudson-lowe', 'secondary'],
    [39, 24, 'hudson-lowe', 'secondary'],
    [49, 29.8, 'hudson-lowe', 'secondary'],
    [64, 39.7, 'hudson-lowe', 'secondary'],
    [74, 46.3, 'hudson-lowe', 'secondary'],
    [89, 58.2, 'hudson-lowe', 'secondary'],
  ],
  sorbitol: [
    [20, 73, 'hartel-2011', 'secondary'],
    [50, 83, 'hartel-2011', 'secondary'],
  ],
  // Handbooks are recalled to print 14.5 at 20 °C; the review looks rounded up.
  mannitol: [
    [20, 20, 'hartel-2011', 'secondary'],
    [50, 31, 'hartel-2011', 'secondary'],
  ],
  xylitol: [
    [20, 63, 'hartel-2011', 'secondary'],
    [50, 80, 'hartel-2011', 'secondary'],
  ],
  maltitol: [
    [20, 60, 'hartel-2011', 'secondary'],
    [50, 70, 'hartel-2011', 'secondary'],
  ],
  isomalt: [
    [20, 25, 'hartel-2011', 'secondary'],
    [50, 45, 'hartel-2011', 'secondary'],
  ],
  lactitol: [
    [20, 52, 'hartel-2011', 'secondary'],
    [50, 74, 'hartel-2011', 'secondary'],
  ],
  // An article on the ingredient has 36 at 25 °C, below what the review has at 20.
  erythritol: [
    [20, 37, 'hartel-2011', 'secondary'],
    [50, 55, 'hartel-2011', 'secondary'],
    [80, 75, 'erythritol-article', 'secondary'],
  ],
} as const satisfies Partial<Record<SpeciesId, SolubilityRows>>;
