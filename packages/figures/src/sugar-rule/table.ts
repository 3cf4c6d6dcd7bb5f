import type { StageRange } from 'vitrose';
import { stageName } from 'vitrose/words';
import type { FigureTable } from '../figure/data-table.js';
import { printed, temperatures } from '../ladder/temperature-words.js';
import type { SugarRuleGeometry } from './geometry.js';

/** Every rung in figures: at sea level, here, and the water in 100 g. */
export function sugarRuleTable({ state, ladder }: SugarRuleGeometry): FigureTable {
  const { readingOffsetK = 0, units = 'c' } = state;
  const row = (rung: StageRange): readonly string[] => [
    ladder.namesApply ? stageName(rung.id) : waterIn(rung),
    temperatures(rung.lowSeaLevelC, rung.highSeaLevelC, units, 1),
    temperatures(rung.lowC + readingOffsetK, rung.highC + readingOffsetK, units, 1),
    waterIn(rung),
  ];
  return {
    caption: 'Degrees and water of each stage',
    heads: [
      ladder.namesApply ? 'stage' : 'water',
      'sucrose at sea level',
      'on this thermometer, here',
      'water left in 100 g',
    ],
    rows: ladder.rungs.map(row),
  };
}

function waterIn({ drySolidsMassFraction }: StageRange): string {
  if (drySolidsMassFraction === null) return 'hardly any';
  const [low, high] = drySolidsMassFraction;
  return `${printed(100 * (1 - low), 1)} to ${printed(100 * (1 - high), 1)} g`;
}
