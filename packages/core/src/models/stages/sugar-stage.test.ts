import { describe, expect, it } from 'vitest';
import { celsiusFromFahrenheit } from '../../foundation/units/temperature.js';
import { solutionOf } from '../../matter/mixture/solution-of.js';
import { sugarStage } from './sugar-stage.js';

const isomalt = () => solutionOf('isomalt', { drySolidsMassFraction: 0.8 });
const idAtF = (temperatureF: number) =>
  sugarStage({ temperatureC: celsiusFromFahrenheit(temperatureF) }).id;

describe('sugarStage at the ends printed in the charts', () => {
  it.each([
    ['thread', 230, 233.9],
    ['soft-ball', 234, 240],
    ['firm-ball', 244, 248],
    ['hard-ball', 250, 266],
    ['soft-crack', 270, 290],
    ['hard-crack', 300, 310],
    ['clear-liquid', 320, 335],
    ['brown-liquid', 338, 350],
  ])('gives %s both of them: %d and %d °F', (id, lowF, highF) => {
    expect(idAtF(lowF)).toBe(id);
    expect(idAtF(highF)).toBe(id);
  });

  it.each([
    ['between-soft-ball-and-firm-ball', 240, 244],
    ['between-firm-ball-and-hard-ball', 248, 250],
    ['between-hard-ball-and-soft-crack', 266, 270],
    ['between-soft-crack-and-hard-crack', 290, 300],
    ['between-hard-crack-and-clear-liquid', 310, 320],
    ['between-clear-liquid-and-brown-liquid', 335, 338],
  ])('leaves %s what lies within', (id, lowF, highF) => {
    expect(idAtF(lowF + 0.001)).toBe(id);
    expect(idAtF(highF - 0.001)).toBe(id);
  });

  it('calls what lies outside thin or burnt', () => {
    expect(idAtF(229.99)).toBe('too-thin');
    expect(idAtF(350.01)).toBe('burnt');
  });

  it('knows isomalt for dry from the heat on that melts sugar', () => {
    const dry = {
      kind: 'dry',
      id: 'clear-liquid',
      seaLevelSucroseC: null,
      drySolidsMassFraction: null,
      namesApply: false,
      warnings: [],
    };
    expect(sugarStage({ temperatureC: 160, mixture: isomalt() })).toEqual(dry);
    expect(sugarStage({ temperatureC: 200, mixture: isomalt() })).toEqual(dry);
    const boiling = sugarStage({ temperatureC: 150, mixture: isomalt() });
    expect(boiling).toMatchObject({ namesApply: false });
    expect(boiling.drySolidsMassFraction).toBeGreaterThan(0.95);
  });

  it('says what it was told by, and warns as the boil does', () => {
    // Soft ball at sea level is about 85 parts of sugar in a hundred.
    const told = sugarStage({ temperatureC: 114, pressurePa: 101_325 });
    expect(told.seaLevelSucroseC).toBeCloseTo(114, 6);
    expect(told.drySolidsMassFraction).toBeCloseTo(0.85, 1);
    const vacuum = sugarStage({ temperatureC: 90, pressurePa: 1_500 });
    expect(vacuum.warnings).toContainEqual({
      code: 'outside-tested-range',
      parameter: 'pressurePa',
      value: 1_500,
      limits: [2_000, 120_000],
    });
  });

  it('calls a mass nearly dry where its syrup would boil hotter than sugar melts', () => {
    const told = sugarStage({ temperatureC: 159, pressurePa: 50_000 });
    expect(told).toMatchObject({
      kind: 'between',
      id: 'between-hard-crack-and-clear-liquid',
      seaLevelSucroseC: null,
      namesApply: true,
      warnings: [{ parameter: 'dissolvedMassFraction', limits: [0, 0.995] }],
    });
    expect(told.drySolidsMassFraction).toBeGreaterThan(0.98);
  });
});
