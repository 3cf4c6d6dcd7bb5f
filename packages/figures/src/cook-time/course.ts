import type { CookMoment, CookPoint, CookTimeState } from './state.js';

/** The cook in two parts: while there is heat, and while it cools. */
export type CookCourse = {
  /** In the order of the clock. */
  readonly moments: readonly CookMoment[];
  readonly stop: CookPoint;
  /** From the cold pan to the stop. */
  readonly heat: readonly CookPoint[];
  /** From the stop to the pour. */
  readonly cooling: readonly CookPoint[];
  /** Moments on the way up. */
  readonly early: readonly CookMoment[];
  /** The stop and what comes after it. */
  readonly late: readonly CookMoment[];
};

/** Parts a cook at its stop; at the end of its path where no stop is among the moments. */
export function cookCourse({ path, moments }: CookTimeState): CookCourse {
  const inOrder = [...moments].sort((one, other) => one.minutes - other.minutes);
  const last = path.at(-1) ?? { minutes: 0, temperatureC: 100 };
  const at = inOrder.findIndex(({ id }) => id === 'stop');
  const stop = inOrder[at] ?? last;
  const late =
    at < 0 ? inOrder.filter(({ minutes }) => minutes >= stop.minutes) : inOrder.slice(at);
  const after = [...path, ...late].filter(({ minutes }) => minutes > stop.minutes);
  return {
    moments: inOrder,
    stop,
    heat: [...path.filter(({ minutes }) => minutes < stop.minutes), stop],
    cooling: [stop, ...after.sort((one, other) => one.minutes - other.minutes)],
    early: inOrder.filter((moment) => !late.includes(moment)),
    late,
  };
}
