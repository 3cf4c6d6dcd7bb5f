import type { PlanDocument, PlannedLine } from '../../job/plan/types.js';
import { ingredientName } from '../names/ingredients.js';
import { speciesName } from '../names/species.js';
import { listed } from '../text/fill.js';
import type { DisplayOptions } from '../types.js';
import { formatFraction, formatMass, formatMoisture } from '../units/amounts.js';
import { formatByKey } from '../units/by-key.js';
import { formatNumber } from '../units/number.js';
import { formatReading } from '../units/temperature.js';
import { trustIn } from './trust.js';

/** A spoon is off by more than this; a scale is not. */
const WORTH_WEIGHING = 0.02;
/** A share of the solids smaller than this is left to the plan itself. */
const SHARE_SHOWN = 0.005;

/** The formula in grams, one line each, in columns. */
export function formulaLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const masses = plan.formula.map(({ massG }) => formatMass(massG.value, options));
  const charge = formatMass(plan.composition.chargeG.value, options);
  const width = Math.max(charge.length, ...masses.map(({ length }) => length));
  return [
    ...plan.formula.map(
      (line, index) =>
        `${(masses[index] ?? '').padStart(width)}  ${[ingredientName(line.ingredient, options), ...notesOf(line, options)].join(', ')}`,
    ),
    `${charge.padStart(width)}  in the pan before the boil`,
  ];
}

function notesOf(
  { when, massG, form, asWritten }: PlannedLine,
  options: DisplayOptions,
): readonly string[] {
  const [low, high] = massG.band;
  const loose = high - low > 2 * WORTH_WEIGHING * massG.value;
  return [
    ...(when === 'off-heat' ? ['off the heat'] : []),
    ...(when === 'first-boil' ? ['at the first boil'] : []),
    ...(typeof when === 'object' ? [`at ${formatByKey('atC', when.atC, options)}`] : []),
    ...(form === undefined ? [] : [form.replaceAll('-', ' ')]),
    ...(asWritten === undefined ? [] : [`‘${asWritten}’`]),
    ...(loose
      ? [`somewhere from ${formatMass(low, options)} to ${formatMass(high, options)}: weigh it`]
      : []),
  ];
}

/** What the mass is made of, from cold pan to finished sweet; water, because that is what leaves. */
export function compositionLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const { composition, lateWater } = plan;
  const water = (value: number) => formatMoisture(value, options);
  const start = 1 - composition.startDrySolidsMassFraction.value;
  const shares = Object.entries(composition.drySolidsShares)
    .filter(([, share]) => share >= SHARE_SHOWN)
    .map(([id, share]) => `${speciesName(id)} ${formatFraction(share, options)}`);
  return [
    `At the start ${water(start)} water; it begins to boil at about ${formatByKey('firstBoilC', composition.firstBoilC.value, options)}.`,
    `${formatMass(composition.boilOffG.value, options)} of water has to go; ${formatMass(composition.baseG.value, options)} is left at the stop.`,
    `At the stop ${water(composition.baseMoistureMassFraction.value)} water left${trustIn(plan, composition.baseMoistureMassFraction, water)}.`,
    `In the finished sweet ${water(composition.moistureMassFraction.value)} water left${trustIn(plan, composition.moistureMassFraction, water)}.`,
    ...(lateWater.massG < 0.05
      ? []
      : [
          `${formatMass(lateWater.massG, options)} of water comes with what goes in late; all of it is counted, and some flashes off.`,
        ]),
    `Dry, it is ${listed(shares)}.`,
  ];
}

/** What comes out of the pan. */
export function yieldLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const { finishedG, leftBehindG, breakFraction, piecesG, pieces } = plan.yield;
  const mass = (value: number) => formatMass(value, options);
  const grams = (value: number) => formatMass(value, { ...options, units: 'metric' });
  const count = (value: number) => formatNumber(Math.floor(value), 0, options);
  const sweetness = plan.taste.relativeSweetness;
  const times = (value: number) => formatNumber(value, 2, options);
  return [
    `${mass(finishedG.value)} finished mass, of which ${mass(leftBehindG.value)} stays on pan and tools${trustIn(plan, leftBehindG, grams)}.`,
    ...(breakFraction > 0
      ? [`${formatFraction(breakFraction, options)} is allowed for breakage.`]
      : []),
    `${mass(piecesG.value)} in ${pieces === undefined ? 'all' : `${count(pieces.value)} whole pieces${trustIn(plan, pieces, count)}`}.`,
    `About ${times(sweetness.value)} times as sweet as sugar${trustIn(plan, sweetness, times)}.`,
    ...polyolLines(plan, options),
  ];
}

function polyolLines({ polyols }: PlanDocument, options: DisplayOptions): readonly string[] {
  if (polyols === undefined) return [];
  const { massFraction, perPieceG, childPieces } = polyols;
  return [
    `Sugar alcohols are ${formatFraction(massFraction, options)} of it${perPieceG === undefined ? '' : `, ${formatMass(perPieceG, options)} in a piece`}.`,
    ...(childPieces === undefined
      ? []
      : [
          `For a child of ${formatByKey('childKg', 20, options)} the guide for one sitting is ${childPieces === 0 ? 'less than one piece' : `${formatNumber(childPieces, 0, options)} piece${childPieces === 1 ? '' : 's'}`}. Information, not advice.`,
        ]),
  ];
}

/** Whether it stays hard. */
export function keepingLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const { glassTransitionC, storeC, storeRelativeHumidity, forDays } = plan.keeping;
  const degrees = (value: number) => formatByKey('glassTransitionC', value, options);
  return [
    `Stays hard up to about ${degrees(glassTransitionC.value)}, its glass point${trustIn(plan, glassTransitionC, (value) => formatReading(value, 0, options))}.`,
    `You keep it at ${formatByKey('storeC', storeC, options)}${storeRelativeHumidity === undefined ? '' : ` and ${formatFraction(storeRelativeHumidity, options)} humidity`}, for ${formatByKey('forDays', forDays, options)}.`,
    'Each half per cent of water it takes up costs about five degrees Celsius of that: close it well.',
  ];
}
