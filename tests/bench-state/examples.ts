import { readdirSync, readFileSync } from 'node:fs';
import { type BatchDocument, type PlanDocument, planBatch } from 'vitrose';
import { readBatch } from 'vitrose/documents';

const folder = new URL('../../examples/batches/', import.meta.url);

/** Every example batch, through the reader. */
export const EXAMPLES: readonly (readonly [file: string, batch: BatchDocument])[] = readdirSync(
  folder,
).map((file) => {
  const reading = readBatch(readFileSync(new URL(file, folder), 'utf8'));
  if (reading.kind === 'problems') throw new Error(`${file}: ${JSON.stringify(reading.problems)}`);
  return [file, reading.batch] as const;
});

/** One example by the head of its file name. */
export function example(name: string): BatchDocument {
  const found = EXAMPLES.find(([file]) => file.startsWith(name));
  if (found === undefined) throw new Error(`No example is called ${name}.`);
  return found[1];
}

/** The plan, or a failed test. */
export function planOf(batch: BatchDocument): PlanDocument {
  const result = planBatch(batch);
  if (result.kind === 'refused') throw new Error(JSON.stringify(result.problems));
  return result.plan;
}
