import { describe, expect, it } from 'vitest';
import { planOf } from './batches.js';

/** Worked by hand, common practice: what a trade sheet prints, g to a tenth. */
const WORKED = {
  'hundred-lollipops': {
    lines: {
      sucrose: 727.6,
      'dried-glucose-syrup': 505.3,
      water: 240.1,
      'water for the powder': 101.1,
      'colour-liquid': 6.3,
      'flavour-oil': 3.1,
      'citric-acid': 15.1,
    },
    finishedG: 1256.1,
    baseG: 1231.6,
    baseMoisturePercent: 1.54,
    chargeG: 1574.0,
    boilOffG: 342.4,
    startDrySolidsPercent: 77.0,
    pieces: 100,
  },
  'two-hundred-mint-drops': {
    lines: {
      isomalt: 779.1,
      xylitol: 82.2,
      water: 194.8,
      'acesulfame-k': 0.42,
      'flavour-oil': 2.1,
      'citric-acid': 8.4,
    },
    finishedG: 841.8,
    baseG: 830.8,
    baseMoisturePercent: 1.01,
    // 779.1 + 82.2 + 194.8
    chargeG: 1056.1,
    boilOffG: 225.3,
    // (740.2 + 82.2) / 1056.1
    startDrySolidsPercent: 77.9,
    pieces: 200,
  },
} as const;

/** A tenth of a gram: what a good kitchen scale shows. */
const SCALE_G = 0.1;

describe.each(Object.entries(WORKED))('%s comes out as worked by hand', (name, worked) => {
  const { formula, composition, yield: made } = planOf(name);

  it.each(
    Object.entries(worked.lines).map(([what, grams], at) => ({ what, grams, line: formula[at] })),
  )('$grams g of $what', ({ what, grams, line }) => {
    expect(line?.ingredient).toBe(what.replace(' for the powder', ''));
    expect(Math.abs((line?.massG.value ?? Number.NaN) - grams)).toBeLessThanOrEqual(SCALE_G);
  });

  it('with nothing beside these lines', () => {
    expect(formula).toHaveLength(Object.keys(worked.lines).length);
  });

  it.each([
    ['finished mass', made.finishedG.value, worked.finishedG],
    ['base', composition.baseG.value, worked.baseG],
    ['charge', composition.chargeG.value, worked.chargeG],
    ['water to boil off', composition.boilOffG.value, worked.boilOffG],
  ])('%s', (_what, got, wanted) => {
    expect(Math.abs(got - wanted)).toBeLessThanOrEqual(SCALE_G);
  });

  it('moisture of the base, to its printed digit', () => {
    const percent = composition.baseMoistureMassFraction.value * 100;
    expect(percent.toFixed(2)).toBe(worked.baseMoisturePercent.toFixed(2));
  });

  it('dry solids at the start, to their printed digit', () => {
    const percent = composition.startDrySolidsMassFraction.value * 100;
    expect(percent.toFixed(1)).toBe(worked.startDrySolidsPercent.toFixed(1));
  });

  it('and the pieces that were ordered', () => {
    expect(made.pieces?.value).toBe(worked.pieces);
  });
});
