import { joinBands } from '../../foundation/results/band.js';
import type { Span } from '../../foundation/results/types.js';
import { candyMassDensity, chargeDensity } from '../../models/density/index.js';
import type { BatchDocument } from '../batch/types.js';
import { type Ledger, leaveOut } from '../ledger.js';
import { figure } from './figure.js';
import type { InputBands, Moved } from './input-bands.js';
import type { Figure, PlannedPan } from './types.js';

/** The pan before the boil and at the stop. */
export function planPan(
  batch: BatchDocument,
  outcome: Moved,
  inputs: InputBands,
  weighsAtStopG: Figure,
  ledger: Ledger,
): PlannedPan {
  const { diameterMm, capacityMl, emptyMassG } = batch.pan ?? {};
  leaveOut(ledger, '/pan/diameterMm', diameterMm);
  leaveOut(ledger, '/pan/capacityMl', capacityMl);
  leaveOut(ledger, '/pan/emptyMassG', emptyMassG);
  const { baseG, chargeG } = outcome;
  const [lightest, heaviest] = weighsAtStopG.band;
  const cold = chargeDensity(outcome.startDrySolids);
  const chargeMl = chargeG / cold.densityGPerMl;
  const chargeBand = joinBands(chargeMl, scaled(inputs.chargeG, 1 / cold.densityGPerMl), [
    chargeG / cold.band[1],
    chargeG / cold.band[0],
  ]);
  const hot = candyMassDensity({ state: 'hot' });
  const depthOf = (massG: number, densityGPerMl: number) =>
    ((massG / densityGPerMl) * 1_000) / (Math.PI * ((diameterMm ?? 1) / 2) ** 2);
  const depthMm = depthOf(baseG, hot.densityGPerMl);
  return {
    weighsAtStopG,
    grossAtStopG:
      emptyMassG === undefined
        ? undefined
        : figure(baseG + emptyMassG, [lightest + emptyMassG, heaviest + emptyMassG], 'boiling'),
    chargeMl: figure(chargeMl, chargeBand, 'density'),
    filledFraction:
      capacityMl === undefined
        ? undefined
        : figure(chargeMl / capacityMl, scaled(chargeBand, 1 / capacityMl), 'density'),
    depthAtStopMm:
      diameterMm === undefined
        ? undefined
        : figure(
            depthMm,
            joinBands(depthMm, scaled(inputs.baseG, depthMm / baseG), [
              depthOf(baseG, hot.band[1]),
              depthOf(baseG, hot.band[0]),
            ]),
            'density',
          ),
  };
}

function scaled([low, high]: Span, by: number): Span {
  return [low * by, high * by];
}
