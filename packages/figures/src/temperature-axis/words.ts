import type { WorkingWindowId } from './state.js';

/** What the mass does or allows; each line of a name stands on its own where there is no room. */
export const WINDOW_LABELS: Readonly<Record<WorkingWindowId, readonly string[]>> = {
  deposit: ['fills', 'moulds'],
  'pour-by-hand': ['pour', 'by hand'],
  fold: ['fold'],
  pull: ['pull'],
  stamp: ['stamp', 'and cut'],
  stick: ['sticks'],
  demould: ['turn out'],
  wrap: ['wrap'],
};

/** A temperature that is marked on the axis. */
export type AxisMarkId = 'stop' | 'mould-max' | 'glass' | 'store' | 'room';

export const MARK_LABELS: Readonly<Record<AxisMarkId, string>> = {
  stop: 'stop',
  'mould-max': 'mould limit',
  glass: 'glass point',
  store: 'your store',
  room: 'your room',
};

export const TEMPERATURE_AXIS_QUESTION = 'What can be done with this mass while it cools?';

export const TEMPERATURE_AXIS_NOTES = [
  'Left out: the skin that sets before the middle, what kneading and pulling do, and flavour stirred in. The hand knows the moment better than any window.',
  'Windows: this library’s model, an estimate, from how thick the mass is above its glass point. Glass point: this library’s model, an estimate; its band holds nine times in ten.',
];

/** The name of a window on one line. */
export function windowName(id: WorkingWindowId): string {
  return WINDOW_LABELS[id].join(' ');
}
