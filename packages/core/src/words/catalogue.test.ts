import { describe, expect, it } from 'vitest';
import type { Advice, AdviceCode, RemedyCode, Severity } from '../job/advice/types.js';
import type { CautionId } from '../job/plan/types.js';
import { CAUTION_SOURCES } from '../sources/registry/cautions.js';
import { ADVICE_WORDS } from './advice/advice-words.js';
import { explainAdvice, remedyLabel, severityWord } from './advice/explain-advice.js';
import { REMEDY_WORDS } from './advice/remedy-words.js';
import { caution, momentWord } from './cautions/caution.js';
import { CAUTION_WORDS } from './cautions/caution-words.js';
import * as LABEL_WORDS from './label/label-words.js';
import { COOK_MOMENTS, WINDOW_WORDS } from './names/cook-words.js';
import { GRADE_WORDS } from './names/grades.js';
import { INGREDIENT_NAMES } from './names/ingredients.js';
import { GRAINING_WORDS, NO_GRAINING, NO_WRAP } from './names/keeping-words.js';
import { KITCHEN_FROM, MODEL_NAMES, WINDOW_ENDS } from './names/models.js';
import { REGION_WORDS } from './names/region-words.js';
import { SHOP_NOTES } from './names/shop-notes.js';
import { SHORT_CITATIONS } from './names/short-citations.js';
import { SPECIES_NAMES } from './names/species.js';
import { TAKEN_WORDS } from './names/taken-words.js';
import { MEASURE_UNIT_NAMES } from './names/units.js';
import { comparePlans } from './plan/compare-plans.js';
import { describePlan } from './plan/describe-plan.js';
import { ISOMALT_DROPS, LEMON_DROPS } from './plan/plans.fixture.js';
import { STEP_WORDS } from './plan/step-words.js';
import { PROBLEM_WORDS, RANGE_ERROR_WORDS } from './problems/problem-words.js';
import { coldWaterDrop, stageName, stageSentence } from './stages/stage-name.js';
import { STAGE_WORDS } from './stages/stage-words.js';
import { explain } from './warnings/explain.js';
import { WARNING_PARAMETERS, WARNING_WORDS } from './warnings/warning-words.js';

/** What each advice carries, as `planBatch` fills it. */
const ADVICE_NUMBERS: Record<AdviceCode, readonly string[]> = {
  'pan-too-full': ['filledFraction', 'chargeMl', 'capacityMl', 'neededCapacityMl'],
  'probe-not-covered': ['depthMm', 'neededMm', 'diameterMm', 'narrowerDiameterMm'],
  'target-above-thermometer': ['readingC', 'maxC', 'neededMaxC'],
  'reading-and-altitude-differ': ['differenceK', 'boilingWaterReadingC', 'waterBoilsAtC'],
  'stage-names-do-not-apply': ['sugarAndSyrupShare', 'polyolShare', 'glassTransitionC'],
  'altitude-would-help': ['causeMattersK', 'boilingWaterReadingC'],
  'too-soft-for-the-store': ['glassTransitionC', 'lowC', 'highC', 'storeC', 'marginK'],
  'no-doctor': ['doctorShare', 'wantedShare'],
  'dextrose-not-syrup': ['dextroseShare'],
  'beyond-the-knee': ['kneeReadingC', 'readingC', 'gainPer10K'],
  'late-water': ['lateWaterG', 'moistureRisePoints'],
  'too-little-water-to-dissolve': ['waterG', 'neededWaterG', 'dissolvedAtC', 'firstBoilC'],
  'moulds-short': ['pieces', 'cavities', 'fills'],
  'pieces-short': ['pieces', 'wished'],
  'target-above-mould': ['pourC', 'mouldMaxC'],
  'sticky-room': ['relativeHumidity', 'limitRelativeHumidity'],
  'much-acid': ['acidShare', 'limitShare'],
  'weigh-this-one': ['massG', 'lowG', 'highG'],
  'heat-spoils-sweetener': ['additionC', 'maxAdditionC'],
  'sugar-burns': ['readingC', 'limitC'],
  'never-boils': [],
  'reading-lags': ['lagK', 'rateKPerMin', 'lagTurnedDownK'],
  'acid-too-early': ['invertedFraction', 'costsK'],
  'much-water': ['waterG', 'neededWaterG', 'longerMin'],
  'may-grain': ['doctorShare'],
  'less-sweet-than-sugar': ['sweetness'],
};
const ADVICE_NAMES = {
  ingredient: 'sucralose',
  stage: 'hard-crack',
  place: 'store',
  where: 'wrapped',
};
const adviceCodes = Object.keys(ADVICE_WORDS) as AdviceCode[];
const cautionIds = Object.keys(CAUTION_WORDS) as CautionId[];
const severities: readonly Severity[] = ['danger', 'will-fail', 'may-disappoint', 'note'];

function fullAdvice(code: AdviceCode, severity: Severity): Advice {
  const numbers = Object.fromEntries(ADVICE_NUMBERS[code].map((key) => [key, 0.4]));
  return { code, severity, numbers, names: ADVICE_NAMES, remedies: [] };
}

describe('advice', () => {
  it.each(adviceCodes)('says everything it can when it has its numbers: %s', (code) => {
    for (const severity of severities) {
      const { title, text } = explainAdvice(fullAdvice(code, severity));
      expect(title).toMatch(/^[A-Z].*[^.]$/);
      expect(text.length).toBeGreaterThan(0);
      expect(text).not.toMatch(/[{}|]|undefined|NaN/);
      // No sentence asks for a number under a name nobody fills.
      for (const sentence of ADVICE_WORDS[code].text) {
        // A figure in braces is no key: `{10K}`.
        for (const [, key = ''] of sentence.matchAll(/\{([a-z]\w*)\}/gi)) {
          expect([
            ...ADVICE_NUMBERS[code],
            ...Object.keys(ADVICE_NAMES),
            ...Object.keys(REGION_WORDS),
          ]).toContain(key);
        }
      }
    }
  });

  it('still has its title when the numbers are missing', () => {
    const { title, text } = explainAdvice({
      code: 'moulds-short',
      severity: 'note',
      numbers: {},
      remedies: [],
    });
    expect(title).toBe('Not enough cavities for one pour');
    expect(text).toBe('');
  });

  it('weighs its words by its severity', () => {
    const titles = severities.map(
      (severity) => explainAdvice(fullAdvice('too-soft-for-the-store', severity)).title,
    );
    expect(titles[1]).toBe('It will not stay hard where you keep it');
    expect(titles[2]).toBe('It may soften where you keep it');
    expect(titles[3]).toBe('Not much in reserve for a hot day');
    expect(new Set(severities.map(severityWord)).size).toBe(4);
  });

  it('says the store when it is the store', () => {
    const { title } = explainAdvice(fullAdvice('sticky-room', 'note'));
    expect(title).toBe('The store makes bare sweets sticky');
    const none = { ...fullAdvice('sticky-room', 'note'), names: {} };
    expect(explainAdvice(none).title).toBe('The room makes bare sweets sticky');
    const drier = (...paths: readonly string[]) =>
      remedyLabel({
        code: 'drier-room',
        changes: paths.map((path) => ({ path: `${path}/relativeHumidity`, value: 0.4 })),
        numbers: { relativeHumidity: 0.4 },
      });
    expect(drier('/store')).toBe('Keep them in a store at 40 % humidity');
    expect(drier('/room', '/store')).toBe('Work in a room at 40 % humidity');
  });

  it('tells how far tilting the pan helps', () => {
    const bare = explainAdvice(fullAdvice('probe-not-covered', 'may-disappoint'));
    expect(bare.text).toContain(
      'Tilting the pan by its handle gathers the mass around it, but not',
    );
    const nearly = explainAdvice(fullAdvice('probe-not-covered', 'note'));
    expect(nearly.title).toBe('The probe is nearly covered');
    expect(nearly.text).toContain('Tilt the pan a little, by its handle, while you read.');
  });

  it('puts the number on the button, from the remedy or from its only change', () => {
    expect(
      remedyLabel({
        code: 'bigger-pan',
        changes: [{ path: '/pan/capacityMl', value: 2500 }],
        numbers: { neededCapacityMl: 2500 },
      }),
    ).toBe('Take a pan of 2 500 ml');
    expect(
      remedyLabel({ code: 'more-moulds', changes: [{ path: '/mould/moulds', value: 4 }] }),
    ).toBe('Take 4 moulds');
    expect(remedyLabel({ code: 'weigh-it', changes: [] })).toBe('Weigh it');
    const later = 'not-yet-thought-of' as RemedyCode;
    expect(remedyLabel({ code: later, changes: [] })).toBe('Not yet thought of');
  });

  it.each(Object.keys(REMEDY_WORDS) as RemedyCode[])(
    'has a label for a remedy without numbers too: %s',
    (code) => {
      expect(remedyLabel({ code, changes: [] })).toMatch(/^[A-Z][^{}|]+$/);
    },
  );
});

describe('cautions', () => {
  it.each(cautionIds)('are whole without any number of a plan: %s', (id) => {
    const { title, text, moments, grade, source } = caution(id);
    expect(title).toMatch(/^[A-Z].*[^.]$/);
    expect(text).toMatch(/^[A-Z'].*\.$/);
    expect(`${title}${text}`).not.toMatch(/[{}|]|undefined/);
    expect(moments.map(momentWord).every((word) => word.length > 0)).toBe(true);
    expect(moments.length).toBeGreaterThan(0);
    expect(Object.keys(GRADE_WORDS)).toContain(grade);
    if (source !== undefined) expect(Object.keys(CAUTION_SOURCES)).toContain(source);
  });

  it('say who knows better where a law, a vet or a physician does', () => {
    expect(caution('dogs-xylitol').defer).toContain('phone a vet');
    expect(caution('strong-oils').defer).toContain('poison line');
    expect(caution('burn-first-aid').defer).toContain('emergency number');
    for (const id of [
      'laxative',
      'polyol-child',
      'fructose-intolerance',
      'phenylalanine',
      'not-for-illness',
    ] as const) {
      expect(caution(id).defer).toContain('hysician');
    }
    for (const id of ['limits-are-local', 'allergens', 'acid-in-isomalt', 'strong-oils'] as const) {
      expect(caution(id).defer).toContain('food law');
    }
  });

  it('carry the figures of the sources', () => {
    expect(caution('dogs-xylitol').text).toMatch(
      /0\.1 g.*30 to 60 minutes.*0\.5 g.*0\.075 g.*29 kg/,
    );
    expect(caution('burn-first-aid').title).toContain('20 minutes');
    expect(caution('sweetener-heat', { units: 'us' }).text).toContain('248 °F (120 °C)');
    expect(caution('polyol-child', { numbers: { childShare: 0.97 } }).text).toContain(
      '97 % of the guide',
    );
  });

  it('never tell anyone to pour water on hot mass', () => {
    const all = [
      ...cautionIds.map((id) => caution(id).text),
      ...Object.values(STEP_WORDS).flat(),
    ].join(' ');
    expect(all).not.toMatch(
      /(?<!never )(pour|add|put)( some| more| a little)? (hot |cold |warm )?water (on|in|into|to|over)/i,
    );
    expect(caution('never-water-on-hot-mass').text).toContain('into hot water');
  });
});

describe('stages', () => {
  it('each have a sentence and a use, and so has every gap', () => {
    for (const id of Object.keys(STAGE_WORDS)) {
      expect(stageSentence(id).toLowerCase().startsWith(stageName(id)) || id === 'too-thin').toBe(
        true,
      );
      expect(stageSentence(id)).toMatch(/\. For: [a-z].+\.$/);
    }
  });

  it('say what a stage is good for once', () => {
    for (const [id, { sentence, use }] of Object.entries(STAGE_WORDS)) {
      // Where most drops are stopped bears saying twice: it must never look like a miss.
      if (id === 'between-soft-crack-and-hard-crack') continue;
      const said = sentence.toLowerCase();
      for (const word of use.toLowerCase().match(/[a-z]{6,}/g) ?? []) {
        expect(said).not.toContain(word);
      }
    }
  });

  it('name one scale on a page of one scale', () => {
    const id = 'between-soft-crack-and-hard-crack';
    expect(stageSentence(id, { units: 'us' })).toContain('stopped (290 to 300 °F at sea level)');
    expect(stageSentence(id, { units: 'metric' })).toContain(
      'stopped (143 to 149 °C at sea level)',
    );
    expect(stageSentence('thread', { units: 'us' })).toContain('about 2 inches from the spoon');
    expect(stageName('between-clear-liquid-and-brown-liquid', { region: 'us' })).toBe(
      'first color',
    );
    expect(coldWaterDrop('between-clear-liquid-and-brown-liquid', { region: 'us' })).toBe(
      'hard, straw-colored threads',
    );
  });

  it('never make a good target look like a miss', () => {
    expect(stageSentence('between-soft-crack-and-hard-crack')).toContain(
      'Early hard crack, where most boiled drops are stopped',
    );
    expect(stageSentence('between-soft-crack-and-hard-crack')).toContain(
      '143 to 149 °C, 290 to 300 °F',
    );
    for (const { sentence } of Object.values(STAGE_WORDS)) {
      expect(sentence).not.toMatch(
        /\b(no|not yet|neither|between|miss|fail)\b.*stage|\bneither\b|\bmiss/i,
      );
    }
  });
});

describe('warnings', () => {
  it.each(Object.keys(WARNING_WORDS) as (keyof typeof WARNING_WORDS)[])(
    'are sentences: %s',
    (code) => {
      const text = explain({
        code,
        parameter: 'temperatureC',
        value: 180,
        limits: [100, 170],
        subject: 'sucralose',
      });
      expect(text).toMatch(/^[A-Z].*\.$/);
      expect(text).not.toMatch(/[{}|]|undefined/);
    },
  );

  it('show numbers in their unit', () => {
    expect(
      explain({
        code: 'outside-tested-range',
        parameter: 'elevationM',
        value: 10_500,
        limits: [-500, 10_000],
      }),
    ).toBe(
      'The altitude: 10 500 m here, tested from −500 m to 10 000 m. The answer stands, with less behind it.',
    );
    expect(
      explain({ code: 'species-not-modelled', parameter: 'species', value: 0.02, limits: [0, 0] }),
    ).toBe('Nothing is known here of part of the mix, 2 %, so it only counts by weight.');
  });
});

describe('the plan in words', () => {
  const parts = { COOK_MOMENTS, WINDOW_WORDS, GRAINING_WORDS };
  it.each(Object.entries(parts))('has phrases that fit into a sentence: %s', (_, words) => {
    const phrases = Object.values(words);
    expect(new Set(phrases).size).toBe(phrases.length);
    for (const phrase of phrases) expect(phrase).toMatch(/^[a-z][a-z ]*[a-z]$/);
  });

  it.each(Object.entries({ ...NO_GRAINING, ...NO_WRAP }))(
    'has a whole sentence where there is no number: %s',
    (_, sentence) => {
      expect(sentence).toMatch(/^[A-Z][^{}|]+\.$/);
    },
  );

  it('never calls a label’s claim allowed', () => {
    const said = JSON.stringify(LABEL_WORDS);
    expect(said).not.toMatch(/allowed|permitted|you may claim|can be claimed/i);
    expect(said).toContain('not a permission');
  });
});

/** Words that promise what nobody can promise, or scold. */
const FORBIDDEN = [
  /safe/i,
  /health/i,
  /diabet/i,
  /guilt/i,
  /glyc[a]?emic/i,
  /\binvalid\b/i,
  /\berrors?\b/i,
  /harmless/i,
  /suitable/i,
  /suits?\b/i,
  /perfect/i,
  /\bjust\b/i,
  /\bsimply\b/i,
  /\boops\b/i,
  /!(?! )/,
  /\bTg\b/,
  /\bERH\b/,
];

it('uses none of the words that are never used', () => {
  const texts: string[] = [];
  collect([
    ADVICE_WORDS,
    CAUTION_WORDS,
    REMEDY_WORDS,
    PROBLEM_WORDS,
    RANGE_ERROR_WORDS,
    STEP_WORDS,
    STAGE_WORDS,
    WARNING_WORDS,
    WARNING_PARAMETERS,
    TAKEN_WORDS,
    SHORT_CITATIONS,
    INGREDIENT_NAMES,
    SPECIES_NAMES,
    MEASURE_UNIT_NAMES,
    SHOP_NOTES,
    GRADE_WORDS,
    MODEL_NAMES,
    KITCHEN_FROM,
    WINDOW_ENDS,
    REGION_WORDS,
    COOK_MOMENTS,
    WINDOW_WORDS,
    GRAINING_WORDS,
    NO_GRAINING,
    NO_WRAP,
    LABEL_WORDS,
    comparePlans(LEMON_DROPS, ISOMALT_DROPS),
    ...[LEMON_DROPS, ISOMALT_DROPS].flatMap((plan) => [
      describePlan(plan),
      describePlan(plan, { units: 'us' }),
    ]),
  ]);
  expect(texts.length).toBeGreaterThan(400);
  for (const text of texts) for (const word of FORBIDDEN) expect(text).not.toMatch(word);

  function collect(value: unknown): void {
    if (typeof value === 'string') texts.push(value);
    else if (typeof value === 'object' && value !== null)
      for (const held of Object.values(value)) collect(held);
  }
});
