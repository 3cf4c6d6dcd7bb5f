import { joinBands } from '../../foundation/results/band.js';
import type { Span } from '../../foundation/results/types.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { figure } from './figure.js';
import type { InputBands, Moved } from './input-bands.js';
import type { WeighedLine } from './outcome.js';
import type { Stop } from './stop.js';
import type { PlannedComposition, PlannedLine } from './types.js';

/** What the composition of a plan is told from. */
export type CompositionQuestion = {
  readonly outcome: Moved;
  readonly inputs: InputBands;
  readonly stop: Stop;
  readonly firstBoil: { readonly boilingPointC: number; readonly band: Span };
  readonly finished: Mixture;
  readonly lateWaterG: number;
};

/** From cold pan to finished sweet. */
export function planComposition(question: CompositionQuestion): PlannedComposition {
  const { outcome, inputs, stop, firstBoil, finished, lateWaterG } = question;
  const { baseMoisture, baseG, boilOffG, moisture, finishedG } = outcome;
  const dryG = baseG * stop.baseDrySolids;
  // The drier the base really is at this temperature, the less it weighs.
  const baseBand = joinBands(baseG, inputs.baseG, [
    dryG / stop.drySolidsBand[1],
    dryG / stop.drySolidsBand[0],
  ]);
  const moistureBand: Span = [1 - stop.drySolidsBand[1], 1 - stop.drySolidsBand[0]];
  const baseMoistureBand = joinBands(baseMoisture, moistureBand, inputs.baseMoisture);
  const shift = moisture - baseMoisture;
  const noneKept = (finished.waterG - lateWaterG) / (finishedG - lateWaterG);
  return {
    chargeG: figure(outcome.chargeG, inputs.chargeG, 'mass-balance'),
    startDrySolidsMassFraction: figure(
      outcome.startDrySolids,
      inputs.startDrySolids,
      'mass-balance',
    ),
    firstBoilC: figure(firstBoil.boilingPointC, firstBoil.band, 'boiling'),
    boilOffG: figure(
      boilOffG,
      joinBands(boilOffG, inputs.boilOffG, [
        boilOffG + baseG - baseBand[1],
        boilOffG + baseG - baseBand[0],
      ]),
      'boiling',
    ),
    baseG: figure(baseG, baseBand, 'boiling'),
    baseDrySolidsMassFraction: figure(
      stop.baseDrySolids,
      [1 - baseMoistureBand[1], 1 - baseMoistureBand[0]],
      'boiling',
    ),
    baseMoistureMassFraction: figure(baseMoisture, baseMoistureBand, 'boiling'),
    moistureMassFraction: figure(
      moisture,
      withinOne(
        joinBands(
          moisture,
          [baseMoistureBand[0] + shift, baseMoistureBand[1] + shift],
          [noneKept, moisture],
          inputs.moisture,
        ),
      ),
      'boiling',
    ),
    drySolidsShares: sharesOf(finished),
  };
}

/** Every line in grams, with the spread of its spoon. */
export function planLines(lines: readonly WeighedLine[]): readonly PlannedLine[] {
  return lines.map(({ path, id, massG, spread, drySolids, when, form, line }) => ({
    path,
    ingredient: id,
    massG: figure(
      massG,
      [massG * spread.low, massG * spread.high],
      'measure' in line ? 'measures' : 'massG' in line ? 'given' : 'mass-balance',
    ),
    waterG: massG * (1 - drySolids.value),
    drySolidsG: massG * drySolids.value,
    when,
    form,
    asWritten: line.asWritten,
  }));
}

function sharesOf({ solids, apart }: Mixture): Readonly<Record<string, number>> {
  const grams: Record<string, number> = {};
  let dryG = 0;
  for (const solid of [...solids, ...apart]) {
    const key =
      'species' in solid
        ? solid.species
        : solid.kind === 'saccharides'
          ? 'syrup-solids'
          : solid.kind;
    grams[key] = (grams[key] ?? 0) + solid.massG;
    dryG += solid.massG;
  }
  return Object.fromEntries(
    Object.entries(grams)
      .sort(([, a], [, b]) => b - a)
      .map(([key, massG]) => [key, massG / dryG]),
  );
}

function withinOne([low, high]: Span): Span {
  return [Math.max(0, low), Math.min(1, high)];
}
