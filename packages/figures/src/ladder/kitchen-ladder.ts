import {
  boilingPoint,
  type Mixture,
  type StageRange,
  stageLadder,
  stagesApply,
  waterBoilingPoint,
} from 'vitrose';
import type { Knot } from '../scale/knots.js';
import { withDissolved } from './mixture-at.js';
import { lastSyrup } from './rung-at.js';

/** The stages of one kitchen, for what is in the pan. */
export type KitchenLadder = {
  /** From thread to brown liquid, or to hard crack for a mass the names do not fit. */
  readonly rungs: readonly StageRange[];
  /** Stage names mean something for this mass. */
  readonly namesApply: boolean;
  /** At the pan, Pa. */
  readonly pressurePa: number;
  /** Plain water here, °C. */
  readonly waterBoilsAtC: number;
  /** From the sea-level temperature of a sucrose syrup as dry to the temperature here, °C. */
  readonly knots: readonly Knot[];
};

/** Where the last syrup must end for dry sugar, which stands at 160 °C, to be drawn above it, °C. */
const ROOM_FOR_DRY_SUGAR_C = 159;

/**
 * Where each stage stands in a kitchen, for a mass of any sugars.
 *
 * A stage is set by its solids. A mass of another recipe boils as dry a little cooler or hotter, and
 * each rung is moved to there; clear and brown liquid are sugar without water and stay.
 */
export function kitchenLadder(pressurePa: number, mixture?: Mixture): KitchenLadder {
  const namesApply = mixture === undefined || stagesApply(mixture).apply;
  const all = stageLadder({ pressurePa }).map((rung) =>
    mixture === undefined ? rung : forMixture(rung, mixture, pressurePa),
  );
  const syrupEndsC = lastSyrup(all)?.highC ?? 0;
  const showDry = namesApply && syrupEndsC < ROOM_FOR_DRY_SUGAR_C;
  const rungs = joined(all).filter((rung) => showDry || rung.drySolidsMassFraction !== null);
  const waterBoilsAtC = waterBoilingPoint(pressurePa).boilingPointC;
  const water: Knot = [waterBoilingPoint(101_325).boilingPointC, waterBoilsAtC];
  const low = rungs.map((rung): Knot => [rung.lowSeaLevelC, rung.lowC]);
  const last = rungs.at(-1);
  const high: readonly Knot[] = last === undefined ? [] : [[last.highSeaLevelC, last.highC]];
  return { rungs, namesApply, pressurePa, waterBoilsAtC, knots: [water, ...low, ...high] };
}

/** Between these the sea-level scale of the rule runs, °C: from boiling water to brown liquid. */
export function seaLevelEnds({ knots }: KitchenLadder): readonly [number, number] {
  return [knots[0]?.[0] ?? 100, 178];
}

function forMixture(rung: StageRange, mixture: Mixture, pressurePa: number): StageRange {
  if (rung.drySolidsMassFraction === null) return rung;
  const [low, high] = rung.drySolidsMassFraction;
  const boilC = (solids: number): number =>
    boilingPoint(withDissolved(mixture, solids), { pressurePa }).boilingPointC;
  return { ...rung, lowC: boilC(low), highC: boilC(high) };
}

/** Late hard crack begins where hard crack ends, for this mass too. */
function joined(rungs: readonly StageRange[]): readonly StageRange[] {
  return rungs.map((rung, at) => {
    const before = rungs[at - 1];
    return rung.id === 'between-hard-crack-and-clear-liquid' && before !== undefined
      ? { ...rung, lowC: before.highC }
      : rung;
  });
}
