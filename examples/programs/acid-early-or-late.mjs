// The same drops twice: citric acid at the first boil, and stirred in last.
//
//   node examples/programs/acid-early-or-late.mjs

import { acidTime, applyChanges, planBatch } from 'vitrose';
import { comparePlans } from 'vitrose/words';

const early = {
  format: 'vitrose.batch/1',
  name: 'Harbour lemon drops, hurried',
  formula: [
    { ingredient: 'sucrose', massG: 232 },
    { ingredient: 'dried-glucose-syrup', dextroseEquivalent: 42, massG: 155 },
    { ingredient: 'water', massG: 116 },
    { ingredient: 'citric-acid', massG: 4, when: 'first-boil' },
  ],
  cook: { toSeaLevelC: 148 },
  hob: { kind: 'induction', powerW: 1_200 },
};

const changed = acidTime(early, 'off-heat');
if (changed.kind === 'none') throw new Error(changed.reason);
const [hurried, patient] = [early, applyChanges(early, changed.changes)].map((batch) => {
  const result = planBatch(batch);
  if (result.kind === 'refused') throw new Error(result.problems.map(({ code }) => code).join());
  return result.plan;
});

console.log('acid at the first boil | acid last');
for (const { label, here, there, differs } of comparePlans(hurried, patient)) {
  if (differs) console.log(`${label}: ${here} | ${there}`);
}
for (const { code, severity } of hurried.advice) console.log(`hurried: ${severity}, ${code}`);
