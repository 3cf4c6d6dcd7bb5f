// How much of a sweetener brings a sweet of isomalt up to sugar, and where that is no answer.
//
//   node examples/programs/booster-to-parity.mjs

import { boosterForSweetness, isNone, mixture, relativeSweetness } from 'vitrose';

const isomalt = mixture([{ ingredient: 'isomalt-dry', massG: 1_000 }]);
const { relativeSweetness: now } = relativeSweetness(isomalt);
console.log(`Isomalt is about ${now.toFixed(2)} times as sweet as sugar.`);

for (const sweetener of ['acesulfame-k', 'sucralose', 'xylitol']) {
  const booster = boosterForSweetness(isomalt, { sweetener, targetRelativeSweetness: 1 });
  if (isNone(booster)) {
    console.log(`${sweetener}: ${booster.reason}`);
    continue;
  }
  const [low, high] = booster.band.map((fraction) => (100 * fraction).toFixed(3));
  const cap = booster.aboveLegalCap === true ? ', more than the EU allows' : '';
  console.log(
    `${sweetener}: ${(100 * booster.massFraction).toFixed(3)} % of the sweet (${low} to ${high})${cap}`,
  );
}
// Sucralose and aspartame break down in a mass this hot.
const hot = boosterForSweetness(isomalt, {
  sweetener: 'sucralose',
  targetRelativeSweetness: 1,
  addedAtC: 140,
});
console.log(`sucralose into a mass at 140 °C: ${isNone(hot) ? hot.reason : 'possible'}`);
