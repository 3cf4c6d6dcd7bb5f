import { uncovered } from '../labels/uncovered.js';
import { type Point, px } from '../scale/path.js';
import type { KeepingBarsLayout } from './layout.js';

/** The `d` of the room's line from its words down to the axis; it steps over words in its way. */
export function roomLine({ room, rows, top, bottom, textPx }: KeepingBarsLayout): string {
  if (room === undefined) return '';
  const away = textPx * 0.25;
  const covers = rows
    .filter(({ textX, textRight }) => room.x > textX - away && room.x < textRight + away)
    .map(({ baseline }) => [baseline - textPx * 0.85, baseline + textPx * 0.3] as const);
  return uncovered([top - textPx * 0.8, bottom], covers)
    .map(([from, to]) => `M${px(room.x)} ${px(from)}V${px(to)}`)
    .join('');
}

/** Where the room's line meets what happens there, px. */
export function roomDots({ room, rows, state, x }: KeepingBarsLayout): readonly Point[] {
  const at = state.relativeHumidity;
  if (room === undefined || at === undefined) return [];
  return rows.flatMap(({ stretches, barTop, barBottom }) =>
    stretches
      .filter(({ kind, from, to }) => kind !== 'set' && at >= from && (at < to || to === 1))
      .map(({ kind, from, to }): Point => {
        const grown = kind === 'growing' && to > from ? (at - from) / (to - from) : 1;
        return [x.at(at), barBottom - (grown * (barBottom - barTop)) / 2];
      }),
  );
}
