import { describe, expect, it } from 'vitest';
import { type CoreFile, coreFiles } from './core-files.js';
import { ringOfImports, wrongArrows } from './import-arrows.js';

/** A library in which everything an arrow below points to exists. */
const floor = [
  'index.ts',
  'documents/read-batch.ts',
  'words/say.ts',
  'sources/index.ts',
  'job/plan.ts',
  'models/boiling/point.ts',
  'models/glass/tg.ts',
  'models/stages/ladder.ts',
  'models/moisture/erh.ts',
  'matter/water/vapour.ts',
  'matter/air/pressure.ts',
  'matter/mixture/mixture.ts',
  'matter/measures/cup.ts',
  'foundation/check.ts',
].map((path): CoreFile => ({ path, text: '' }));

const planted = (path: string, text: string): readonly string[] =>
  wrongArrows([...floor.filter((file) => file.path !== path), { path, text }]);

describe('the storeys of the library', () => {
  const files = coreFiles();

  it('are all there to be looked at', () => {
    expect(files.map((file) => file.path)).toContain('index.ts');
  });

  it('have arrows that only go down', () => {
    expect(wrongArrows(files)).toEqual([]);
  });

  it('hold no ring of files that need each other', () => {
    expect(ringOfImports(files)).toBeUndefined();
  });
});

describe('the check of the arrows', () => {
  it.each([
    ['index.ts', `export { plan } from './job/plan.js';`],
    ['documents/read-batch.ts', `import { plan } from '../job/plan.js';`],
    ['words/say.ts', `import { plan } from '../job/plan.js';`],
    ['job/plan.ts', `import { tg } from '../models/glass/tg.js';`],
    ['models/stages/ladder.ts', `import { point } from '../boiling/point.js';`],
    ['models/moisture/erh.ts', `import { tg } from '../glass/tg.js';`],
    ['matter/air/pressure.ts', `import { vapour } from '../water/vapour.js';`],
    ['foundation/check.ts', `import type { SourceId } from '../sources/index.js';`],
  ])('lets %s say %s', (path, text) => {
    expect(planted(path, text)).toEqual([]);
  });

  it.each([
    ['foundation/check.ts', `import { vapour } from '../matter/water/vapour.js';`],
    ['foundation/check.ts', `import type { Plan } from '../job/plan.js';`],
    ['foundation/check.ts', `import { SOURCES } from '../sources/index.js';`],
    ['foundation/check.ts', `import { type SourceId } from '../sources/index.js';`],
    ['matter/water/vapour.ts', `import { pressure } from '../air/pressure.js';`],
    ['matter/measures/cup.ts', `import { mixture } from '../mixture/mixture.js';`],
    ['models/boiling/point.ts', `import { ladder } from '../stages/ladder.js';`],
    ['models/glass/tg.ts', `export { erh } from '../moisture/erh.js';`],
    ['models/glass/tg.ts', `export const late = () => import('../moisture/erh.js');`],
    ['models/glass/tg.ts', `type Late = import('../moisture/erh.js').Erh;`],
    ['job/plan.ts', `import { say } from '../words/say.js';`],
    ['words/say.ts', `import { readBatch } from '../documents/read-batch.js';`],
    ['documents/read-batch.ts', `import * as z from 'zod/mini';`],
    ['sources/index.ts', `import { check } from '../foundation/check.js';`],
    ['index.ts', `export { readBatch } from './documents/read-batch.js';`],
    ['index.ts', `export * from './job/plan.js';`],
    ['job/plan.ts', `import { readFileSync } from 'node:fs';`],
    ['job/plan.ts', `import { gone } from './gone.js';`],
  ])('stops %s at %s', (path, text) => {
    expect(planted(path, text)).toHaveLength(1);
  });

  it('finds a ring of three, and none in a chain', () => {
    const chain = [
      { path: 'job/a.ts', text: `import { b } from './b.js';` },
      { path: 'job/b.ts', text: `import { c } from './c.js';` },
    ];
    expect(ringOfImports([...chain, { path: 'job/c.ts', text: '' }])).toBeUndefined();
    const ring = { path: 'job/c.ts', text: `import { a } from './a.js';` };
    expect(ringOfImports([...chain, ring])).toHaveLength(4);
    const erased = { path: 'job/c.ts', text: `import type { A } from './a.js';` };
    expect(ringOfImports([...chain, erased])).toBeUndefined();
  });
});
