// biome-ignore-all format: one sentence a line, and what belongs to a caution under it
import type { Catalogue } from '../types.js';

/** Every caution, in the words a cook reads. */
export const CAUTION_WORDS = {
  'hot-sugar': {
    title: 'Hot sugar sticks and goes on burning',
    text: [
      'It is at {110C} to {170C}, isomalt hotter still; at {60C} skin is burnt through in about five seconds.',
      'Closed shoes, long sleeves, dry gloves, a bowl of cold water ready; no children or pets underfoot.',
      'Never taste it. Touch only what has lain in cold water.',
    ],
    moments: ['hot', 'pouring'], grade: 'secondary',
  },
  'burn-first-aid': {
    title: 'A burn: cool running water for 20 minutes',
    text: [
      'It helps up to three hours later. No ice, butter or cream.',
      'Take off clothing and jewellery unless they stick. Let set sugar soak off; do not pull.',
      'Cover it loosely with {clingFilm}, never on the face. Keep the person warm.',
      "Get help if it is larger than the hurt person's palm, on face or hands, or on a child.",
    ],
    defer: 'In doubt call your emergency number; local first-aid advice comes first.',
    moments: ['hot', 'pouring'], grade: 'primary', source: 'qvh-burns-first-aid',
  },
  'never-water-on-hot-mass': {
    title: 'Never pour water on hot sugar',
    text: [
      'Not even to save a batch: a teaspoon makes about 8 litres of steam, 1.7 for each gram, and throws the sugar out.',
      'Let it set or cool below {100C}, break it, and put the pieces into hot water.',
    ],
    moments: ['hot', 'pouring'], grade: 'practice',
  },
  'late-liquids': {
    title: 'Wet things go in small, warm and off the heat',
    text: ['Wait until the boil has died down; it rises and spits. Face and arms back.'],
    moments: ['pouring'], grade: 'practice',
  },
  'alcohol-flavour': {
    title: 'Alcohol in a flavour can catch fire',
    text: [
      'Its vapour catches from about {17C} pure, {26C} at 40 % by volume.',
      'Flame out, no open burner near, mass at {125C} or below, face back.',
    ],
    moments: ['pouring'], grade: 'secondary',
  },
  'glycol-flavour-vapour': {
    title: 'Do not breathe the vapour of strong kitchen flavours',
    text: [
      'Most sold by the dram are in propylene glycol, whose vapour can catch from about {101C}.',
      'Flame out, mass at {125C} or below, face back.',
    ],
    moments: ['pouring'], grade: 'memory',
  },
  'strong-oils': {
    title: 'Weigh strong oils; lock the bottles away',
    text: [
      'Food grade only, in grams for each kilogram of {sweets}, never in drops or spoons.',
      'A teaspoon of wintergreen or eucalyptus oil can poison a child, less of camphor: no camphor in {sweets} at all. Cinnamon oil swallowed neat has poisoned a child.',
      'Strong cinnamon, clove and menthol hurt skin, mouth, eyes and airways. Menthol stays under about 0.04 %.',
      'What a body bears in a day for each of its kilograms: 4 mg of menthol, 2.5 mg of the eugenol in clove, 0.1 mg of the coumarin in cassia.',
      'The vapour of many oils catches from {48C} to {60C}: flame out, mass at {125C} or below, face back.',
    ],
    defer: 'Swallowed? Phone a poison line at once. Limits are set by local food law.',
    moments: ['weighing', 'pouring'], grade: 'memory',
  },
  'acid-powder': {
    title: 'Acid powder burns eyes and lungs',
    text: ['Raise no dust; close the jar.'],
    moments: ['weighing', 'pouring'], grade: 'practice',
  },
  'sour-teeth': {
    title: 'Sour {sweets} etch teeth',
    text: ['Above about 2 % acid they make the mouth sore as well.'],
    moments: ['giving'], grade: 'practice',
  },
  'above-165': {
    title: 'Above {165C} burns go deeper and things melt',
    text: [
      'No moulds of glass, polycarbonate or plastic marked 150 °C; silicone bears {200C} to {230C}, read the mark.',
      'Many probes end between {150C} and {232C}.',
      'Rest the mass to {150C} or less before pouring, to {125C} or less before any flavour.',
      'Smoke means stop: heat off, lid on, no water.',
    ],
    moments: ['hot', 'pouring'], grade: 'practice',
  },
  'no-glass-thermometer': {
    title: 'No glass thermometer in the pan',
    text: ['The shock can break it, and shards, in old ones mercury, end up in the sugar.'],
    moments: ['hot'], grade: 'practice',
  },
  'weighing-hot-pan': {
    title: 'Weigh the hot pan with two hands',
    text: [
      'Scale beside the hob, on a dry heat-proof mat; pan, spoon and probe weighed before.',
      'Never a full or wide pan, no children near. Or weigh what you have poured.',
    ],
    moments: ['hot'], grade: 'practice',
  },
  'pan-a-third-full': {
    title: 'Fill the pan a third at most',
    text: ['Boiling syrup climbs, more so with milk, soda or wet colour.'],
    moments: ['weighing', 'hot'], grade: 'practice',
  },
  'vacuum-vessels': {
    title: 'Vacuum only in a vessel built for it',
    text: ['Never improvise one: it can give way with hot sugar inside.'],
    moments: ['hot'], grade: 'practice',
  },
  'mould-heat': {
    title: 'Pour no hotter than the mould bears',
    text: [
      'This one bears {mouldMaxC}.',
      'No flame over silicone, plastic, paper or fresh flavour. A cold stone slab can crack and a wet one spits: warm and dry it.',
    ],
    moments: ['buying', 'pouring'], grade: 'practice',
  },
  unattended: {
    title: 'Stay with the pan',
    text: ['Sugar left alone smokes, then burns. Then: heat off, lid on, never water.'],
    moments: ['hot'], grade: 'practice',
  },
  'dogs-xylitol': {
    title: 'Xylitol (birch sugar) can kill a dog',
    text: [
      'Over 0.1 g for each kilogram of dog can crash its blood sugar in 30 to 60 minutes; over 0.5 g may destroy the liver. Take 0.075 g as the line.',
      'One {sweet} of 3 g made of xylitol reaches 0.1 g in a dog of {29Kg}.',
      'Here {xylitolMassFraction} of the {sweet} is xylitol.',
      'Keep it from ferrets and all other animals too. Label the jar, out of reach.',
    ],
    defer:
      'If an animal has eaten any, phone a vet or an animal poison line at once; do not wait for signs.',
    moments: ['buying', 'weighing', 'giving', 'storing'], grade: 'primary', source: 'gwaltney-brant-xylitol',
  },
  choking: {
    title: 'Not for children under 4',
    text: [
      '{boiledSweets} can choke a child; some advice says none under 5. Sit while eating. Balls are the worst shape.',
    ],
    defer: 'Follow the advice for children where you live.',
    moments: ['giving'], grade: 'secondary', source: 'aap-choking-2010',
  },
  laxative: {
    title: 'Sugar alcohols can upset the gut',
    text: [
      'Some people feel 10 to 20 g in a day. A guide for one sitting is 0.3 g of isomalt, maltitol or xylitol for each kilogram of body weight, half that of sorbitol or mannitol.',
      'At {60Kg} that is 18 g, four or five {sweets} of 4 g.',
      'Above 10 % added, European labels must warn of it.',
    ],
    defer: 'Label law is local. Ask a physician where it matters.',
    moments: ['giving'], grade: 'secondary', source: 'eu-1169-2011-annex-3',
  },
  'polyol-child': {
    title: 'A child has enough much sooner',
    text: [
      'The guide goes by body weight: a child of {20Kg} is there at a third of what a grown-up of {60Kg} bears.',
      'One piece is {childShare} of the guide for such a child.',
    ],
    defer: 'Ask a physician where it matters.',
    moments: ['giving'], grade: 'derived',
  },
  'fructose-intolerance': {
    title: 'Not with inborn fructose intolerance',
    text: [
      "Sugar, fructose, invert, honey, sorbitol, maltitol and isomalt are all out: 'sugar-free' can be dangerous here.",
    ],
    defer: "The person's physician decides.",
    moments: ['giving'], grade: 'secondary', source: 'singh-sen-sarma-2022',
  },
  phenylalanine: {
    title: 'Aspartame is a source of phenylalanine',
    text: ['It is barred to people with phenylketonuria, and European labels must say so.'],
    defer: "Label law is local. The person's physician decides.",
    moments: ['giving'], grade: 'secondary', source: 'eu-1169-2011-annex-3',
  },
  'sweetener-heat': {
    title: 'Sucralose and aspartame do not stand the heat',
    text: [
      'Sucralose breaks down from {120C}, and chlorinated compounds may form; this is disputed. Aspartame loses its sweetness.',
      'Add them only to a mass at {120C} or below. Isomalt is poured hotter: take acesulfame-K there.',
    ],
    moments: ['hot', 'pouring'], grade: 'secondary', source: 'bfr-sucralose-2019',
  },
  'sweetener-daily-limits': {
    title: 'Strong sweeteners have a limit for the day',
    text: [
      'In mg for each kilogram of body weight, in the European Union: aspartame 40, sucralose 15, acesulfame-K 9, cyclamate 7, saccharin 5, neohesperidine 5, advantame 5, steviol 4, neotame 2.',
      'The United States take 50 for aspartame, 15 for acesulfame-K and saccharin, 5 for sucralose. Erythritol: 0.5 g.',
      'A child of {20Kg} reaches each at a third of what a grown-up of {60Kg} may have. Weigh on a fine scale.',
    ],
    defer: 'Limits differ by country and are revised: look up those in force.',
    moments: ['buying', 'weighing', 'giving'], grade: 'secondary', source: 'ec-sweeteners-2021',
  },
  'honey-under-one': {
    title: 'No honey under one year',
    text: ['Cooked or not: its spores stand boiling and can cause infant botulism.'],
    defer: 'Ask your child clinic.',
    moments: ['giving'], grade: 'secondary', source: 'inspq-tiny-tot',
  },
  allergens: {
    title: 'Say what is in it',
    text: [
      'Name nuts, peanut, milk, egg, soya, wheat-based syrup, sulphites and the source of gelatine. Who eats it decides.',
    ],
    defer: 'Follow local food law.',
    moments: ['buying', 'giving'], grade: 'practice',
  },
  'limits-are-local': {
    title: 'Colours, sweeteners and acids have legal limits',
    text: [
      'They differ by country and year.',
      'In the European Union E102, E104, E110, E122, E124 and E129 need a warning about children, and E171 is barred; cyclamate is barred in the United States.',
    ],
    defer: 'Look up the food law where you give or sell.',
    moments: ['buying'], grade: 'memory',
  },
  'not-for-illness': {
    title: 'Information, not medical advice',
    text: [
      "'Sugar-free' is neither free of carbohydrate nor of energy, and no figure here is about an illness.",
    ],
    defer: 'Ask a physician or a dietitian.',
    moments: ['giving'], grade: 'practice',
  },
  'acid-in-isomalt': {
    title: 'Acid in hot isomalt frees sugar',
    text: [
      "More than 0.5 g of sugars in 100 g can form, and 'sugar-free' is no longer true. Acid goes in last; a claim needs an analysis.",
    ],
    defer: 'Claims are set by local food law.',
    moments: ['pouring', 'giving'], grade: 'derived',
  },
  'bicarbonate-foams': {
    title: '{bakingSoda} foams at once',
    text: ['Off the heat, pan a third full at most, face and arms back.'],
    moments: ['pouring'], grade: 'practice',
  },
} as const satisfies Catalogue['cautions'];
