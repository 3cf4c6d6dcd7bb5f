import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { HEAT_DOMAIN_C } from './constants.js';
import { lossW, type PanLoss } from './pan-loss.js';

/** From a temperature of the mass on, the hob gives a share of its power. */
export type PowerStep = {
  /** °C, 0 to 250. */
  readonly fromC: number;
  /** 0 to 1. */
  readonly share: number;
};

/** A cook turns the flame down once or twice; each step costs one boiling point more. */
export const POWER_STEPS_DOMAIN: Span = [0, 8];

/** What the hob gives and the pan loses. */
export type Flame = {
  readonly powerW: number;
  /** In order of temperature. */
  readonly steps: readonly PowerStep[];
  readonly loss: PanLoss;
};

/** @throws ModelRangeError for more steps than a cook takes, or a step that cannot be meant. */
export function flameOf(powerW: number, steps: readonly PowerStep[], loss: PanLoss): Flame {
  requireWithin('powerSteps', steps.length, POWER_STEPS_DOMAIN);
  for (const { fromC, share } of steps) {
    requireWithin('fromC', fromC, HEAT_DOMAIN_C);
    requireWithin('share', share, [0, 1]);
  }
  return { powerW, steps: [...steps].sort((a, b) => a.fromC - b.fromC), loss };
}

/** Power of the hob from a temperature on, W. */
export function givenW({ powerW, steps }: Flame, fromC: number): number {
  let share = 1;
  for (const step of steps) if (step.fromC <= fromC) share = step.share;
  return powerW * share;
}

/** What of it stays in the mass, W; nought or less where the pan loses it all. */
export function netW(flame: Flame, fromC: number, atC: number = fromC): number {
  return givenW(flame, fromC) - lossW(flame.loss, atC);
}

/** Time a piece of the way takes, and what the pan gives to the air in it. */
export type Leg = { readonly timeS: number; readonly lostJ: number };

/**
 * Time to put some heat into a mass while it goes from one temperature to another, the heat spread
 * evenly between them: the loss grows evenly, so the mean of 1/power is the logarithmic one.
 *
 * @returns nothing where the flame does not hold against the loss.
 */
export function legOf(flame: Flame, heatJ: number, fromC: number, toC: number): Leg | undefined {
  const first = netW(flame, fromC);
  const last = netW(flame, fromC, toC);
  if (!(first > 0 && last > 0)) return undefined;
  const ratio = last / first - 1;
  // ln(1 + r)/r, which is 0/0 where nothing is lost.
  const timeS = (heatJ / first) * (Math.abs(ratio) < 1e-9 ? 1 : Math.log1p(ratio) / ratio);
  const lostPerHeat = (atC: number): number => lossW(flame.loss, atC) / netW(flame, fromC, atC);
  // Simpson's rule, apart from the time, so that what is given and what is taken can be compared.
  const lostJ =
    (heatJ / 6) * (lostPerHeat(fromC) + 4 * lostPerHeat((fromC + toC) / 2) + lostPerHeat(toC));
  return { timeS, lostJ };
}
