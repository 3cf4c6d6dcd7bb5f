import fc from 'fast-check';
import type { TemperatureAxisState, WorkingWindow } from './state.js';

/** Windows as they lie over a glass point, °C. */
export function windowsOver(glassC: number): readonly WorkingWindow[] {
  return [
    { id: 'deposit', lowC: glassC + 78.5 },
    { id: 'pour-by-hand', lowC: glassC + 62.2, highC: glassC + 78.5 },
    { id: 'fold', lowC: glassC + 39.7, highC: glassC + 49.7 },
    { id: 'pull', lowC: glassC + 21.2, highC: glassC + 49.7 },
    { id: 'stamp', lowC: glassC + 21.2, highC: glassC + 39.7 },
    { id: 'stick', lowC: glassC + 19 },
    { id: 'demould', highC: glassC },
    { id: 'wrap', highC: glassC - 10 },
  ];
}

/** Lemon drops in a warm kitchen. */
export const LEMON_DROP_AXIS: TemperatureAxisState = {
  id: 'a',
  windows: windowsOver(43),
  stopC: 143,
  glassC: 43,
  glassBandC: [35, 51],
  roomC: 22,
  storeC: 24,
  mouldMaxC: 130,
};

/** Masses from caramel-soft to glass-hard in rooms from cellar to tropics. */
export function anyMass(size: {
  readonly widthPx: number;
  readonly wide: boolean;
}): fc.Arbitrary<TemperatureAxisState> {
  return fc
    .record({
      glassC: fc.double({ min: 15, max: 75, noNaN: true }),
      bandK: fc.double({ min: 1, max: 15, noNaN: true }),
      overGlassK: fc.double({ min: 82, max: 120, noNaN: true }),
      roomC: fc.double({ min: 8, max: 38, noNaN: true }),
      storeC: fc.option(fc.double({ min: -5, max: 40, noNaN: true }), { nil: undefined }),
      mouldMaxC: fc.option(fc.double({ min: 60, max: 240, noNaN: true }), { nil: undefined }),
      units: fc.constantFrom('c' as const, 'f' as const),
    })
    .map(({ glassC, bandK, overGlassK, ...rest }) => ({
      id: 'axis',
      windows: windowsOver(glassC),
      stopC: glassC + overGlassK,
      glassC,
      glassBandC: [glassC - bandK, glassC + bandK] as const,
      ...rest,
      ...size,
    }));
}

const end = fc.double({ min: 0, max: 170, noNaN: true });

/** Windows that lie where no mass has them, some missing, all over each other. */
export function anyWindows(size: {
  readonly widthPx: number;
  readonly wide: boolean;
}): fc.Arbitrary<TemperatureAxisState> {
  const odd = windowsOver(40).map(({ id }) =>
    fc
      .tuple(end, end, fc.constantFrom('both', 'low', 'high', 'gone'))
      .map(([one, other, ends]): readonly WorkingWindow[] => {
        const [lowC, highC] = [Math.min(one, other), Math.max(one, other)];
        if (ends === 'gone') return [];
        return [{ id, ...(ends === 'high' ? {} : { lowC }), ...(ends === 'low' ? {} : { highC }) }];
      }),
  );
  return fc
    .tuple(anyMass(size), fc.tuple(...odd))
    .map(([state, windows]) => ({ ...state, windows: windows.flat() }));
}
