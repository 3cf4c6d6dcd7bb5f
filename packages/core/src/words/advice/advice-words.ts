import type { Catalogue } from '../types.js';

/** What is said about each advice: a title that stands alone, then sentences with the numbers. */
export const ADVICE_WORDS = {
  'pan-too-full': {
    title: 'The pan is too full',
    text: [
      'The batch fills {filledFraction} of it, and boiling syrup climbs: a third is the most.',
      'A pan of {neededCapacityMl} would do.',
    ],
  },
  'probe-not-covered': {
    title: 'The probe is not covered',
    titles: { note: 'The probe is nearly covered' },
    text: [
      'The mass stands {depthMm} deep at the stop; the probe needs {neededMm}.',
      'Tilting the pan by its handle gathers the mass around it, but not enough.',
      'A pan {narrowerDiameterMm} wide would do.',
    ],
    texts: {
      note: [
        'The mass stands {depthMm} deep at the stop; the probe needs {neededMm}.',
        'Tilt the pan a little, by its handle, while you read.',
        'In a pan {narrowerDiameterMm} wide you need not.',
      ],
    },
  },
  'target-above-thermometer': {
    title: 'The stop is past the end of your thermometer',
    text: [
      'It has to show {readingC}, and its scale ends at {maxC}.',
      'One that goes to {neededMaxC} will do.',
    ],
  },
  'reading-and-altitude-differ': {
    title: 'Your reading and your altitude do not agree',
    text: [
      'At your altitude water boils at {waterBoilsAtC}; your thermometer shows {boilingWaterReadingC}.',
      'The difference is {differenceK}, thermometer and weather together.',
    ],
  },
  'stage-names-do-not-apply': {
    title: 'Stage names are made for sugar',
    text: [
      'Sugar and {glucoseSyrup} are {sugarAndSyrupShare} of the solids here, sugar alcohols {polyolShare}.',
      'Here {stage} does not mean what it means in a sugar boil.',
      'Stopped there, it stays hard up to about {glassTransitionC}.',
    ],
  },
  'altitude-would-help': {
    title: 'Your altitude would help',
    text: [
      'Your thermometer shows {boilingWaterReadingC} in boiling water. Is it height or the thermometer? The stop moves by up to {causeMattersK} between the two.',
    ],
  },
  'too-soft-for-the-store': {
    title: 'It may soften where you keep it',
    titles: {
      'will-fail': 'It will not stay hard where you keep it',
      note: 'Not much in reserve for a hot day',
    },
    text: [
      'It stays hard up to about {glassTransitionC}, its glass point; you keep it at {storeC}.',
      'The estimate runs from {lowC} to {highC}.',
    ],
  },
  'no-doctor': {
    title: 'Little keeps it from graining',
    text: [
      'The doctor (what keeps it from graining) is {doctorShare} of the solids; {wantedShare} is what it wants.',
    ],
  },
  'dextrose-not-syrup': {
    title: 'Dextrose is not {glucoseSyrup}',
    text: [
      'Dextrose is {dextroseShare} of the solids, and the {sweet} softens in a warm room.',
      'Does the label say {glucoseSyrup}? Then change the line.',
    ],
  },
  'beyond-the-knee': {
    title: 'Hotter buys little here',
    text: [
      'Past {kneeReadingC} every {10K} more buy only {gainPer10K} of hardness.',
      'Less xylitol buys more.',
    ],
  },
  'late-water': {
    title: 'Water goes in after the boil',
    text: [
      '{lateWaterG} of it comes with what goes in late: up to {moistureRisePoints} points more water in the {sweet}.',
      'Some of it flashes off; the plan counts all of it.',
    ],
  },
  'too-little-water-to-dissolve': {
    title: 'Too little water to dissolve it all',
    text: [
      'There is {waterG}; it wants {neededWaterG}.',
      'As it is, the last grain goes at {dissolvedAtC}, and the boil starts at {firstBoilC}.',
    ],
  },
  'moulds-short': {
    title: 'Not enough cavities for one pour',
    text: [
      '{pieces} pieces and {cavities} cavities make {fills} fills, and the mass stiffens meanwhile.',
    ],
  },
  'pieces-short': {
    title: 'Fewer pieces than you wished for',
    text: ['It makes {pieces}; you wished for {wished}.'],
  },
  'target-above-mould': {
    title: 'Too hot for the mould',
    text: ['It is poured at {pourC}; the mould bears {mouldMaxC}.'],
  },
  'sticky-room': {
    title: 'The {place} makes bare {sweets} sticky | The room makes bare {sweets} sticky',
    text: [
      'It is at {relativeHumidity} humidity; from {limitRelativeHumidity} on bare {sweets} take up water. Wrap within half an hour.',
    ],
  },
  'much-acid': {
    title: 'That is a lot of acid',
    text: [
      'It is {acidShare} of the {sweet}; above {limitShare} it makes the mouth sore and draws water.',
    ],
  },
  'weigh-this-one': {
    title: 'Weigh the {ingredient}',
    text: ['As measured it can be anything from {lowG} to {highG}; the plan takes {massG}.'],
  },
  'heat-spoils-sweetener': {
    title: '{ingredient} does not stand this heat',
    text: ['It goes in at {additionC} and breaks down from {maxAdditionC}.'],
  },
  'never-boils': {
    title: 'This hob never gets there',
    text: ['Before the stop the pan loses as much heat to the room as the hob gives it.'],
  },
  'reading-lags': {
    title: 'Your thermometer is slow for this flame',
    text: [
      'At full heat it climbs {rateKPerMin} at the stop, and the reading is {lagK} behind.',
      'Turned down it is {lagTurnedDownK}.',
    ],
  },
  'acid-too-early': {
    title: 'Acid in the boil softens it',
    text: [
      'About {invertedFraction} of the sucrose splits into invert sugar before the stop: the mass yellows, and the {sweet} softens {costsK} lower.',
      'Acid goes in last, off the heat.',
    ],
  },
  'much-water': {
    title: 'More water than the sugar needs',
    text: [
      'There is {waterG} of water; {neededWaterG} dissolves the sugar.',
      'Boiling the rest away takes about {longerMin}.',
    ],
  },
  'may-grain': {
    title: 'It may grain',
    titles: { 'may-disappoint': 'It is near certain to grain' },
    text: [
      'That would be {where}.',
      'The doctor (what keeps it from graining) is {doctorShare} of the solids.',
      'An estimate: the time is good to a factor of ten.',
    ],
  },
  'less-sweet-than-sugar': {
    title: 'Less sweet than sugar',
    text: [
      'About {sweetness} times as sweet as sugar.',
      'If you want more, start with half the strong sweetener you reckon it needs, and taste; limits are local.',
    ],
  },
  'sugar-burns': {
    title: 'Sugar burns up there',
    text: ['The stop is {readingC}; from {limitC} sugar browns fast and turns bitter.'],
  },
} as const satisfies Catalogue['advice'];

/** How bad it is, in a few words. */
export const SEVERITY_WORDS = {
  danger: 'Danger',
  'will-fail': 'Will not work',
  'may-disappoint': 'May disappoint',
  note: 'Worth knowing',
} as const satisfies Catalogue['severities'];
