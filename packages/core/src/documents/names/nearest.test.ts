import { describe, expect, it } from 'vitest';
import { editDistance } from './edit-distance.js';
import { nearest } from './nearest.js';

describe('the slips between two words', () => {
  it.each([
    ['sucrose', 'sucrose', 0],
    ['sucrose', 'sucros', 1],
    ['sucrose', 'succrose', 1],
    ['sucrose', 'sacrose', 1],
    ['sucrose', 'sucrsoe', 1],
    ['isomalt', 'maltitol', 7],
    ['', 'salt', 4],
    ['ca', 'abc', 3],
  ])('%s and %s are %i', (a, b, slips) => {
    expect(editDistance(a, b)).toBe(slips);
    expect(editDistance(b, a)).toBe(slips);
  });
});

describe('the name that was meant', () => {
  const names = ['massG', 'measure', 'maxC', 'oz', 'lb'];

  it.each([
    ['mass', ['massG']],
    ['MASSG', ['massG']],
    ['mesaure', ['measure']],
    ['maxF', ['maxC']],
    ['lbs', ['lb']],
  ])('by %s is found', (word, meant) => {
    expect(nearest(word, names)).toEqual(meant);
  });

  it.each(['g', 'weight', '', 'x'.repeat(250_000)])(
    'is not guessed where nothing is left of it',
    (word) => {
      expect(nearest(word, names)).toEqual([]);
    },
  );
});
