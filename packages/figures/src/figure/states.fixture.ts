import fc from 'fast-check';
import { mixture, solutionOf } from 'vitrose';
import type { BoilingCurveState } from '../boiling-curve/state.js';
import type { KeepingBarsState } from '../keeping-bars/state.js';
import type { SugarRuleState } from '../sugar-rule/state.js';

/** Sucrose and glucose syrup, from all of one to half of each; isomalt now and then. */
const mass = fc.oneof(
  { weight: 4, arbitrary: fc.constant(undefined) },
  {
    weight: 4,
    arbitrary: fc.integer({ min: 0, max: 100 }).map((syrupG) =>
      mixture([
        { ingredient: 'sucrose', massG: 120 },
        { ingredient: 'glucose-syrup', massG: syrupG },
        { ingredient: 'water', massG: 60 },
      ]),
    ),
  },
  {
    weight: 1,
    arbitrary: fc.constant(solutionOf('isomalt', { drySolidsMassFraction: 0.7 })),
  },
);
const units = fc.constantFrom('c' as const, 'f' as const);
const place = {
  pressurePa: fc.integer({ min: 30_000, max: 110_000 }),
  mixture: mass,
  units,
};

/** Rules of kitchens from deep valleys to a vacuum pan. */
export function anyRule(size: {
  readonly widthPx: number;
  readonly heightPx: number;
}): fc.Arbitrary<SugarRuleState> {
  return fc.record({
    id: fc.constant('rule'),
    ...place,
    stopHereC: fc.option(fc.double({ min: 80, max: 178, noNaN: true }), { nil: undefined }),
    readingOffsetK: fc.double({ min: -5, max: 5, noNaN: true }),
    widthPx: fc.constant(size.widthPx),
    heightPx: fc.constant(size.heightPx),
  });
}

/** Curves of the same kitchens. */
export function anyCurve(widthPx: number): fc.Arbitrary<BoilingCurveState> {
  return fc.record({
    id: fc.constant('curve'),
    ...place,
    markC: fc.option(fc.double({ min: 95, max: 162, noNaN: true }), { nil: undefined }),
    markName: fc.constantFrom(undefined, 'Lemon drops'),
    across: fc.constantFrom('water-left' as const, 'solids' as const),
    widthPx: fc.constant(widthPx),
  });
}

const humidity = fc.option(fc.double({ min: 0, max: 1, noNaN: true }), { nil: undefined });

/** Bars of every humidity, possible or not, and of none. */
export function anyKeeping(widthPx: number): fc.Arbitrary<KeepingBarsState> {
  return fc
    .record({
      relativeHumidity: humidity,
      equilibrium: humidity,
      criticalRelativeHumidity: humidity,
      stickyFrom: humidity,
      further: humidity,
    })
    .map(({ further, ...state }) => ({
      id: 'keeping',
      ...state,
      stickyAt: further === undefined ? undefined : Math.max(state.stickyFrom ?? 0, further),
      widthPx,
    }));
}
