// What one call of each public function costs, as a multiple of one `waterVapourPressure` call:
// a ratio holds on a slow machine as on a fast one. `npm run bench` builds first and runs this.

import { readdirSync, readFileSync } from 'node:fs';
import * as vitrose from 'vitrose';
import { readBatch } from 'vitrose/documents';
import { describePlan } from 'vitrose/words';
import { sampleCalls } from './sample-calls.mjs';

const ROUNDS = 9;
const ROUND_MS = 15;

// What the calls return goes here, so that no engine can leave them out.
let sink;

const median = (numbers) => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)];

/** Milliseconds of processor time that so many calls take; what else runs here does not count. */
function elapsedMs(call, times) {
  const start = process.cpuUsage();
  for (let at = 0; at < times; at += 1) sink = call();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1_000;
}

/** How many calls fill a round; counting them warms the function up as well. */
function timesPerRound(call) {
  let times = 1;
  while (elapsedMs(call, times) < ROUND_MS) times *= 2;
  return times;
}

const calls = sampleCalls(vitrose);
const yardstick = calls.waterVapourPressure;
const yardsticks = timesPerRound(yardstick);

/** Cost of a call, each round beside a round of the yardstick: a busy machine slows down both. */
function costOf(call) {
  const times = timesPerRound(call);
  const rounds = Array.from({ length: ROUNDS }, () => {
    const callMs = elapsedMs(call, times) / times;
    return { callMs, ratio: callMs / (elapsedMs(yardstick, yardsticks) / yardsticks) };
  });
  return {
    ratio: median(rounds.map(({ ratio }) => ratio)),
    callMs: median(rounds.map(({ callMs }) => callMs)),
  };
}

const shown = (ratio) => (ratio < 10 ? ratio.toFixed(2) : Math.round(ratio).toString());
const print = (ratio, name, more = '') =>
  console.log(`${shown(ratio).padStart(9)}  ${name}${more}`);

const functions = Object.entries(vitrose)
  .filter(([name, held]) => typeof held === 'function' && name !== 'ModelRangeError')
  .map(([name]) => name);
console.log('One call, as a multiple of one waterVapourPressure call');
const costs = functions
  .filter((name) => name in calls)
  .map((name) => ({ name, ...costOf(calls[name]) }));
for (const { name, ratio } of costs.sort((a, b) => b.ratio - a.ratio)) print(ratio, name);

console.log('\nThe examples: reading, planning, describing');
const folder = new URL('../../examples/batches/', import.meta.url);
const plannedMs = [];
for (const file of readdirSync(folder).sort()) {
  const text = readFileSync(new URL(file, folder), 'utf8');
  const { batch } = readBatch(text);
  const { plan } = vitrose.planBatch(batch);
  const read = costOf(() => readBatch(text));
  const planned = costOf(() => vitrose.planBatch(batch));
  const described = costOf(() => describePlan(plan));
  plannedMs.push(planned.callMs);
  print(read.ratio, `readBatch     ${file}`);
  print(planned.ratio, `planBatch     ${file}`, `, ${planned.callMs.toFixed(2)} ms here`);
  print(described.ratio, `describePlan  ${file}`);
}
console.log(
  `\nplanBatch, median of the examples: ${median(plannedMs).toFixed(2)} ms on this machine.`,
);

const missing = functions.filter((name) => !(name in calls));
if (missing.length > 0) {
  console.error(`\nNo sample call for ${missing.join(', ')}: add one to sample-calls.mjs.`);
  process.exitCode = 1;
}
if (sink === undefined) process.exitCode = 1;
