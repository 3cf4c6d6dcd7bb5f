import { expect, it, vi } from 'vitest';
import * as vapourPressure from '../../matter/water/vapour-pressure.js';
import { boilingPoint } from './boiling-point.js';

// Looking up the vapour pressure is what a boiling point costs; a slider asks for thousands.
vi.mock('../../matter/water/vapour-pressure.js', async (original) => {
  const actual = await original<typeof vapourPressure>();
  return { ...actual, vapourPressurePa: vi.fn(actual.vapourPressurePa) };
});

const looks = vi.mocked(vapourPressure.vapourPressurePa);

it('finds every boiling point in at most 24 looks at the vapour pressure', () => {
  let most = 0;
  for (const species of ['sucrose', 'xylitol', 'glycerol', 'protein'] as const) {
    for (const pressurePa of [2_000, 5_333, 20_000, 60_000, 84_556, 101_325, 120_000]) {
      for (const dissolved of [0, 1e-6, 0.01, 0.2, 0.5, 0.7, 0.8, 0.9, 0.95, 0.97, 0.99, 0.995]) {
        looks.mockClear();
        boilingPoint(
          {
            waterG: 1 - dissolved,
            solids: dissolved > 0 ? [{ kind: 'pure', species, massG: dissolved }] : [],
            apart: [],
            massG: 1,
            drySolidsMassFraction: dissolved,
            dissolvedMassFraction: dissolved,
          },
          { pressurePa },
        );
        most = Math.max(most, looks.mock.calls.length);
      }
    }
  }
  expect(most).toBeGreaterThan(0);
  expect(most).toBeLessThanOrEqual(24);
});
