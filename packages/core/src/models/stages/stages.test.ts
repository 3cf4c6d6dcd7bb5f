import { describe, expect, it } from 'vitest';
import { isNone } from '../../foundation/results/is-none.js';
import {
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
} from '../../foundation/units/temperature.js';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { evaporateTo } from '../../matter/mixture/evaporate-to.js';
import { mixture } from '../../matter/mixture/mixture.js';
import { solutionOf } from '../../matter/mixture/solution-of.js';
import { boilingPoint } from '../boiling/boiling-point.js';
import { altitudeRules } from './kitchen-rules.js';
import { stageLadder } from './stage-ladder.js';
import { stageTarget } from './stage-target.js';
import { stagesApply } from './stages-apply.js';
import { sugarStage } from './sugar-stage.js';
import { temperatureAtKitchen } from './temperature-at-kitchen.js';
import type { StageAim, StageId } from './types.js';

const isomalt = () => solutionOf('isomalt', { drySolidsMassFraction: 0.8 });
const half = () =>
  mixture([
    { ingredient: 'sucrose', massG: 50 },
    { ingredient: 'dried-glucose-syrup', massG: 50, drySolidsMassFraction: 1 },
    { ingredient: 'water', massG: 30 },
  ]);
const atF = (temperatureF: number) =>
  sugarStage({ temperatureC: celsiusFromFahrenheit(temperatureF) });

describe('stageLadder', () => {
  it('leaves no temperature out from thread to brown liquid', () => {
    const ladder = stageLadder();
    expect(ladder).toHaveLength(14);
    for (const [index, rung] of ladder.entries()) {
      expect(rung.lowC).toBeCloseTo(rung.lowSeaLevelC, 6);
      const above = ladder[index + 1];
      if (above !== undefined) expect(rung.highC).toBeCloseTo(above.lowC, 9);
    }
  });

  it('moves down the mountain, all but dry sugar', () => {
    const ladder = stageLadder({ elevationM: 1_609 });
    const hardCrack = ladder.find((rung) => rung.id === 'hard-crack');
    expect(hardCrack?.lowC).toBeCloseTo(142.49, 2);
    const gap = ladder.find((rung) => rung.id === 'between-hard-crack-and-clear-liquid');
    expect(gap?.lowC).toBe(hardCrack?.highC);
    expect(gap?.highC).toBe(160);
    expect(gap?.drySolidsMassFraction).toBeNull();
  });

  it('takes one way to say where the kitchen is', () => {
    expect(() => stageLadder({ elevationM: 0, pressurePa: 101_325 })).toThrow(ModelRangeError);
    expect(() => stageLadder({ pressurePa: 130_000 })).toThrow(ModelRangeError);
    expect(() => stageLadder({ elevationM: -2_000 })).toThrow(ModelRangeError);
    expect(stageLadder({ pressurePa: 101_325 })).toEqual(stageLadder());
  });
});

describe('sugarStage', () => {
  it.each([
    [211, 'too-thin', 'too-thin'],
    [229, 'too-thin', 'too-thin'],
    [230, 'stage', 'thread'],
    [234, 'stage', 'soft-ball'],
    [240, 'stage', 'soft-ball'],
    [242, 'between', 'between-soft-ball-and-firm-ball'],
    [249, 'between', 'between-firm-ball-and-hard-ball'],
    [250, 'stage', 'hard-ball'],
    [268, 'between', 'between-hard-ball-and-soft-crack'],
    [290, 'stage', 'soft-crack'],
    [295, 'between', 'between-soft-crack-and-hard-crack'],
    [300, 'stage', 'hard-crack'],
    [310, 'stage', 'hard-crack'],
    [315, 'between', 'between-hard-crack-and-clear-liquid'],
    [320, 'dry', 'clear-liquid'],
    [336, 'between', 'between-clear-liquid-and-brown-liquid'],
    [350, 'dry', 'brown-liquid'],
    [351, 'burnt', 'burnt'],
  ])('at %i °F is %s: %s', (temperatureF, kind, id) => {
    expect(atF(temperatureF)).toMatchObject({ kind, id, namesApply: true });
  });

  it('tells a mixture by its solids, not by its thermometer', () => {
    const dry = evaporateTo(half(), { drySolidsMassFraction: 0.976 });
    const { boilingPointC } = boilingPoint(dry);
    const stage = sugarStage({ temperatureC: boilingPointC, mixture: half() });
    expect(stage.id).toBe('hard-crack');
    expect(stage.drySolidsMassFraction).toBeCloseTo(0.976, 9);
    expect(stage.seaLevelSucroseC).not.toBeCloseTo(boilingPointC, 1);
  });

  it('is hard crack in a vacuum pan long before the thermometer says so', () => {
    const rung = stageLadder({ pressurePa: 25_000 }).find(({ id }) => id === 'hard-crack');
    const [lowC = 0, highC = 0] = [rung?.lowC, rung?.highC];
    expect(highC).toBeLessThan(120);
    expect(sugarStage({ temperatureC: lowC, pressurePa: 25_000 }).id).toBe('hard-crack');
    expect(sugarStage({ temperatureC: highC, pressurePa: 25_000 }).id).toBe('hard-crack');
    expect(sugarStage({ temperatureC: 159, pressurePa: 5_000 }).id).toBe(
      'between-hard-crack-and-clear-liquid',
    );
    expect(sugarStage({ temperatureC: 159, pressurePa: 1_000 }).kind).toBe('between');
  });

  it('knows nothing of solids below the boil and in dry sugar', () => {
    expect(atF(200)).toMatchObject({ seaLevelSucroseC: null, drySolidsMassFraction: null });
    expect(atF(330)).toMatchObject({ seaLevelSucroseC: null, drySolidsMassFraction: null });
  });

  it('never calls isomalt burnt', () => {
    expect(sugarStage({ temperatureC: 190, mixture: isomalt() })).toMatchObject({
      kind: 'dry',
      id: 'clear-liquid',
      namesApply: false,
    });
  });

  it('refuses a temperature of no pan', () => {
    for (const temperatureC of [Number.NaN, -4, 400]) {
      expect(() => sugarStage({ temperatureC })).toThrow(ModelRangeError);
    }
  });
});

describe('stageTarget', () => {
  it('aims at the middle of the range unless told otherwise', () => {
    const middle = stageTarget({ stage: 'hard-crack' });
    expect(fahrenheitFromCelsius(middle.seaLevelSucroseC)).toBeCloseTo(305, 9);
    expect(stageTarget({ stage: 'hard-crack', aim: 'low' }).seaLevelSucroseC).toBeCloseTo(
      148.889,
      3,
    );
    expect(stageTarget({ stage: 'hard-crack', aim: 'high' }).seaLevelSucroseC).toBe(
      middle.rangeC[1],
    );
  });

  it('asks no solids of dry sugar', () => {
    expect(stageTarget({ stage: 'brown-liquid' }).drySolidsMassFraction).toBeNull();
  });

  it('knows no gap, no other name and no other aim', () => {
    for (const stage of ['between-soft-crack-and-hard-crack', 'caramel']) {
      expect(() => stageTarget({ stage: stage as StageId })).toThrow(ModelRangeError);
    }
    expect(() => stageTarget({ stage: 'thread', aim: 'lowest' as StageAim })).toThrow(
      ModelRangeError,
    );
  });
});

describe('temperatureAtKitchen', () => {
  it('moves 148 °C down to 142 at 1 500 m', () => {
    const here = temperatureAtKitchen({ temperatureC: 148, elevationM: 1_500 });
    if (isNone(here)) throw new Error(here.reason);
    expect(here.temperatureC).toBeCloseTo(142.04, 2);
    expect(here.temperatureC - here.shiftK).toBeCloseTo(148, 9);
    expect(here.band[1] - here.band[0]).toBeCloseTo(0.2 * 5.96, 2);
  });

  it('leaves dry sugar where it is, and moves isomalt as hot', () => {
    const caramel = temperatureAtKitchen({ temperatureC: 170, elevationM: 3_000 });
    expect(caramel).toMatchObject({ temperatureC: 170, shiftK: 0, band: [170, 170] });
    const melt = temperatureAtKitchen({ temperatureC: 165, elevationM: 3_000, mixture: isomalt() });
    if (isNone(melt)) throw new Error(melt.reason);
    expect(melt.shiftK).toBeLessThan(-10);
  });

  it('has no answer for a syrup that does not boil yet', () => {
    expect(temperatureAtKitchen({ temperatureC: 90, elevationM: 1_500 })).toEqual({
      kind: 'none',
      reason: 'below-the-boil',
    });
  });

  it('takes one way to say where the kitchen is', () => {
    const both = { temperatureC: 150, elevationM: 0, pressurePa: 101_325 };
    expect(() => temperatureAtKitchen(both)).toThrow(/not both/);
  });
});

describe('altitudeRules', () => {
  it('agree with the model at sea level', () => {
    const rules = altitudeRules({ temperatureC: 150, elevationM: 0 });
    expect(rules.model.shiftK).toBeCloseTo(0, 9);
    for (const rule of ['perThousandFeet', 'boilingWater', 'constantWaterActivity'] as const) {
      expect(rules[rule].errorK).toBeCloseTo(0, 6);
    }
  });

  it('go wrong their own way at hard crack', () => {
    const rules = altitudeRules({ temperatureC: 149, elevationM: 1_524 });
    expect(rules.perThousandFeet.temperatureC).toBeCloseTo(149 - 10 / 1.8, 2);
    expect(rules.boilingWater.errorK).toBeCloseTo(1, 1);
    expect(rules.constantWaterActivity.errorK).toBeLessThan(0);
  });

  it('are for syrup', () => {
    expect(() => altitudeRules({ temperatureC: 170, elevationM: 1_000 })).toThrow(ModelRangeError);
  });
});

describe('stagesApply', () => {
  it('fits sugar with glucose syrup, and nothing with much sugar alcohol', () => {
    expect(stagesApply(half()).apply).toBe(true);
    expect(stagesApply(isomalt())).toEqual({
      apply: false,
      sugarAndSyrupShare: 0,
      polyolShare: 1,
    });
  });

  it('wants three fifths of sugar and no more than a tenth of sugar alcohols in all', () => {
    const solids = (sucrose: number, glucose: number, sorbitol = 0, xylitol = 0) =>
      stagesApply(
        mixture([
          { ingredient: 'sucrose', massG: sucrose },
          { ingredient: 'glucose', massG: glucose },
          { ingredient: 'sorbitol', massG: sorbitol, drySolidsMassFraction: 1 },
          { ingredient: 'xylitol', massG: xylitol, drySolidsMassFraction: 1 },
        ]),
      ).apply;
    expect(solids(60, 40)).toBe(true);
    expect(solids(59, 41)).toBe(false);
    expect(solids(90, 0, 10)).toBe(true);
    expect(solids(88, 0, 6, 6)).toBe(false);
  });

  it('fits no water', () => {
    expect(stagesApply(solutionOf('sucrose', { drySolidsMassFraction: 0 }))).toEqual({
      apply: false,
      sugarAndSyrupShare: 0,
      polyolShare: 0,
    });
  });
});
