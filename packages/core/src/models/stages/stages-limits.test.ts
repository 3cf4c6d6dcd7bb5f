import { describe, expect, it } from 'vitest';
import { isNone } from '../../foundation/results/is-none.js';
import { fahrenheitFromCelsius } from '../../foundation/units/temperature.js';
import { mixture } from '../../matter/mixture/mixture.js';
import { altitudeRules } from './kitchen-rules.js';
import { stageLadder } from './stage-ladder.js';
import { stageTarget } from './stage-target.js';
import { stagesApply } from './stages-apply.js';
import { sugarStage } from './sugar-stage.js';
import { temperatureAtKitchen } from './temperature-at-kitchen.js';
import type { StageAim, StageId } from './types.js';

describe('a number no kitchen can mean', () => {
  const kitchen = [1_000, 115_000];
  it.each([
    ['pressurePa', 999, kitchen, () => stageLadder({ pressurePa: 999 })],
    ['pressurePa', 115_001, kitchen, () => stageLadder({ pressurePa: 115_001 })],
    ['elevationM', 11_001, [-2_000, 11_000], () => stageLadder({ elevationM: 11_001 })],
    ['temperatureC', 4.9, [5, 370], () => sugarStage({ temperatureC: 4.9 })],
    ['temperatureC', 370.1, [5, 370], () => sugarStage({ temperatureC: 370.1 })],
    ['temperatureC', 4.9, [5, 370], () => temperatureAtKitchen({ temperatureC: 4.9 })],
    ['temperatureC', 370.1, [5, 370], () => temperatureAtKitchen({ temperatureC: 370.1 })],
    [
      'temperatureC',
      104.9,
      [105, 160],
      () => altitudeRules({ temperatureC: 104.9, elevationM: 0 }),
    ],
    [
      'temperatureC',
      160.1,
      [105, 160],
      () => altitudeRules({ temperatureC: 160.1, elevationM: 0 }),
    ],
  ])('is a %s of %d', (parameter, received, limits, ask) => {
    expect(ask).toThrow(
      expect.objectContaining({ code: 'outside-range', parameter, received, limits }),
    );
  });

  it('is an elevation beside a pressure, be it nought', () => {
    for (const ask of [
      () => stageLadder({ elevationM: 0, pressurePa: 101_325 }),
      () => temperatureAtKitchen({ temperatureC: 150, elevationM: 0, pressurePa: 101_325 }),
    ]) {
      expect(ask).toThrow(
        expect.objectContaining({
          code: 'not-allowed-together',
          parameter: 'pressurePa',
          received: 101_325,
        }),
      );
    }
  });

  it('is a stage or an aim that has no such name', () => {
    expect(() => stageTarget({ stage: 'caramel' as StageId })).toThrow(
      expect.objectContaining({
        code: 'unknown-name',
        parameter: 'stage',
        received: 'caramel',
        message: expect.stringContaining('no such stage'),
      }),
    );
    expect(() => stageTarget({ stage: 'thread', aim: 'lowest' as StageAim })).toThrow(
      expect.objectContaining({
        code: 'unknown-name',
        parameter: 'aim',
        received: 'lowest',
        message: expect.stringContaining('no such aim'),
      }),
    );
  });
});

describe('the ends of what it can mean', () => {
  it('is any pressure from a vacuum pan to the lowest shore', () => {
    for (const pressurePa of [1_000, 115_000]) {
      const ladder = stageLadder({ pressurePa });
      expect(ladder).toHaveLength(14);
      expect(ladder[0]?.lowC).toBeLessThan(ladder[1]?.lowC ?? 0);
    }
  });

  it('is any temperature from cold water to glowing steel', () => {
    expect(sugarStage({ temperatureC: 5 }).kind).toBe('too-thin');
    expect(sugarStage({ temperatureC: 370 }).kind).toBe('burnt');
  });

  it('lets the rules answer from thread to just before dry sugar', () => {
    for (const temperatureC of [105, 160]) {
      const { model, warnings } = altitudeRules({ temperatureC, elevationM: 0 });
      expect(model.temperatureC).toBeCloseTo(temperatureC, 6);
      expect(warnings).toEqual([]);
    }
  });
});

describe('stageTarget', () => {
  it.each([
    ['low', 234],
    ['middle', 237],
    ['high', 240],
  ] as const)('aims %s', (aim, temperatureF) => {
    const { seaLevelSucroseC, rangeC } = stageTarget({ stage: 'soft-ball', aim });
    expect(fahrenheitFromCelsius(seaLevelSucroseC)).toBeCloseTo(temperatureF, 9);
    expect(rangeC.map((endC) => Math.round(fahrenheitFromCelsius(endC)))).toEqual([234, 240]);
  });

  it('asks no solids of clear liquid, the first dry sugar', () => {
    expect(stageTarget({ stage: 'clear-liquid', aim: 'low' }).drySolidsMassFraction).toBeNull();
  });
});

describe('temperatureAtKitchen', () => {
  it('moves syrup and leaves dry sugar, from 160 °C on', () => {
    const at = (temperatureC: number) => {
      const here = temperatureAtKitchen({ temperatureC, elevationM: 1_500 });
      if (isNone(here)) throw new Error(here.reason);
      return here.shiftK;
    };
    expect(at(160)).toBe(0);
    expect(at(159.9)).toBeLessThan(-5);
  });

  it('passes on what the air and the boil warn of', () => {
    const warning = {
      code: 'outside-tested-range',
      parameter: 'elevationM',
      value: 10_500,
      limits: [-500, 10_000],
    };
    for (const temperatureC of [150, 170]) {
      expect(temperatureAtKitchen({ temperatureC, elevationM: 10_500 })).toMatchObject({
        warnings: [warning],
      });
    }
    expect(temperatureAtKitchen({ temperatureC: 150, pressurePa: 1_500 })).toMatchObject({
      warnings: [{ parameter: 'pressurePa', value: 1_500 }],
    });
    expect(altitudeRules({ temperatureC: 150, elevationM: 10_500 }).warnings).toEqual([warning]);
  });
});

describe('stagesApply', () => {
  it.each([
    'isomalt',
    'maltitol',
    'xylitol',
    'sorbitol',
    'mannitol',
    'erythritol',
    'lactitol',
    'glycerol',
  ] as const)('counts %s among the sugar alcohols', (polyol) => {
    const { apply, polyolShare, sugarAndSyrupShare } = stagesApply(
      mixture([
        { ingredient: 'sucrose', massG: 75 },
        { ingredient: polyol, massG: 15, drySolidsMassFraction: 1 },
        { ingredient: 'glucose', massG: 10 },
      ]),
    );
    expect(apply).toBe(false);
    expect(polyolShare).toBeCloseTo(0.15, 12);
    expect(sugarAndSyrupShare).toBeCloseTo(0.75, 12);
  });

  it('counts the long chains of a hydrogenated syrup too', () => {
    const { polyolShare } = stagesApply(
      mixture([
        { ingredient: 'sucrose', massG: 80 },
        { ingredient: 'hydrogenated-starch-hydrolysate', massG: 20, drySolidsMassFraction: 1 },
      ]),
    );
    expect(polyolShare).toBeCloseTo(0.2, 12);
  });
});
