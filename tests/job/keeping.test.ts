import { describe, expect, it } from 'vitest';
import { applyChanges, type BatchDocument } from 'vitrose';
import { planOf } from './plan-of.js';

const drops: BatchDocument = {
  format: 'vitrose.batch/1',
  formula: [
    { ingredient: 'sucrose', massG: 232 },
    { ingredient: 'dried-glucose-syrup', dextroseEquivalent: 42, massG: 155 },
    { ingredient: 'water', massG: 116 },
  ],
  cook: { toSeaLevelC: 148 },
  pieces: { massG: 6 },
  room: { temperatureC: 22, relativeHumidity: 0.55 },
};
const film = { film: 'oriented-pp', areaCm2: 40 } as const;
const polyols: BatchDocument = {
  ...drops,
  formula: [
    { ingredient: 'isomalt', massG: 380 },
    { ingredient: 'xylitol', massG: 60 },
    { ingredient: 'water', massG: 110 },
  ],
  cook: { toSeaLevelC: 160 },
};

const wrapOf = (batch: BatchDocument) => planOf(batch).keeping.wrap;
const reasonOf = (batch: BatchDocument) => {
  const wrap = wrapOf(batch);
  return wrap.kind === 'none' ? wrap.reason : wrap.kind;
};

describe('how long a wrap holds', () => {
  it('is counted in days by two ways that lie near each other', () => {
    const wrap = wrapOf({ ...drops, wrap: film });
    if (wrap.kind === 'none') throw new Error(wrap.reason);
    const { value, band } = wrap.days;
    expect(band[0]).toBeLessThan(value);
    expect(band[1]).toBeGreaterThan(value);
    expect(wrap.fullDays / value).toBeGreaterThan(0.8);
    expect(wrap.fullDays / value).toBeLessThan(1.25);
  });

  it('is longer with a better seal and in drier air', () => {
    const days = (batch: BatchDocument) => {
      const wrap = wrapOf(batch);
      return wrap.kind === 'days' ? wrap.days.value : Number.POSITIVE_INFINITY;
    };
    const usual = days({ ...drops, wrap: film });
    expect(days({ ...drops, wrap: { ...film, sealFactor: 1.1 } })).toBeGreaterThan(usual);
    expect(days({ ...drops, wrap: film, store: { relativeHumidity: 0.45 } })).toBeGreaterThan(
      usual,
    );
  });

  it('is known less well where nobody measured the seal', () => {
    const width = (sealFactor?: number) => {
      const wrap = wrapOf({ ...drops, wrap: { ...film, sealFactor } });
      if (wrap.kind === 'none') throw new Error(wrap.reason);
      return wrap.days.band[1] / wrap.days.band[0];
    };
    expect(width()).toBeGreaterThan(1.2 * width(1.5));
  });

  it.each([
    ['not-given', 'nobody says how it is closed', {}],
    ['open', 'it is left open', { wrap: 'none' }],
    ['open', 'twist wrap lets the air in', { wrap: 'twist' }],
    ['humidity-not-given', 'the air is not known', { wrap: film, room: { temperatureC: 22 } }],
    ['dry-enough', 'the air never softens it', { wrap: film, room: { relativeHumidity: 0.25 } }],
    ['already-soft', 'it is soft before it starts', { wrap: film, cook: { toSeaLevelC: 125 } }],
    ['piece-not-given', 'nobody weighed a piece', { wrap: film, pieces: {} }],
  ] as const)('is %s where %s', (reason, _why, more) => {
    expect(reasonOf({ ...drops, ...more })).toBe(reason);
  });

  it('has no estimate for a glass of sugar alcohols', () => {
    expect(reasonOf({ ...polyols, wrap: film })).toBe('no-estimate');
  });
});

describe('what air a bare sweet bears', () => {
  it('lies above its own, and below the air it sticks in', () => {
    const { air } = planOf(drops).keeping;
    const own = air?.ownRelativeHumidity.value ?? Number.NaN;
    const bears = air?.criticalRelativeHumidity.value ?? Number.NaN;
    expect(own).toBeLessThan(bears);
    expect(bears).toBeLessThan(air?.sticksFromRelativeHumidity ?? Number.NaN);
    expect(air?.sticksFromRelativeHumidity).toBeLessThan(
      air?.stickyAtRelativeHumidity ?? Number.NaN,
    );
  });

  it('is not known of a mass whose sorption nobody measured', () => {
    expect(planOf(polyols).keeping.air).toBeUndefined();
  });

  const stickyIn = (relativeHumidity: number, more: Partial<BatchDocument> = {}) =>
    planOf({ ...drops, room: { temperatureC: 22, relativeHumidity }, ...more }).advice.find(
      ({ code }) => code === 'sticky-room',
    )?.severity;

  it('is only worth a note while the batch may still be closed in', () => {
    for (const humidity of [0.35, 0.55, 0.7, 0.9]) expect(stickyIn(humidity)).toBe('note');
    expect(stickyIn(0.3)).toBeUndefined();
  });

  it('cannot keep where it is left open and sticks all over', () => {
    expect(stickyIn(0.35, { wrap: 'none' })).toBe('note');
    expect(stickyIn(0.55, { wrap: 'none' })).toBe('will-fail');
    expect(stickyIn(0.55, { wrap: 'twist' })).toBe('will-fail');
  });

  it('meets a sealed sweet only while it is made', () => {
    expect(stickyIn(0.55, { wrap: film })).toBeUndefined();
    expect(stickyIn(0.7, { wrap: film })).toBe('note');
  });
});

describe('whether it grains', () => {
  const lean: BatchDocument = {
    ...drops,
    formula: [
      { ingredient: 'sucrose', massG: 320 },
      { ingredient: 'dried-glucose-syrup', dextroseEquivalent: 42, massG: 70 },
      { ingredient: 'water', massG: 120 },
    ],
    room: { temperatureC: 22 },
  };
  const grainingOf = (batch: BatchDocument) => {
    const { graining } = planOf(batch);
    if (graining.kind === 'none') throw new Error(graining.reason);
    return graining;
  };

  it('is judged by the worst of the places that apply', () => {
    for (const batch of [drops, lean, { ...drops, wrap: 'none' } as const]) {
      const graining = grainingOf(batch);
      const open = batch.wrap === 'none' && graining.open !== undefined;
      const applying = [graining.process, (open && graining.open) || graining.wrapped];
      const worst = graining[graining.worst];
      expect(applying).toContain(worst);
      expect(worst?.score).toBe(Math.max(...applying.map(({ score }) => score)));
      expect(graining.word).toBe(worst?.word);
    }
  });

  it('counts the bare skin only where the batch is left open', () => {
    expect(grainingOf(drops).open?.score).toBe(100);
    expect(grainingOf(drops).worst).not.toBe('open');
    expect(grainingOf({ ...drops, wrap: 'twist' })).toMatchObject({
      worst: 'open',
      word: 'near-certain',
    });
    expect(grainingOf(lean).open).toBeUndefined();
  });

  it('is nearer with seeds, and further with more doctor', () => {
    const seeded = grainingOf({ ...lean, handling: { stirredAfterBoil: true } });
    expect(seeded.process.score).toBeGreaterThan(grainingOf(lean).process.score);
    expect(grainingOf(drops).process.score).toBeLessThan(grainingOf(lean).process.score);
    expect(grainingOf(drops).doctorMassFraction).toBeGreaterThan(
      grainingOf(lean).doctorMassFraction,
    );
  });

  it('is advised on with ways out, each of which helps', () => {
    const stirred: BatchDocument = { ...lean, handling: { stirredAfterBoil: true } };
    const advice = planOf(stirred).advice.find(({ code }) => code === 'may-grain');
    expect(advice?.remedies.map(({ code }) => code)).toContain('do-not-stir');
    const before = grainingOf(stirred);
    for (const { changes } of advice?.remedies ?? []) {
      const after = grainingOf(applyChanges(stirred, changes));
      expect(after[after.worst]?.score).toBeLessThan(before[before.worst]?.score ?? 0);
    }
  });

  it('has no answer for sugar alcohols', () => {
    expect(planOf(polyols).graining).toEqual({ kind: 'none', reason: 'no-kinetic-data' });
  });
});

describe('what can be done to the mass', () => {
  it('comes hottest first, and moves up with the glass point', () => {
    const windows = (batch: BatchDocument) => planOf(batch).windows;
    const tops = windows(drops).map(({ lowC, highC }) => highC ?? lowC ?? Number.NaN);
    expect(tops).toEqual([...tops].sort((a, b) => b - a));
    const drier = windows({ ...drops, cook: { toSeaLevelC: 154 } });
    for (const [at, { id, lowC, highC }] of windows(drops).entries()) {
      const hotter = drier[at];
      expect(hotter?.id).toBe(id);
      if (lowC !== undefined) expect(hotter?.lowC).toBeGreaterThan(lowC);
      if (highC !== undefined) expect(hotter?.highC).toBeGreaterThan(highC);
    }
  });
});
