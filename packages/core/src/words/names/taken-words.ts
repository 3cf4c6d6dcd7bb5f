import type { Catalogue } from '../types.js';

/**
 * What the plan took where the batch says nothing, without its full stop. `{value}` is what was
 * taken, `{range}` the same with its low and high end, `{lines}` are names of ingredients.
 */
export const TAKEN_WORDS = {
  'cook/aim': 'Of the stage, the {value} is meant',
  'cook/underVacuumPa': 'No vacuum: the pan is open',
  'formula/*/dextroseEquivalent': 'Dextrose equivalent (DE) of {lines}: {range}',
  'formula/*/drySolidsMassFraction': 'Water in {lines}: {water}',
  'formula/*/measure/form': 'Spoons and cups of {lines}: {value}',
  'formula/*/when': 'In the pan from the {value}: {lines}',
  'handling/stirredAfterBoil': 'Nobody stirs after the boil',
  hob: 'Your hob boils half a litre of cold water in four minutes; others take two to eight',
  kitchen: 'The air is what your reading in boiling water makes of it',
  'kitchen/elevationM': 'Your kitchen lies at sea level',
  'kitchen/seaLevelPressurePa': 'An ordinary day: {value} at sea level',
  'mould/kind': 'The mould is of {value}',
  'mould/maxC': 'What you pour into bears {heat} | What you pour into bears any heat of a boil',
  'pieces/breakFraction': 'Broken pieces: {range}',
  'pieces/lossFraction':
    'Left on the pan: a film, {film} for each litre it holds | Left on pan and tools: {range}',
  'pieces/massG': 'A full cavity gives a piece of {range}',
  'room/temperatureC': 'Your room is at {range}',
  'store/forDays': 'To be kept for {range}',
  'store/relativeHumidity': 'The store is as damp as your room: {value}',
  'store/temperatureC': 'The store is as warm as your room: {value}',
  'thermometer/boilingWaterReadingC': 'Your thermometer is right',
  'thermometer/kind': 'Your thermometer is a {value}',
  'wrap/sealFactor': 'For its seals the film lets through more, times {range}',
  wrap: 'No wrapper is counted on',
} as const satisfies Catalogue['taken'];

/** Fields nobody gave, said in brackets behind their place; others go by their usual name. */
export const NOT_GIVEN_WORDS = {
  conversion: 'how its starch was cut',
  count: 'how many',
  emptyMassG: 'mass when empty',
} as const satisfies Catalogue['notGiven'];
