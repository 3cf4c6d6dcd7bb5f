import type { Catalogue } from '../types.js';

/** Every stage and every gap: each has a sentence and a use, because a good target is never a miss. */
export const STAGE_WORDS = {
  'too-thin': {
    name: 'syrup',
    sentence: 'Still a syrup, thinner than thread.',
    use: 'Syrups to soak, glaze and preserve with.',
    coldWater: 'it dissolves',
  },
  thread: {
    sentence: 'Thread: it pulls a thread of about {thread} from the spoon.',
    use: 'Syrups, preserves, glazed fruit.',
    coldWater: 'a cloud or a soft thread that will not gather',
  },
  'soft-ball': {
    sentence: 'Soft ball: out of the water it flattens at once between the fingers.',
    use: 'Fondant, fudge, pralines.',
    coldWater: 'it gathers to a soft ball',
  },
  'between-soft-ball-and-firm-ball': {
    name: 'late soft ball',
    sentence: 'Late soft ball: out of the water it holds a moment, then flattens.',
    use: 'Firm fudge and fondant.',
    coldWater: 'a soft ball that holds a moment',
  },
  'firm-ball': {
    sentence: 'Firm ball: it keeps its shape and gives under a light press.',
    use: 'Soft caramels.',
    coldWater: 'a firm ball',
  },
  'between-firm-ball-and-hard-ball': {
    name: 'late firm ball',
    sentence: 'Late firm ball: it hardly gives under a press.',
    use: 'Firm caramels.',
    coldWater: 'a firm ball that hardly gives',
  },
  'hard-ball': {
    sentence: 'Hard ball: it keeps its shape under a press and can still be bent.',
    use: 'Nougat, marshmallow syrup, taffy to pull.',
    coldWater: 'a hard ball, still plastic',
  },
  'between-hard-ball-and-soft-crack': {
    name: 'early soft crack',
    sentence: 'Early soft crack: it draws into threads that bend.',
    use: 'Chewy taffy, firm nougat.',
    coldWater: 'threads that bend',
  },
  'soft-crack': {
    sentence: 'Soft crack: hard but elastic, and it sticks to the teeth.',
    use: 'Butterscotch, taffy, some toffees.',
    coldWater: 'threads that bend before they break',
  },
  'between-soft-crack-and-hard-crack': {
    name: 'early hard crack',
    sentence:
      'Early hard crack, where most boiled drops are stopped ({earlyHardCrack} at sea level).',
    use: 'Boiled drops, lollipops.',
    coldWater: 'threads that snap',
  },
  'hard-crack': {
    sentence: 'Hard crack: it snaps clean and does not stick to the teeth.',
    use: 'Boiled drops, lollipops, brittle, pulled sugar.',
    coldWater: 'threads that snap so you can hear it',
  },
  'between-hard-crack-and-clear-liquid': {
    name: 'late hard crack',
    sentence: 'Late hard crack: it snaps like glass, and little water is left.',
    use: 'Pulled and cast sugar.',
    coldWater: 'threads that snap so you can hear it',
  },
  dry: {
    sentence: 'Dry: no water is left to boil, so it is a melt and not a boil.',
    use: 'Cast work.',
    coldWater: 'hard, clear threads',
  },
  'clear-liquid': {
    sentence: 'Clear liquid: almost no water is left to boil.',
    use: 'Cast sugar; the start of caramel.',
    coldWater: 'hard, clear threads',
  },
  'between-clear-liquid-and-brown-liquid': {
    name: 'first colour',
    sentence: 'First colour: straw, then pale amber.',
    use: 'Pale caramel.',
    coldWater: 'hard, straw-coloured threads',
  },
  'brown-liquid': {
    sentence: 'Brown liquid: amber, and darker by the minute.',
    use: 'Caramel for sauces and custards.',
    coldWater: 'hard, amber threads',
  },
  burnt: {
    name: 'past caramel',
    sentence: 'Past caramel: dark, then bitter, then black.',
    use: 'Colouring; no sweet is meant to be here.',
    coldWater: 'hard, dark and bitter',
  },
} as const satisfies Catalogue['stages'];
