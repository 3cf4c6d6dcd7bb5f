import { expect, it, vi } from 'vitest';
import type * as FindRoot from '../../packages/core/src/foundation/numeric/find-root.js';
import { boilDown, mixture } from '../../packages/core/src/index.js';

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

const targets = [{ targetC: 148 }, { targetDrySolidsMassFraction: 0.975 }] as const;

it.each(targets)('boils down to %o with at most 48 root solves, of water and of the mass', (to) => {
  const charge = mixture([
    { ingredient: 'sucrose', massG: 1_000 },
    { ingredient: 'water', massG: 330 },
  ]);
  const hob = { kind: 'timed', waterG: 500, fromC: 20, boilsInMin: 4 } as const;
  // As many turns of the flame as are taken: each is one solve more.
  const powerSteps = Array.from({ length: 8 }, (_, at) => ({ fromC: 112 + 4 * at, share: 0.9 }));
  counter.solves = 0;
  expect(boilDown(charge, { hob, powerSteps, ...to })).toHaveProperty('minutes');
  expect(counter.solves).toBeGreaterThan(0);
  expect(counter.solves).toBeLessThanOrEqual(48);
});
