import { describe, expect, it } from 'vitest';
import { mixture } from '../../matter/mixture/mixture.js';
import { solutionOf } from '../../matter/mixture/solution-of.js';
import { glassMargin } from './glass-margin.js';
import { glassTransition } from './glass-transition.js';
import { waterAtGlassTransition } from './water-at-glass-transition.js';
import { type WorkingStepId, workingTemperatures } from './working-temperatures.js';

const sweet = solutionOf('sucrose', { drySolidsMassFraction: 0.98 });

describe('workingTemperatures', () => {
  const { steps, glassTransitionC, band, warnings } = workingTemperatures(sweet);

  it('come with the glass transition they stand on', () => {
    expect({ glassTransitionC, band, warnings }).toEqual(glassTransition(sweet));
  });

  it.each([
    ['deposit', 78.48],
    ['pour-easily', 70.18],
    ['pour-last', 62.24],
    ['fold', 49.68],
    ['stamp', 39.67],
    ['keep-shape', 21.18],
    ['stick', 19],
    ['sag', 9.87],
    ['demould', 0],
    ['wrap', -10],
  ] as const satisfies readonly (readonly [WorkingStepId, number])[])(
    'puts %s %f K over the glass transition',
    (id, aboveK) => {
      expect(steps[id].temperatureC - glassTransitionC).toBeCloseTo(aboveK, 2);
    },
  );

  it('lie between the curve of syrups and the universal one', () => {
    const { temperatureC, betweenCurvesC } = steps.deposit;
    expect(betweenCurvesC[0]).toBeCloseTo(111.34, 2);
    expect(betweenCurvesC[1]).toBeCloseTo(130.49, 2);
    expect(temperatureC).toBeCloseTo(120.84, 2);
    expect(steps.deposit.band[1] - temperatureC).toBeCloseTo(
      Math.hypot(4, betweenCurvesC[1] - temperatureC),
      9,
    );
    expect(steps.wrap.betweenCurvesC).toEqual([steps.wrap.temperatureC, steps.wrap.temperatureC]);
  });

  it('say on which side of them a step is done', () => {
    const down = Object.entries(steps)
      .filter(([, { side }]) => side === 'from-here-down')
      .map(([id]) => id);
    expect(down).toEqual(['fold', 'stamp', 'keep-shape', 'demould', 'wrap']);
  });
});

describe('glassMargin', () => {
  it('is what lies between the glass transition and the store', () => {
    const { marginK, band } = glassMargin(sweet, { storeC: 25 });
    expect(marginK).toBeCloseTo(17.36, 2);
    expect(band[0]).toBeCloseTo(13.36, 2);
    expect(band[1]).toBeCloseTo(21.36, 2);
  });

  it.each([-40.1, 60.1, Number.NaN])('refuses a store of %f °C', (storeC) => {
    expect(() => glassMargin(sweet, { storeC })).toThrow(
      expect.objectContaining({ parameter: 'storeC', limits: [-40, 60] }),
    );
  });
});

describe('waterAtGlassTransition', () => {
  it('undoes the glass transition', () => {
    const found = waterAtGlassTransition(sweet, {
      glassTransitionC: glassTransition(sweet).glassTransitionC,
    });
    expect(found).toMatchObject({ moistureMassFraction: expect.closeTo(0.02, 12) });
  });

  it('counts what lies beside the glass in the moisture, not in the water on the solids', () => {
    const plain = waterAtGlassTransition(sweet, { glassTransitionC: 25 });
    const oiled = waterAtGlassTransition(
      mixture([
        { ingredient: 'sucrose', massG: 90 },
        { ingredient: 'flavour-oil', massG: 10 },
      ]),
      { glassTransitionC: 25 },
    );
    expect(plain).toMatchObject({ waterGPer100GSolids: expect.closeTo(4.2614, 4) });
    expect(oiled).toMatchObject({
      waterGPer100GSolids: expect.closeTo(4.2614, 4),
      moistureMassFraction: expect.closeTo((0.9 * 4.2614) / (100 + 0.9 * 4.2614), 5),
    });
  });

  it('has a band as wide as that of the glass transition', () => {
    const { moistureMassFraction, band } = waterAtGlassTransition(sweet, {
      glassTransitionC: 25,
    }) as { moistureMassFraction: number; band: readonly [number, number] };
    const at = (moisture: number) =>
      glassTransition(solutionOf('sucrose', { drySolidsMassFraction: 1 - moisture }));
    expect(at(moistureMassFraction).glassTransitionC).toBeCloseTo(25, 9);
    // What 4 K of the dry transition weigh, less what water already takes of it.
    expect(at(band[0]).glassTransitionC).toBeGreaterThan(28);
    expect(at(band[1]).glassTransitionC).toBeLessThan(22);
  });

  it('is dry at the low end where the band reaches below the store', () => {
    const glucose = solutionOf('glucose', { drySolidsMassFraction: 1 });
    const found = waterAtGlassTransition(glucose, { glassTransitionC: 29 });
    expect(found).toMatchObject({ band: [0, expect.any(Number)] });
  });

  it('warns over a tenth of water', () => {
    const found = waterAtGlassTransition(sweet, { glassTransitionC: -50 });
    expect(found).toMatchObject({ warnings: [{ parameter: 'waterMassFraction' }] });
  });

  it('has no answer where the dry sugar is soft', () => {
    const soft = { kind: 'none', reason: 'already-soft' };
    expect(waterAtGlassTransition(sweet, { glassTransitionC: 62 })).toEqual(soft);
    expect(waterAtGlassTransition(sweet, { glassTransitionC: 63 })).toEqual(soft);
  });

  it.each([-100.1, 250.1])('refuses %f °C', (glassTransitionC) => {
    expect(() => waterAtGlassTransition(sweet, { glassTransitionC })).toThrow(
      expect.objectContaining({ parameter: 'glassTransitionC', limits: [-100, 250] }),
    );
  });
});
