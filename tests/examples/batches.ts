import { readdirSync, readFileSync } from 'node:fs';
import { type BatchDocument, type PlanDocument, planBatch } from 'vitrose';
import { readBatch } from 'vitrose/documents';

const folder = new URL('../../examples/batches/', import.meta.url);

/** Every example, by the name of its file. */
export const EXAMPLES: readonly string[] = readdirSync(folder)
  .map((file) => file.replace(/\.json$/, ''))
  .sort();

/** An example as it stands in its file. */
export function batchOf(name: string): BatchDocument {
  const reading = readBatch(readFileSync(new URL(`${name}.json`, folder), 'utf8'));
  if (reading.kind === 'problems') throw new Error(JSON.stringify(reading.problems));
  return reading.batch;
}

/** The plan of an example. */
export function planOf(name: string): PlanDocument {
  const answer = planBatch(batchOf(name));
  if (answer.kind === 'refused') throw new Error(JSON.stringify(answer.problems));
  return answer.plan;
}
