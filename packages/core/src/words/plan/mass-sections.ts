import type { PlanDocument, PlannedLine } from '../../job/plan/types.js';
import { ingredientName } from '../names/ingredients.js';
import { speciesName } from '../names/species.js';
import { fill, listed } from '../text/fill.js';
import type { DisplayOptions } from '../types.js';
import { formatFraction, formatMass, formatMoisture } from '../units/amounts.js';
import { formatByKey } from '../units/by-key.js';
import { formatNumber } from '../units/number.js';
import { shownShares } from '../units/shares.js';
import { type ThingToWeigh, thingsToWeigh } from './lines.js';
import { trustIn } from './trust.js';

/** A spoon is often off by more than this; a scale is not. */
const WORTH_WEIGHING = 0.03;

/** The formula, one line each: grams under grams, and ounces under ounces. */
export function formulaLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const rows = [
    ...thingsToWeigh(plan.formula).map((thing) => ({
      massG: thing.massG,
      text: [ingredientName(thing.line.ingredient, options), ...notesOf(thing, options)].join(', '),
    })),
    { massG: plan.composition.chargeG.value, text: 'in the pan before the boil' },
  ].map(({ massG, text }) => {
    const [grams = '', ounces] = formatMass(massG, options).split(' (');
    return { grams, ounces: ounces === undefined ? '' : ` (${ounces}`, text };
  });
  const width = (column: 'grams' | 'ounces') => Math.max(...rows.map((row) => row[column].length));
  return rows.map(
    ({ grams, ounces, text }) =>
      `${grams.padStart(width('grams'))}${ounces.padEnd(width('ounces'))}  ${text}`,
  );
}

function notesOf(
  { line: { when, massG, form, asWritten, ingredient }, partsG }: ThingToWeigh,
  options: DisplayOptions,
): readonly string[] {
  const [low, high] = massG.band;
  const grams = (value: number) => formatMass(value, { ...options, units: 'metric' });
  return [
    ...(partsG.length > 1 ? [partsG.map(grams).join(' + ')] : []),
    ...whenNotes(when, options),
    // Water lies level by itself, and level is what everyone takes for granted.
    ...(form === undefined || form === 'level' || ingredient === 'water'
      ? []
      : [form.replaceAll('-', ' ')]),
    ...(asWritten === undefined ? [] : [`‘${asWritten}’`]),
    ...(high - low > 2 * WORTH_WEIGHING * massG.value
      ? [`somewhere from ${formatMass(low, options)} to ${formatMass(high, options)}: weigh it`]
      : []),
  ];
}

function whenNotes(when: PlannedLine['when'], options: DisplayOptions): readonly string[] {
  if (when === 'off-heat') return ['off the heat'];
  if (when === 'first-boil') return ['at the first boil'];
  return when === 'start' ? [] : [`at ${formatByKey('atC', when.atC, options)}`];
}

/** What the mass is made of, from cold pan to finished sweet; water, because that is what leaves. */
export function compositionLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const { composition, lateWater } = plan;
  const water = (value: number) => formatMoisture(value, options);
  const start = 1 - composition.startDrySolidsMassFraction.value;
  const { shown, traces } = shownShares(composition.drySolidsShares, options);
  const named = listed(shown.map(({ id, share }) => `${speciesName(id)} ${share}`));
  const trace = traces.length === 0 ? '' : `, with a trace of ${listed(traces.map(speciesName))}`;
  const finished = fill('In the finished {sweet}', {}, options);
  return [
    `At the start ${water(start)} water; it begins to boil at about ${formatByKey('firstBoilC', composition.firstBoilC.value, options)}.`,
    `${formatMass(composition.boilOffG.value, options)} of water has to go; ${formatMass(composition.baseG.value, options)} is left at the stop.`,
    `At the stop ${water(composition.baseMoistureMassFraction.value)} water left${trustIn(plan, composition.baseMoistureMassFraction, water)}.`,
    `${finished} ${water(composition.moistureMassFraction.value)} water left${trustIn(plan, composition.moistureMassFraction, water)}.`,
    ...(lateWater.massG < 0.05
      ? []
      : [
          `${formatMass(lateWater.massG, options)} of water comes with what goes in late; all of it is counted, and some flashes off.`,
        ]),
    `Dry, it is ${named}${trace}.`,
  ];
}

/** What comes out of the pan. */
export function yieldLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const { finishedG, leftBehindG, breakFraction, piecesG, pieces } = plan.yield;
  const mass = (value: number) => formatMass(value, options);
  const grams = (value: number) => formatMass(value, { ...options, units: 'metric' });
  const count = (value: number) => formatNumber(Math.floor(value), 0, options);
  return [
    `${mass(finishedG.value)} finished mass, of which ${mass(leftBehindG.value)} stays on pan and tools${trustIn(plan, leftBehindG, grams)}.`,
    ...(breakFraction > 0
      ? [`${formatFraction(breakFraction, options)} is allowed for breakage.`]
      : []),
    `${mass(piecesG.value)} in ${pieces === undefined ? 'all' : `${count(pieces.value)} whole pieces${trustIn(plan, pieces, count)}`}.`,
    sweetnessLine(plan, options),
    ...polyolLines(plan, options),
  ];
}

function sweetnessLine(plan: PlanDocument, options: DisplayOptions): string {
  const { relativeSweetness, leavesOut } = plan.taste;
  const times = (value: number) => formatNumber(value, 2, options);
  const without =
    leavesOut.length === 0
      ? ''
      : `, without what ${listed(leavesOut.map(speciesName))} add${leavesOut.length === 1 ? 's' : ''}`;
  return `About ${times(relativeSweetness.value)} times as sweet as sugar${without}${trustIn(plan, relativeSweetness, times)}.`;
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
