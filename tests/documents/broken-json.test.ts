import fc from 'fast-check';
import { expect, it } from 'vitest';
import { readBatch } from 'vitrose/documents';
import { sensibleBatch } from './arbitrary-batch.js';

/** Where the engine stumbled, in the messages that say so. */
const engineSays = (text: string): number | undefined => {
  try {
    JSON.parse(text);
  } catch (error) {
    const found = /at position (\d+)/.exec(String(error))?.[1];
    return found === undefined ? undefined : Number(found);
  }
  return undefined;
};

it('the place where a text breaks is the one where the engine stumbles, or the start of that word', () => {
  let compared = 0;
  const slip = fc.tuple(fc.nat(), fc.constantFrom('', ',', '}', '"', '\\', 'x', '-', '.', '\t'));
  fc.assert(
    fc.property(sensibleBatch, slip, (batch, [place, instead]) => {
      const text = JSON.stringify(batch);
      const at = place % text.length;
      const broken = text.slice(0, at) + instead + text.slice(at + 1);
      const engine = engineSays(broken);
      if (engine === undefined) return;
      const reading = readBatch(broken);
      const column = reading.kind === 'problems' ? reading.problems[0]?.numbers?.column : undefined;
      const told = (column ?? Number.NaN) - 1;
      expect(told).toBeLessThanOrEqual(engine);
      expect(told).toBeGreaterThanOrEqual(engine - 6);
      compared++;
    }),
    { numRuns: 2_000 },
  );
  expect(compared).toBeGreaterThan(500);
});
