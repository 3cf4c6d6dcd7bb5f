import type { Catalogue } from '../types.js';

/** What the hand does in each step. `{lines}` are the things handled, `{stop}` and `{window}` the stop. */
export const STEP_WORDS = {
  weigh: ['Weigh {lines}.', 'Keep apart what goes in late: {late}.'],
  'weigh-empty-pan': [
    'Weigh the pan empty, with spoon and probe: {emptyMassG}. | Weigh the pan empty, with spoon and probe, and write it down.',
  ],
  'make-syrup': ['Stir {lines} to a smooth syrup in the pan; the rest joins it.'],
  dissolve: ['Warm {lines} gently and stir until no grain is left.'],
  'wash-walls': [
    'Put the lid on for two or three minutes, so that steam washes the wall of the pan.',
  ],
  boil: [
    'Take the lid off and boil; it starts at about {firstBoilC}. | Take the lid off and boil.',
    'From here on, do not stir.',
  ],
  'add-hot': ['At about {atC}, put in {lines}. | Put in {lines}.'],
  'turn-down': [
    'At {readingC} on your thermometer turn the heat down to about {flame}: the last degrees come fast.',
  ],
  stop: [
    'Stop at {stop} on your thermometer, between {window}. Heat off.',
    'That is about {atMin} after the cold pan goes on.',
    'Your thermometer is still about {lagK} behind by then: stop that much earlier.',
    'The base of the pan gives another {carryOverK} or so: allow for that, or stand the pan on cold dry metal.',
    'In cold water a drop shows {coldWater}.',
  ],
  'weigh-pan': [
    'Weigh the pan: {grossAtStopG} with everything, {weighsAtStopG} of it the mass. | Weigh what is in the pan: {weighsAtStopG}.',
    'Heavier means more water is left.',
  ],
  rest: ['Let it stand until it is clear, about {minutes} minutes, and down to {belowC}.'],
  colour: ['Stir in {lines}, at {belowC} or below.'],
  flavour: ['Flame out. Stir in {lines}, at {belowC} or below.'],
  acid: ['Last, stir in {lines}, between {lowC} and {highC}, within a minute.'],
  'other-late': ['Stir in {lines}, at {belowC} or below.'],
  pour: ['Pour at once, between {lowC} and {highC}.'],
  score: [
    'After about {minutes} minutes, when the skin is firm, mark the sheet into pieces with an oiled knife.',
  ],
  set: [
    'Let it set in the room, never in the fridge: damp makes it sticky.',
    'Turn out at {demouldBelowC} or below.',
    'Your room, at {warmRoomC}, is warmer than that.',
  ],
  wrap: [
    'Wrap within {withinMin} of turning out, at {wrapBelowC} or below. | Wrap within half an hour of turning out.',
    'Your room, at {warmRoomC}, is warmer than that.',
  ],
  store: ['Keep them closed and dry, at about {storeC}.'],
  give: ['Tell whoever eats them what is in them.'],
} as const satisfies Catalogue['steps'];
