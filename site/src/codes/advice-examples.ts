import type { AdviceCode, BatchDocument } from 'vitrose';
import { BASE_BATCH, POLYOL_BATCH } from './base-batch.js';

/** Why an advice is given, and a batch that raises it. */
export type AdviceExample = { readonly why: string; readonly batch: BatchDocument };

const base = BASE_BATCH;
const with_ = (more: Partial<BatchDocument>): BatchDocument => ({ ...base, ...more });
const andLine = (...lines: BatchDocument['formula']): BatchDocument => ({
  ...base,
  formula: [...base.formula, ...lines],
});

/** Every advice with the batch its page shows; each is planned when the page is built. */
export const ADVICE_EXAMPLES: Readonly<Record<AdviceCode, AdviceExample>> = {
  'pan-too-full': {
    why: 'Boiling syrup foams to three times its height and more.',
    batch: with_({ pan: { capacityMl: 800 } }),
  },
  'probe-not-covered': {
    why: 'A bare probe reads steam and pan instead of the mass, and reads them low.',
    batch: with_({ pan: { diameterMm: 220 }, thermometer: { kind: 'probe' } }),
  },
  'target-above-thermometer': {
    why: 'A needle at the end of its scale says nothing.',
    batch: with_({ thermometer: { maxC: 140 } }),
  },
  'reading-and-altitude-differ': {
    why: 'Weather moves the boil of water by half a degree or so. More than that is the thermometer, or the altitude.',
    batch: with_({ kitchen: { elevationM: 1_500 }, thermometer: { boilingWaterReadingC: 97.5 } }),
  },
  'stage-names-do-not-apply': {
    why: 'The names were given to cooled sucrose. Other masses at the same water are softer by tens of degrees.',
    batch: {
      ...POLYOL_BATCH,
      cook: { toStage: 'hard-crack', aim: 'high' },
      store: { temperatureC: 15 },
    },
  },
  'altitude-would-help': {
    why: 'A low reading may be a mountain or a bad thermometer, and the two ask for different stops.',
    batch: with_({ thermometer: { boilingWaterReadingC: 90 } }),
  },
  'too-soft-for-the-store': {
    why: 'A boiled sweet is a glass only below its glass point. Near it, the sweet sags and sticks.',
    batch: with_({ cook: { toStage: 'soft-crack' } }),
  },
  'no-doctor': {
    why: 'Sucrose alone crystallises as soon as it is stirred or cooled.',
    batch: with_({
      formula: [
        { ingredient: 'sucrose', massG: 400 },
        { ingredient: 'water', massG: 130 },
      ],
    }),
  },
  'dextrose-not-syrup': {
    why: 'Glucose powder may be dried glucose syrup, which is mostly long chains, or dextrose, which is one small sugar.',
    batch: with_({
      formula: [
        { ingredient: 'sucrose', massG: 232 },
        { ingredient: 'glucose', massG: 155 },
        { ingredient: 'water', massG: 116 },
      ],
    }),
  },
  'beyond-the-knee': {
    why: 'There is hardly any water left to drive off, so that more heat only colours and spoils.',
    batch: { ...POLYOL_BATCH, cook: { toSeaLevelC: 185 } },
  },
  'late-water': {
    why: 'What goes in off the heat brings water that no longer boils away.',
    batch: andLine({ ingredient: 'colour-liquid', massG: 8, when: 'off-heat' }),
  },
  'too-little-water-to-dissolve': {
    why: 'A grain that is not dissolved is a seed: the whole batch can crystallise on it.',
    batch: with_({
      formula: [
        { ingredient: 'sucrose', massG: 400 },
        { ingredient: 'glucose-syrup', massG: 200 },
        { ingredient: 'water', massG: 30 },
      ],
    }),
  },
  'moulds-short': {
    why: 'The mass stiffens while it waits for the moulds to be emptied.',
    batch: with_({ mould: { kind: 'silicone', cavityMl: 4, cavities: 15, moulds: 1 } }),
  },
  'pieces-short': {
    why: 'What stays on the pan and breaks does not become sweets.',
    batch: with_({ mould: { kind: 'silicone', cavityMl: 4 }, pieces: { count: 90 } }),
  },
  'target-above-mould': {
    why: 'The mass is poured hotter than the mould bears.',
    batch: with_({ mould: { kind: 'plastic', cavityMl: 4, maxC: 90 } }),
  },
  'sticky-room': {
    why: 'A dry sweet takes water from the air until its skin is syrup. Closed in soon, it never meets that air.',
    batch: with_({ room: { temperatureC: 22, relativeHumidity: 0.7 }, wrap: 'none' }),
  },
  'much-acid': {
    why: 'Past a point acid does not taste sourer, it hurts, and it draws water.',
    batch: andLine({ ingredient: 'citric-acid', massG: 14, when: 'off-heat' }),
  },
  'weigh-this-one': {
    why: 'Spoons of powder differ by a fifth, and a fifth of an acid or a colour can be tasted.',
    batch: andLine({
      ingredient: 'citric-acid',
      measure: { quantity: 1, unit: 'us-teaspoon' },
      when: 'off-heat',
    }),
  },
  'heat-spoils-sweetener': {
    why: 'Some intense sweeteners break down in a hot mass and leave the sweet less sweet.',
    batch: {
      ...POLYOL_BATCH,
      formula: [...POLYOL_BATCH.formula, { ingredient: 'sucralose', massG: 0.2, when: 'off-heat' }],
    },
  },
  'sugar-burns': {
    why: 'Above about 165 °C sugar breaks down faster than water leaves it.',
    batch: with_({ cook: { toSeaLevelC: 172 } }),
  },
  'never-boils': {
    why: 'A hob that loses as much as it gives never reaches the stop, however long it burns.',
    batch: with_({ hob: { kind: 'resistance', powerW: 60 }, pan: { diameterMm: 180 } }),
  },
  'reading-lags': {
    why: 'At full flame the last degrees pass faster than a slow thermometer can follow.',
    batch: with_({
      hob: { kind: 'gas', powerW: 3_000 },
      thermometer: { kind: 'dial', readsInS: 45 },
    }),
  },
  'acid-too-early': {
    why: 'Acid in the boil splits sugar into two softer ones, and the sweet is soft at the same stop.',
    batch: andLine({ ingredient: 'citric-acid', massG: 4, when: 'first-boil' }),
  },
  'much-water': {
    why: 'Water beyond what dissolves the sugar is only boiled away again.',
    batch: with_({ formula: [...base.formula.slice(0, 2), { ingredient: 'water', massG: 250 }] }),
  },
  'may-grain': {
    why: 'Every grain on the spoon is a seed, and with little doctor it grows.',
    batch: with_({
      formula: [
        { ingredient: 'sucrose', massG: 320 },
        { ingredient: 'dried-glucose-syrup', dextroseEquivalent: 42, massG: 70 },
        { ingredient: 'water', massG: 120 },
      ],
      handling: { stirredAfterBoil: true },
    }),
  },
  'less-sweet-than-sugar': {
    why: 'Isomalt is about half as sweet as sugar, and what is mixed into it seldom makes up for it.',
    batch: POLYOL_BATCH,
  },
};
