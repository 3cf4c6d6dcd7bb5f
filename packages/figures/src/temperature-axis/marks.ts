import type { TemperatureAxisState } from './state.js';
import type { AxisMarkId } from './words.js';

/** A temperature that is marked on the axis. */
export type AxisMark = { readonly id: AxisMarkId; readonly temperatureC: number };

/** What is marked, hottest first. */
export function axisMarks(state: TemperatureAxisState): readonly AxisMark[] {
  const { stopC, mouldMaxC, glassC, storeC, roomC } = state;
  const all: readonly { readonly id: AxisMarkId; readonly temperatureC: number | undefined }[] = [
    { id: 'stop', temperatureC: stopC },
    { id: 'mould-max', temperatureC: mouldMaxC },
    { id: 'glass', temperatureC: glassC },
    { id: 'store', temperatureC: storeC },
    { id: 'room', temperatureC: roomC },
  ];
  return all
    .flatMap(({ id, temperatureC }) => (temperatureC === undefined ? [] : [{ id, temperatureC }]))
    .sort((one, other) => other.temperatureC - one.temperatureC);
}

/** From the coldest to the hottest that is drawn; a limit the mass never meets does not stretch it. */
export function shownSpanC(state: TemperatureAxisState): readonly [number, number] {
  const ends = state.windows.flatMap(({ lowC, highC }) =>
    [lowC, highC].filter((end) => end !== undefined),
  );
  const marked = [state.stopC, state.glassC, ...state.glassBandC, state.roomC];
  const store = state.storeC === undefined ? [] : [state.storeC];
  const all = [...ends, ...marked, ...store];
  return [Math.min(...all) - 8, Math.max(...all) + 10];
}

/** The marks that lie on the axis. */
export function shownMarks(state: TemperatureAxisState): readonly AxisMark[] {
  const [, hottest] = shownSpanC(state);
  return axisMarks(state).filter(({ temperatureC }) => temperatureC <= hottest);
}
