import { describe, expect, it } from 'vitest';
import { shownShares } from './shares.js';

const sum = (shares: Readonly<Record<string, number>>) =>
  shownShares(shares).shown.reduce((total, { share }) => total + Number.parseFloat(share), 0);

describe('shares', () => {
  it('sum to a hundred as printed, where each alone would be rounded up', () => {
    expect(shownShares({ sucrose: 0.625, syrup: 0.375 }).shown.map(({ share }) => share)).toEqual([
      '63 %',
      '37 %',
    ]);
    for (let sucrose = 0.5; sucrose < 0.9; sucrose += 0.003_7) {
      const syrup = (1 - sucrose) * 0.61;
      expect(sum({ sucrose, syrup, acid: 1 - sucrose - syrup })).toBeCloseTo(100, 9);
    }
  });

  it('have tenths where one of them is small', () => {
    expect(shownShares({ isomalt: 0.8885, xylitol: 0.0985, acid: 0.013 }).shown).toEqual([
      { id: 'isomalt', share: '88.9 %' },
      { id: 'xylitol', share: '9.8 %' },
      { id: 'acid', share: '1.3 %' },
    ]);
  });

  it('name what rounds to nothing as a trace', () => {
    const { shown, traces } = shownShares({ sucrose: 0.9998, pigment: 0.0002 });
    expect(shown).toEqual([{ id: 'sucrose', share: '100 %' }]);
    expect(traces).toEqual(['pigment']);
  });
});
