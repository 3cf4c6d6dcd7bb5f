import { expect, it } from 'vitest';
import { interpolate } from './interpolate.js';

const points = [
  [0, 1],
  [2, 5],
  [3, 4],
  [10, 11],
] as const;

it('passes through every point', () => {
  for (const [x, y] of points) expect(interpolate(points, x)).toBe(y);
});

it.each([
  [1, 3],
  [2.5, 4.5],
  [6.5, 7.5],
])('draws a ruler between them: at %f it reads %f', (x, y) => {
  expect(interpolate(points, x)).toBeCloseTo(y, 12);
});

it('goes straight on beyond both ends', () => {
  expect(interpolate(points, -1)).toBeCloseTo(-1, 12);
  expect(interpolate(points, 12)).toBeCloseTo(13, 12);
});
