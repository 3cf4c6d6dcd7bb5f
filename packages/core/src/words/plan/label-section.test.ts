import { describe, expect, it } from 'vitest';
import { labelLines } from './label-section.js';
import { ISOMALT_DROPS, LEMON_DROPS } from './plans.fixture.js';

describe('for the label', () => {
  it('gives the amounts as the reader’s law prints them', () => {
    expect(labelLines(LEMON_DROPS, {}).slice(0, 2)).toEqual([
      '100 g by EU rules: 1 646 kJ (387 kcal), carbohydrate 95.9 g, of which sugars 70.5 g.',
      'One piece: 95 kJ (22 kcal).',
    ]);
    expect(labelLines(LEMON_DROPS, { units: 'us' }).slice(0, 2)).toEqual([
      '100 g by US rules: 388 kcal, carbohydrate 95.9 g, of which sugars 70.5 g.',
      'One piece: 23 kcal.',
    ]);
    expect(labelLines(LEMON_DROPS, { units: 'metric', region: 'us' })[0]).toContain('by US rules');
    expect(labelLines(LEMON_DROPS, { locale: 'de' })[0]).toContain('1.646 kJ (387 kcal)');
  });

  it('leaves out a piece nobody sized, and sugar alcohols where there are none', () => {
    const lines = labelLines(ISOMALT_DROPS, {});
    expect(lines[0]).toContain('sugars 0 g, sugar alcohols 99 g.');
    expect(lines.join('\n')).not.toContain('One piece');
    expect(labelLines(LEMON_DROPS, {})[0]).not.toContain('alcohols');
  });

  it('keeps silent about claims the sweet is nowhere near, and tells the others as tests', () => {
    expect(labelLines(LEMON_DROPS, {}).join('\n')).not.toContain('sugar-free');
    expect(labelLines(ISOMALT_DROPS, {}).slice(1, 3)).toEqual([
      '99 % of it is added sugar alcohols: above 10 % the label says that eating much of it may be laxative.',
      '‘sugar-free’ needs an analysis (sugars, g in 100 g: 0, at most 0.5): isomalt frees sugar in heat and acid, so the finished sweet decides.',
    ]);
  });

  it('ends by sending to the authority, whatever stands before', () => {
    for (const plan of [LEMON_DROPS, ISOMALT_DROPS])
      expect(labelLines(plan, {}).at(-1)).toContain('check with your authority');
  });
});
