import { stageName } from 'vitrose/words';
import {
  type Box,
  LINE_SPACING,
  type PlacedLabel,
  placeLabels,
  type WantedLabel,
} from '../labels/place-labels.js';
import { printed, temperature } from '../ladder/temperature-words.js';
import type { Point } from '../scale/path.js';
import { type CurveLayout, yOf } from './layout.js';

/** The names of the stages, the batch and the curve: what is left of them when none may touch another. */
export function curveLabels(layout: CurveLayout): readonly PlacedLabel[] {
  const { left, right, top, bottom, textPx, ladder } = layout;
  const names = ladder.namesApply ? stageLabels(layout) : [];
  return placeLabels(
    [...markLabels(layout), ...names, bandLabel(layout)],
    { left: left + 2, right: right - 2, top: top - textPx, bottom: bottom - 2 },
    [...curveBoxes(layout), ...markBoxes(layout)],
  );
}

/** The batch in words: its name, how hot, and the water left. */
export function markWords({ mark, state }: CurveLayout): readonly string[] {
  if (mark === undefined) return [];
  const { markName, units = 'c', across } = state;
  const hot = temperature(mark.temperatureC, units);
  const water =
    across === 'solids'
      ? `${printed(100 - mark.waterG, 1)} g of solids`
      : `${printed(mark.waterG, 1)} g of water left`;
  return markName === undefined ? [hot, water] : [markName, hot, water];
}

/** Left of the curve, where it has not been yet; above its line, or else below it. */
function markLabels(layout: CurveLayout): readonly WantedLabel[] {
  const { mark, textPx, x } = layout;
  if (mark === undefined) return [];
  const [markX, markY] = [x.at(mark.waterG), yOf(layout, mark.temperatureC)];
  const lines = markWords(layout);
  const above = 0.55 + LINE_SPACING * (lines.length - 1);
  const away = Array.from({ length: 20 }, (_, at) => markX - (0.7 + at / 2) * textPx);
  return [
    {
      id: 'mark',
      lines,
      sizePx: textPx,
      anchor: 'end',
      places: away.flatMap((end): readonly Point[] => [
        [end, markY - textPx * above],
        [end, markY + textPx * 1.2],
      ]),
    },
  ];
}

function stageLabels(layout: CurveLayout): readonly WantedLabel[] {
  const { ladder, left, textPx } = layout;
  // From the top: where the lowest two share a line, thread is the one that can be spared.
  return [...ladder.rungs]
    .reverse()
    .filter((rung) => rung.kind === 'stage' && rung.drySolidsMassFraction !== null)
    .map((rung) => {
      const middle = (yOf(layout, rung.lowC) + yOf(layout, rung.highC)) / 2 + textPx * 0.3;
      return {
        id: rung.id,
        lines: [stageName(rung.id)],
        sizePx: textPx,
        anchor: 'start',
        places: [0, -0.25, 0.25, -0.5, 0.5].map(
          (up): Point => [left + textPx * 0.6, middle + up * textPx],
        ),
      };
    });
}

/** Tells the band what it is, where it is wide. */
function bandLabel(layout: CurveLayout): WantedLabel {
  const { points, x, textPx } = layout;
  return {
    id: 'band',
    lines: ['nine in ten boils', 'lie in the band'],
    sizePx: textPx,
    anchor: 'start',
    places: [20, 22, 24, 26, 18, 16, 14, 12, 10].flatMap((at): readonly Point[] => {
      const point = points[at];
      if (point === undefined) return [];
      return [1.4, 2.2, 3, 4].map(
        (down): Point => [
          x.at(point.waterG) + textPx * 0.6,
          yOf(layout, point.lowC) + down * textPx,
        ],
      );
    }),
  };
}

/** The band as a row of boxes no label may cover. */
function curveBoxes(layout: CurveLayout): readonly Box[] {
  const { points, x } = layout;
  return points.slice(1).map((point, at) => ({
    left: x.at(points[at]?.waterG ?? point.waterG),
    right: x.at(point.waterG),
    top: yOf(layout, point.highC),
    bottom: yOf(layout, points[at]?.lowC ?? point.lowC),
  }));
}

/** The two lines from the batch to the axes. */
function markBoxes(layout: CurveLayout): readonly Box[] {
  const { mark, x, left, bottom } = layout;
  if (mark === undefined) return [];
  const [markX, markY] = [x.at(mark.waterG), yOf(layout, mark.temperatureC)];
  return [
    { left, right: markX, top: markY - 2, bottom: markY + 2 },
    { left: markX - 2, right: markX + 2, top: markY, bottom },
  ];
}
