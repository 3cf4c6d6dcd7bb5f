// One sweet, two labels: by the rules of the United States and of the European Union.
//
//   node examples/programs/two-labels.mjs

import { evaporateTo, mixture, nutrition, roundForLabel } from 'vitrose';
import { describeLabel } from 'vitrose/words';

const sweet = evaporateTo(
  mixture([
    { ingredient: 'isomalt-dry', massG: 880 },
    { ingredient: 'xylitol', massG: 100 },
    { ingredient: 'citric-acid', massG: 10 },
    { ingredient: 'water', massG: 200 },
  ]),
  { drySolidsMassFraction: 0.99 },
);

for (const rules of ['us', 'eu']) {
  const label = nutrition(sweet, { rules, pieceG: 4 });
  const { energyKcal, energyKJ, carbohydrateG, sugarsG, polyolsG } = label.per100G;
  console.log(`${rules.toUpperCase()}, 100 g`);
  console.log(`  ${energyKcal.toFixed(0)} kcal, ${energyKJ.toFixed(0)} kJ`);
  console.log(
    `  carbohydrate ${carbohydrateG.toFixed(1)} g, sugars ${sugarsG.toFixed(1)} g, sugar alcohols ${polyolsG.toFixed(1)} g`,
  );
  const { kind, value } = roundForLabel(energyKcal, 'energyKcal', rules);
  console.log(`  printed energy: ${kind === 'less-than' ? 'less than ' : ''}${value} kcal`);
  const { statements, claims, note } = describeLabel(label);
  for (const line of [...statements, ...claims, note]) console.log(`  ${line}`);
}
console.log('Xylitol can kill a dog: write it on the jar.');
