import type { WorkingWindow } from './state.js';

/** The lane of each window: the first in which it meets no other. Windows may touch end to end. */
export function windowLanes(windows: readonly WorkingWindow[]): readonly number[] {
  const lanes: WorkingWindow[][] = [];
  return windows.map((window) => {
    const free = lanes.findIndex((lane) => lane.every((other) => apart(window, other)));
    if (free >= 0) {
      lanes[free]?.push(window);
      return free;
    }
    lanes.push([window]);
    return lanes.length - 1;
  });
}

function apart(one: WorkingWindow, other: WorkingWindow): boolean {
  return below(one, other) || below(other, one);
}

function below({ highC }: WorkingWindow, { lowC }: WorkingWindow): boolean {
  return highC !== undefined && lowC !== undefined && highC <= lowC;
}
