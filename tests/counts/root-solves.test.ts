import { readdirSync, readFileSync } from 'node:fs';
import { expect, it, vi } from 'vitest';
import type * as FindRoot from '../../packages/core/src/foundation/numeric/find-root.js';
import { planBatch } from '../../packages/core/src/index.js';
import type { BatchDocument } from '../../packages/core/src/job/batch/types.js';

const counter = vi.hoisted(() => ({ solves: 0 }));

vi.mock('../../packages/core/src/foundation/numeric/find-root.js', async (original) => {
  const real = await original<typeof FindRoot>();
  return {
    ...real,
    findRoot: (...given: Parameters<typeof real.findRoot>) => {
      counter.solves += 1;
      return real.findRoot(...given);
    },
  };
});

const folder = new URL('../../examples/batches/', import.meta.url);

// Half of them are the boil against the clock, which needs the whole boiling curve: at the full flame, and turned down.
it.each(readdirSync(folder))('plans %s with at most 120 root solves', (file) => {
  const batch: BatchDocument = JSON.parse(readFileSync(new URL(file, folder), 'utf8'));
  counter.solves = 0;
  const result = planBatch(batch);
  expect(result.kind).toBe('plan');
  expect(counter.solves).toBeGreaterThan(0);
  expect(counter.solves).toBeLessThanOrEqual(120);
});
