import type { FigureTable } from '../figure/data-table.js';
import { degrees, printed, reading } from '../ladder/temperature-words.js';
import { pointAt } from './curve.js';
import type { BoilingCurveState } from './state.js';

/** Solids of the rows of the table, per cent of the solution. */
export const CURVE_TABLE_PERCENT = [70, 75, 80, 85, 90, 92, 94, 95, 96, 97, 98, 99];

/** The curve in figures. */
export function boilingCurveTable(state: BoilingCurveState): FigureTable {
  const { units = 'c' } = state;
  return {
    caption: 'Boiling temperatures, and the span the true one lies in nine times in ten',
    heads: ['water left in 100 g', `boils at, ${degrees(units)}`, `span, ${degrees(units)}`],
    rows: CURVE_TABLE_PERCENT.map((percent) => {
      const { waterG, boilsAtC, lowC, highC } = pointAt(state, percent / 100);
      return [
        `${printed(waterG, 1)} g`,
        reading(boilsAtC, units, 1),
        `${reading(lowC, units)} to ${reading(highC, units)}`,
      ];
    }),
  };
}
