import type { Span } from '../../foundation/results/types.js';
import type { PlanModelId } from './models.js';
import type { Figure } from './types.js';

/** One number of a plan, with what may be wrong with it and where it comes from. */
export function figure(value: number, band: Span, model: PlanModelId): Figure {
  return { value, band, model };
}

/** A number that follows from what was given, with nothing of a model in it. */
export function sure(value: number, model: PlanModelId = 'mass-balance'): Figure {
  return { value, band: [value, value], model };
}
