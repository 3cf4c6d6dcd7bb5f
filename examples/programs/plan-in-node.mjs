// Reads a batch, plans it, prints the first answer: five lines.
//
//   node examples/programs/plan-in-node.mjs

import { readFileSync } from 'node:fs';
import { planBatch } from 'vitrose';
import { readBatch } from 'vitrose/documents';
import { describePlan, explainProblem } from 'vitrose/words';

const file = new URL('../batches/harbour-lemon-drops.json', import.meta.url);

/** The plan, or an error that says everything there is to change. */
function planOf(text) {
  const reading = readBatch(text);
  const answer = reading.kind === 'batch' ? planBatch(reading.batch) : reading;
  if (answer.kind === 'plan') return answer.plan;
  throw new Error(answer.problems.map((problem) => explainProblem(problem).text).join('\n'));
}

const plan = planOf(readFileSync(file, 'utf8'));
const { answer } = describePlan(plan, { units: 'metric' });
for (const { label, text } of answer) console.log(`${label}: ${text}`);

// Every number carries the range it lies in and the model it comes from.
const { value, band, model } = plan.composition.baseMoistureMassFraction;
const [low, high] = band.map((fraction) => (fraction * 100).toFixed(1));
console.log(`Water left at the stop: ${(value * 100).toFixed(1)} %, between ${low} and ${high}.`);
console.log(`Model: ${plan.models[model].equation}`);
