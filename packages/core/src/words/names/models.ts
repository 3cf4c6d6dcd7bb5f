import type { Catalogue } from '../types.js';

/** The models a plan can rest on, as a reader would ask for them. */
export const MODEL_NAMES = {
  given: 'Given by you',
  'mass-balance': 'Weighing up what goes in and out',
  measures: 'Spoons and cups',
  water: 'Boiling of water',
  'standard-atmosphere': 'Air pressure by altitude',
  'station-pressure': 'Air pressure from the weather service',
  boiling: 'Boiling of the syrup',
  'same-solids': 'The same strength at another pressure',
  stages: 'Sugar stages',
  thermometer: 'Your thermometer',
  density: 'Volume and depth',
  'pan-film': 'What stays on the pan',
  glass: 'How warm it stays hard (glass point)',
  sweetness: 'Sweetness beside sugar',
  'polyol-guide': 'Sugar alcohols in one sitting',
  heat: 'Heat and minutes',
  browning: 'What the heat does to the colour',
  inversion: 'What acid does to the sugar',
  sourness: 'How sour it is',
  moisture: 'What the air does to it',
  'wrap-life': 'How long the wrap holds',
  graining: 'Graining',
} as const satisfies Catalogue['models'];

/** How the air pressure at the pan is known. */
export const KITCHEN_FROM = {
  elevation: 'from your altitude, on a standard day',
  barometer: 'from your barometer',
  'weather-service': 'from the weather service and your altitude',
  'trusted-thermometer': 'from your second thermometer',
  'boiling-water-reading': 'from your reading in boiling water',
  'sea-level': 'taken as sea level, because nothing else is given',
} as const satisfies Catalogue['kitchenFrom'];

/** What ends the window of good readings. */
export const WINDOW_ENDS = {
  water: 'the water left changes by too much',
  glass: 'it would soften in the store',
  'sugar-limit': 'sugar starts to burn',
  knee: 'hotter buys little hardness',
  stage: 'another stage begins',
} as const satisfies Catalogue['windowEnds'];
