// A recipe wants a syrup of DE 28 with 78 % solids; the shelf has dried syrup of DE 42 and
// maltodextrin of DE 10.
//
//   node examples/programs/two-syrups-make-a-third.mjs

import { blendTwoSyrups, isNone, mixSyrups } from 'vitrose';

const dried = { drySolidsMassFraction: 0.96, dextroseEquivalent: 42 };
const maltodextrin = { drySolidsMassFraction: 0.95, dextroseEquivalent: 10 };
const grams = (number) => `${number.toFixed(1)} g`;

for (const wantedDE of [28, 50]) {
  const target = { massG: 1_000, drySolidsMassFraction: 0.78, dextroseEquivalent: wantedDE };
  const blend = blendTwoSyrups({ a: dried, b: maltodextrin, target });
  console.log(`1 kg of syrup with 78 % solids and DE ${wantedDE}`);
  // No blend of the two gets past the sweeter one: that is an answer, not a fault.
  if (isNone(blend)) {
    console.log(`  cannot be made of these two: ${blend.reason}`);
    continue;
  }
  console.log(`  dried syrup, DE 42   ${grams(blend.aG)}`);
  console.log(`  maltodextrin, DE 10  ${grams(blend.bG)}`);
  console.log(`  water                ${grams(blend.waterG)}`);
  // The two mixed back, and the water stirred in: what was wanted?
  const mixed = mixSyrups([
    { ...dried, massG: blend.aG },
    { ...maltodextrin, massG: blend.bG },
  ]);
  const solids = (mixed.massG * mixed.drySolidsMassFraction) / (mixed.massG + blend.waterG);
  console.log(
    `  mixed back: DE ${mixed.dextroseEquivalent.toFixed(2)}, ${(100 * solids).toFixed(2)} % solids`,
  );
}
