import { type Sorption, waterAt } from './sorption.js';

/** A state of the sweet: humidity it is in balance with, and water on one gram of solids. */
export type WrapState = readonly [relativeHumidity: number, waterGPerG: number];

/** A pack on its way from the day it is closed to the day it is soft. */
export type WrapCourse = {
  readonly sorption: Sorption;
  readonly start: WrapState;
  readonly end: WrapState;
  /** Relative humidity of the air around it. */
  readonly room: number;
  /** Water that would come in between air of humidity 1 and 0, g. */
  readonly gPerDay: number;
  /** Dissolved solids in the pack, g. */
  readonly solidsG: number;
};

/** Steps of the whole isotherm; twice as many move the answer by less than one part in a thousand. */
const STEPS = 40;

/** Days as if water rose with humidity along the straight line from start to end. */
export function daysFromLine({ start, end, room, gPerDay, solidsG }: WrapCourse): number {
  return (solidsG / gPerDay) * dryAirDays(start, end, room);
}

/** Days along the isotherm, a short straight line after the other. */
export function daysStepByStep(course: WrapCourse): number {
  const { sorption, start, end, room, gPerDay, solidsG } = course;
  let sum = 0;
  let from = start;
  for (let step = 1; step < STEPS; step += 1) {
    const humidity = start[0] + ((end[0] - start[0]) * step) / STEPS;
    const to: WrapState = [humidity, waterAt(sorption, humidity)];
    sum += dryAirDays(from, to, room);
    from = to;
  }
  return (solidsG / gPerDay) * (sum + dryAirDays(from, end, room));
}

/** Integral of the water over what drives it in, along a straight line. */
function dryAirDays([fromHumidity, fromWater]: WrapState, to: WrapState, room: number): number {
  const drive = room - to[0];
  const rise = (to[0] - fromHumidity) / drive;
  // On a level stretch the sweet gets wetter and its humidity stays.
  const mean = rise > 1e-9 ? Math.log1p(rise) / rise : 1;
  return ((to[1] - fromWater) * mean) / drive;
}
