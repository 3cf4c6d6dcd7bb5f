import { describe, expect, it } from 'vitest';
import type { PlanDocument, PlannedGraining, PlannedKeeping } from '../../job/plan/types.js';
import { NO_GRAINING, NO_WRAP } from '../names/keeping-words.js';
import { keepingLines } from './keeping-section.js';
import { ISOMALT_DROPS, LEMON_DROPS } from './plans.fixture.js';

function kept(changes: Partial<PlannedKeeping>, more: Partial<PlanDocument> = {}): string {
  const plan = { ...LEMON_DROPS, keeping: { ...LEMON_DROPS.keeping, ...changes }, ...more };
  return keepingLines(plan, {}).join('\n');
}

const figure = (value: number, low: number, high: number) =>
  ({ value, band: [low, high], model: 'wrap-life' }) as const;

describe('how it keeps', () => {
  it('tells glass point, store, air, graining and wrap, in this order', () => {
    expect(keepingLines(LEMON_DROPS, {})).toEqual([
      'Stays hard up to about 43 °C (109 °F), its glass point (35 to 51, quoted in print).',
      'You keep it at 24 °C (75 °F) and 55 % humidity, for 180 days.',
      'Each half per cent of water it takes up costs about 5 °C of that: close it well.',
      'Bare, it softens in air of more than about 30 % humidity (25 % to 35 %, worked out here); from 42 % on its skin is sticky.',
      'Graining (sugar crystals where it should be glass): low while you work it, low in its wrap, near certain bare. The times behind that are good to a factor of ten.',
      'Wrapped as you say it stays hard for about 210 days (71 to 640, from memory).',
    ]);
  });

  it('says when nobody knows what air it bears, and nothing of air where it is soft already', () => {
    expect(kept({ air: undefined })).toContain('nobody has measured for a mass like this');
    const { air } = LEMON_DROPS.keeping;
    if (air === undefined) throw new Error('the lemon drops bear some air');
    expect(kept({ air: { ...air, stickyAtRelativeHumidity: undefined } })).toMatch(
      /worked out here\)\.$/m,
    );
    const soft = keepingLines(ISOMALT_DROPS, {}).join('\n');
    expect(soft).not.toMatch(/Bare|air/);
  });

  it('tells graining in words, and of the bare sweet only where its air is known', () => {
    const { graining } = LEMON_DROPS;
    if (graining.kind === 'none') throw new Error('the lemon drops can grain');
    const word = (id: 'watch' | 'likely') => ({ ...graining.wrapped, word: id });
    const told = kept(
      {},
      {
        graining: {
          ...graining,
          process: word('likely'),
          wrapped: word('watch'),
          open: undefined,
        },
      },
    );
    expect(told).toContain(': likely while you work it, one to watch in its wrap. The times');
    expect(told).not.toMatch(/\d days? to grain/);
  });

  it.each(Object.entries(NO_GRAINING))(
    'says why nothing is said of graining: %s',
    (reason, text) => {
      const graining = { kind: 'none', reason } as PlannedGraining;
      expect(kept({}, { graining })).toContain(text);
    },
  );

  it.each(Object.entries(NO_WRAP))('says why the wrap has no days: %s', (reason, text) => {
    expect(kept({ wrap: { kind: 'none', reason } as PlannedKeeping['wrap'] })).toContain(text);
  });

  it('gives the days of the wrap no digit too many, and the finer sum only where it differs', () => {
    const wrapped = (days: number, fullDays: number) =>
      kept({ wrap: { kind: 'days', days: figure(days, days / 3, days * 3), fullDays } });
    expect(wrapped(43.4, 40)).toContain('for about 43 days (14 to 130, from memory).');
    expect(wrapped(43.4, 20)).toContain('from memory); reckoned in small steps it is 20.');
    expect(wrapped(1_234, 1_200)).toContain('for about 1 230 days (410 to 3 700, from memory).');
  });

  it('stands on the scale and the digits of the reader', () => {
    const us = keepingLines(LEMON_DROPS, { units: 'us' });
    expect(us[0]).toContain('110 °F (43 °C), its glass point (95 to 124,');
    expect(us[2]).toContain('costs about 9 °F of that');
    const { glassTransitionC } = LEMON_DROPS.keeping;
    const german = keepingLines(
      {
        ...LEMON_DROPS,
        keeping: {
          ...LEMON_DROPS.keeping,
          glassTransitionC,
          storeRelativeHumidity: 0.055,
          wrap: { kind: 'days', days: figure(1_234, 411, 3_702), fullDays: 1_234 },
        },
      },
      { locale: 'de' },
    );
    expect(german[1]).toContain('5,5 % humidity');
    expect(german[5]).toContain('1.230 days');
  });
});
