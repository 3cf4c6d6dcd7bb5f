import { describe, expect, it } from 'vitest';
import { batch, lineOf, problemsOf } from './good-batch.js';

describe('one way and no other', () => {
  const amounts = [
    'massG',
    'measure',
    'shareOfDrySolids',
    'shareOfFinished',
    'shareOfIngredient',
    'makeUpWaterFor',
  ];

  it.each([
    ['no amount', { ingredient: 'sucrose' }, []],
    [
      'two amounts',
      { ingredient: 'sucrose', massG: 1, shareOfFinished: 0.1 },
      ['massG', 'shareOfFinished'],
    ],
  ])('to say how much: %s', (_, line, received) => {
    expect(problemsOf(lineOf(line))).toEqual([
      { code: 'one-of', path: '/formula/0', received, known: amounts },
    ]);
  });

  it.each([
    ['no target', {}, []],
    ['two targets', { toSeaLevelC: 148, toStage: 'hard-crack' }, ['toStage', 'toSeaLevelC']],
  ])('to say where to stop: %s', (_, cook, received) => {
    expect(problemsOf(batch({ cook }))).toMatchObject([
      { code: 'one-of', path: '/cook', received },
    ]);
  });

  it('to know the air pressure', () => {
    const twice = { pressurePa: 90_000, elevationM: 100 };
    const known = ['elevationM', 'pressurePa', 'seaLevelPressurePa', 'waterBoilsAtC'];
    expect(problemsOf(batch({ kitchen: twice }))).toEqual([
      { code: 'one-of', path: '/kitchen', received: ['elevationM', 'pressurePa'], known },
    ]);
    expect(problemsOf(batch({ kitchen: { seaLevelPressurePa: 101_325 } }))).toEqual([
      { code: 'missing', path: '/kitchen/elevationM' },
    ]);
  });

  it('to describe a hob', () => {
    expect(problemsOf(batch({ hob: { powerW: 900 } }))).toEqual([
      { code: 'missing', path: '/hob/kind', known: ['gas', 'resistance', 'induction', 'timed'] },
    ]);
    expect(problemsOf(batch({ hob: { kind: 'gas', powerW: 900, waterG: 500 } }))).toEqual([
      {
        code: 'unknown-field',
        path: '/hob/waterG',
        received: 'waterG',
        known: ['kind', 'powerW'],
        also: '/hob/kind',
      },
    ]);
  });

  it('lets no field stand beside a target it does not belong to', () => {
    expect(problemsOf(batch({ cook: { toSeaLevelC: 148, aim: 'low' } }))).toMatchObject([
      { code: 'unknown-field', path: '/cook/aim', also: '/cook/toSeaLevelC' },
    ]);
  });
});
