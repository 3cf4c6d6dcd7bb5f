import type { Figure, PlanDocument } from 'vitrose';
import {
  type AnswerLine,
  formatFraction,
  formatMass,
  formatMoisture,
  formatPressure,
  formatTemperature,
} from 'vitrose/words';
import { benchLaterWords } from '../../words/bench-later.js';
import { tidy } from './read/tidy.js';
import type { Manner } from './read/types.js';

/** One number of the plan, ready to be opened. */
export type Opened = {
  readonly id: string;
  readonly label: string;
  readonly figure: Figure;
  readonly format: (value: number) => string;
};

/** The numbers behind a line of the answer. */
export function openedFigures(
  line: AnswerLine['id'],
  plan: PlanDocument,
  manner: Manner,
): readonly Opened[] {
  const words = benchLaterWords.figures;
  const us = manner.units === 'us';
  const temperature = (value: number): string =>
    formatTemperature(value, { ...manner, decimals: 1 });
  const degrees = (value: number): string => formatTemperature(value, manner);
  const difference = (value: number): string =>
    `${tidy(us ? value * 1.8 : value).replace('-', '−')} ${us ? '°F' : '°C'}`;
  const mass = (value: number): string => formatMass(value, manner);
  const depth = (value: number): string =>
    us ? `${tidy(value / 25.4)} in` : `${tidy(Math.round(value))} mm`;
  const { target, kitchen, pan, composition, keeping, taste } = plan;
  const made = plan.yield;
  const row = (
    id: string,
    label: string,
    figure: Figure | undefined,
    format: (value: number) => string,
  ): readonly Opened[] => (figure === undefined ? [] : [{ id, label, figure, format }]);
  switch (line) {
    case 'stop':
      return [
        ...row('reading', words.reading, target.readingC, temperature),
        ...row('here', words.here, target.hereC, temperature),
        ...row('sea-level', words.seaLevel, target.seaLevelC, temperature),
        ...row('shift', words.shift, target.shiftK, difference),
        ...row('water-boils', words.waterBoils, kitchen.waterBoilsAtC, temperature),
        ...row('air', words.air, kitchen.pressurePa, (value) => formatPressure(value, manner)),
        ...row('difference', words.difference, kitchen.readingDifferenceK, difference),
      ];
    case 'weighs':
      return [
        ...row('gross', words.gross, pan.grossAtStopG, mass),
        ...row('charge', words.charge, composition.chargeG, mass),
        ...row('boil-off', words.boilOff, composition.boilOffG, mass),
        ...row('base', words.base, composition.baseG, mass),
        ...row('first-boil', words.firstBoil, composition.firstBoilC, degrees),
        ...row('depth', words.depth, pan.depthAtStopMm, depth),
        ...row('filled', words.filled, pan.filledFraction, (value) =>
          formatFraction(value, manner),
        ),
      ];
    case 'makes':
      return [
        ...row('pieces', words.pieces, made.pieces, (value) => tidy(Math.round(value))),
        ...row('piece', words.piece, made.pieceG, mass),
        ...row('finished', words.finished, made.finishedG, mass),
        ...row('left', words.left, made.leftBehindG, mass),
      ];
    case 'keeps':
      return [
        ...row('glass', words.glass, keeping.glassTransitionC, degrees),
        ...row('margin', words.margin, keeping.marginK, difference),
        ...row('moisture', words.moisture, composition.moistureMassFraction, (value) =>
          formatMoisture(value, manner),
        ),
        ...row('sweetness', words.sweetness, taste.relativeSweetness, (value) => value.toFixed(2)),
      ];
    default:
      return [];
  }
}
