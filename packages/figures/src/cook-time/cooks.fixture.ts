import fc from 'fast-check';
import type { CookMoment, CookMomentId, CookPoint, CookTimeState } from './state.js';

/** Up to a boil, then ever more steeply to the stop. */
export function pathTo(
  [firstMin, firstC]: readonly [number, number],
  [stopMin, stopC]: readonly [number, number],
): readonly CookPoint[] {
  const steps = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1];
  return [
    { minutes: 0, temperatureC: 20 },
    { minutes: firstMin, temperatureC: firstC },
    ...steps.map((part) => ({
      minutes: firstMin + (stopMin - firstMin) * part,
      temperatureC: firstC + (stopC - firstC) * part ** 2.5,
    })),
  ];
}

/** Lemon drops on a usual hob. */
export const LEMON_DROPS: CookTimeState = {
  id: 'a',
  path: pathTo([5, 103], [16, 143]),
  moments: [
    { id: 'first-boil', minutes: 5, temperatureC: 103 },
    { id: 'turn-down', minutes: 14.2, temperatureC: 128 },
    { id: 'stop', minutes: 16, temperatureC: 143 },
    { id: 'rest', minutes: 17, temperatureC: 139 },
    { id: 'colour-and-flavour', minutes: 19.6, temperatureC: 125 },
    { id: 'acid', minutes: 20.6, temperatureC: 121 },
    { id: 'pour', minutes: 21.6, temperatureC: 117 },
  ],
  bandMinutes: [12, 20],
};

const AFTER: readonly CookMomentId[] = ['rest', 'colour-and-flavour', 'acid', 'pour'];
const part = fc.double({ min: 0, max: 1, noNaN: true });

const boil = fc.record({
  firstMin: fc.double({ min: 0.5, max: 25, noNaN: true }),
  stopAfterMin: fc.double({ min: 1, max: 90, noNaN: true }),
  firstC: fc.double({ min: 70, max: 112, noNaN: true }),
  stopC: fc.double({ min: 113, max: 178, noNaN: true }),
});

/** Cooks from a spoon to a cauldron, in any kitchen, with and without another plan beside them. */
export function anyCook(widthPx: number): fc.Arbitrary<CookTimeState> {
  return fc
    .record({
      boil,
      other: fc.option(
        fc.record({
          boil,
          label: fc.constantFrom('with a lid', 'Harbour lemon drops as they were cooked last May'),
        }),
        { nil: undefined },
      ),
      turn: fc.option(fc.double({ min: 0.5, max: 0.98, noNaN: true }), { nil: undefined }),
      waits: fc.tuple(
        ...AFTER.map(() =>
          fc.option(fc.double({ min: 0, max: 9, noNaN: true }), { nil: undefined }),
        ),
      ),
      coolsKPerMin: fc.double({ min: 0, max: 9, noNaN: true }),
      band: fc.tuple(part, part),
      units: fc.constantFrom('c' as const, 'f' as const),
    })
    .map(({ other, band, units, ...cook }) => {
      const { firstMin, stopAfterMin } = cook.boil;
      const stopMin = firstMin + stopAfterMin;
      return {
        id: 'cook',
        path: pathOf(cook.boil),
        moments: momentsOf(cook),
        bandMinutes: [stopMin * (1 - 0.6 * band[0]), stopMin * (1 + band[1])] as const,
        other: other && { label: other.label, path: pathOf(other.boil) },
        units,
        widthPx,
      };
    });
}

type Boil = typeof boil extends fc.Arbitrary<infer T> ? T : never;

function pathOf({ firstMin, stopAfterMin, firstC, stopC }: Boil): readonly CookPoint[] {
  return pathTo([firstMin, firstC], [firstMin + stopAfterMin, stopC]);
}

function momentsOf(cook: {
  readonly boil: Boil;
  readonly turn: number | undefined;
  readonly waits: readonly (number | undefined)[];
  readonly coolsKPerMin: number;
}): readonly CookMoment[] {
  const { firstMin, stopAfterMin, firstC, stopC } = cook.boil;
  const stop: CookMoment = { id: 'stop', minutes: firstMin + stopAfterMin, temperatureC: stopC };
  const moments: CookMoment[] = [{ id: 'first-boil', minutes: firstMin, temperatureC: firstC }];
  if (cook.turn !== undefined)
    moments.push({
      id: 'turn-down',
      minutes: firstMin + stopAfterMin * cook.turn,
      temperatureC: firstC + (stopC - firstC) * cook.turn ** 2.5,
    });
  moments.push(stop);
  let { minutes, temperatureC } = stop;
  cook.waits.forEach((wait, at) => {
    const id = AFTER[at];
    if (wait === undefined || id === undefined) return;
    minutes += wait;
    temperatureC = Math.max(40, temperatureC - wait * cook.coolsKPerMin);
    moments.push({ id, minutes, temperatureC });
  });
  return moments;
}
