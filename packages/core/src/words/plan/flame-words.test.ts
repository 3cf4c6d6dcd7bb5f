import { expect, it } from 'vitest';
import { flameWords } from './flame-words.js';

it.each([
  [0.02, 'a fifth'],
  [0.22, 'a fifth'],
  [0.26, 'a quarter'],
  [0.37, 'a third'],
  [0.45, 'half'],
  [0.6, 'two thirds'],
  [0.9, 'three quarters'],
])('says %d of the flame as a hand can set it: %s', (share, words) => {
  expect(flameWords(share)).toBe(words);
});
