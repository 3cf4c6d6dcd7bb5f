import { expect, it } from 'vitest';
import { modelNotes } from '../../job/plan/model-notes.js';
import { SOURCES } from '../../sources/index.js';
import { MODEL_NAMES } from './models.js';
import { SHORT_CITATIONS, shortCitation } from './short-citations.js';

const used = new Set(
  Object.values(modelNotes(new Set(Object.keys(MODEL_NAMES)))).flatMap(({ sources }) => sources),
);

it('knows every source a plan can rest on, and no other', () => {
  expect(used.size).toBeGreaterThan(10);
  expect(Object.keys(SHORT_CITATIONS).sort()).toEqual([...used].sort());
});

it.each([...used])('names %s by people and year, or by what it is', (id) => {
  const { kind, authors, year } = SOURCES[id];
  const short = shortCitation(id);
  expect(short).not.toMatch(/[a-z]-\d|_/);
  if (kind !== 'publication' || year === 'n.d.') return;
  expect(short).toContain(year);
  // An institution is known by its work.
  if (authors.includes('.')) expect(short).toContain(authors.split(',')[0]);
});

it('falls back to the key', () => {
  expect(shortCitation('assumption')).toBe('assumption');
});
