import { describe, expect, it } from 'vitest';
import { BATCH_LIMITS, type BatchDocument, swapSyrupForm, WRAP_FILM_IDS } from 'vitrose';
import { batchText, readBatch } from 'vitrose/documents';
import { startWith } from '../../site/src/bench/state/arrive.js';
import { setValue, takeRemedy } from '../../site/src/bench/state/edits.js';
import { FIELDS, type FieldName } from '../../site/src/bench/state/fields.js';
import { undo } from '../../site/src/bench/state/history.js';
import { hobOf, wrapChoice, wrapOf } from '../../site/src/bench/state/hob-and-wrap.js';
import { readQuantity, writeQuantity } from '../../site/src/bench/state/read/quantity.js';
import type { Reading } from '../../site/src/bench/state/read/types.js';
import { recipeOf } from '../../site/src/bench/state/recipe.js';
import { benchWords } from '../../site/src/words/bench.js';
import { EXAMPLES, example, planOf } from './examples.js';

const METRIC = { units: 'metric', region: 'world' } as const;
const HOB_KINDS = ['timed', 'gas', 'resistance', 'induction'] as const;

/** As the field of this name reads it. */
function typed(name: FieldName, text: string, units: 'metric' | 'us' = 'metric'): Reading<number> {
  const { quantity, limit } = FIELDS[name];
  return readQuantity(text, { quantity, limits: BATCH_LIMITS[limit], units });
}

/** The batch as a file and back; a failed test where the reader refuses it. */
function throughFile(batch: BatchDocument): BatchDocument {
  const reading = readBatch(batchText(batch));
  if (reading.kind === 'problems') throw new Error(JSON.stringify(reading.problems));
  return reading.batch;
}

describe('a field of the hob, the thermometer, the wrap and the water', () => {
  it.each([
    ['readsIn', '4', 4, '4 s'],
    ['readsIn', '1 1/2 min', 90, '90 s'],
    ['power', '1800', 1800, '1800 W'],
    ['power', '1,8 kW', 1800, '1800 W'],
    ['power', '2 kilowatts', 2000, '2000 W'],
    ['wrapArea', '60', 60, '60 cm² · 9.3 in²'],
    ['wrapArea', '10 in²', 64.516, '64.5 cm² · 10 in²'],
    ['wrapArea', '60 sq cm', 60, '60 cm² · 9.3 in²'],
    ['seal', '1,5', 1.5, '1.5'],
    ['seal', '2 x', 2, '2'],
    ['seal', '3 times', 3, '3'],
    ['alkalinity', '2.4', 2.4, '2.4 mmol/L'],
    ['alkalinity', '2,4 mmol/l', 2.4, '2.4 mmol/L'],
    ['alkalinity', '100.09 mg/L as CaCO3', 2, '2 mmol/L'],
    ['vacuum', '600', 60_000, '600 hPa · 17.7 inHg'],
    ['vacuum', '600 mbar', 60_000, '600 hPa · 17.7 inHg'],
  ] as const)('%s reads %s', (name, text, value, echo) => {
    const reading = typed(name, text);
    expect(reading).toMatchObject({ kind: 'read', echo, offers: [] });
    expect(reading.kind === 'read' && reading.value).toBeCloseTo(value, 6);
  });

  it.each(Object.keys(FIELDS) as FieldName[])('%s is not upset by what cannot be', (name) => {
    for (const text of ['-5', '-600', '1e999', '-99999 F', '0', '9'.repeat(30), '-1 in']) {
      for (const units of ['metric', 'us'] as const)
        expect(() => typed(name, text, units)).not.toThrow();
    }
  });

  it('takes square inches and inches of mercury for granted where ounces are', () => {
    expect(typed('wrapArea', '10', 'us')).toMatchObject({ value: 64.516 });
    const vacuum = typed('vacuum', '20', 'us');
    expect(vacuum.kind === 'read' && vacuum.value).toBeCloseTo(67_728, 0);
  });

  it('offers kilowatts for what no hob has in watts', () => {
    expect(typed('power', '2.2')).toMatchObject({
      kind: 'read',
      value: 2.2,
      offers: [{ label: 'Use 2.2 kW', text: '2.2 kW' }],
    });
    expect(typed('power', '2.2 W')).toMatchObject({ offers: [] });
    expect(typed('power', '0')).toMatchObject({ value: 0, offers: [] });
    expect(typed('power', '25')).toMatchObject({ offers: [] });
  });

  it.each([
    ['alkalinity', '120', 'Use mg/L CaCO₃'],
    ['seal', '0.5', undefined],
    ['readsIn', '0', undefined],
    ['readsIn', '900', undefined],
    ['power', '21000', undefined],
    ['power', '2000 bananas', undefined],
    ['vacuum', '-20', undefined],
    ['wrapArea', 'a palm', undefined],
  ] as const)('%s does not take %s', (name, text, offer) => {
    const reading = typed(name, text);
    expect(reading.kind).toBe('unread');
    const [first] = reading.kind === 'unread' ? reading.offers : [];
    expect(first?.label).toBe(offer);
    if (first !== undefined) expect(typed(name, first.text).kind).toBe('read');
  });

  it('writes what it reads', () => {
    for (const name of ['readsIn', 'power', 'wrapArea', 'seal', 'alkalinity', 'vacuum'] as const) {
      for (const units of ['metric', 'us'] as const) {
        const { quantity, limit } = FIELDS[name];
        const [low, high] = BATCH_LIMITS[limit];
        const value = low + (high - low) / 3;
        const back = typed(name, writeQuantity(value, { quantity, units }), units);
        expect(back.kind === 'read' && back.value / value, name).toBeCloseTo(1, 2);
      }
    }
  });
});

describe('the kind of hob', () => {
  it.each(EXAMPLES)('of %s can become every other and leaves a batch that is read', (_, batch) => {
    let state = startWith(batch, METRIC, 'nobodys');
    for (const kind of [...HOB_KINDS, ...[...HOB_KINDS].reverse(), '' as const]) {
      state = setValue(state, '/hob', hobOf(kind, state.now.batch));
      expect(throughFile(state.now.batch).hob?.kind ?? '').toBe(kind);
    }
  });

  it('keeps the watts between hobs that have them, and the minutes of its own test', () => {
    const gas = { ...example('harbour'), hob: { kind: 'gas', powerW: 3200 } as const };
    expect(hobOf('induction', gas)).toEqual({ kind: 'induction', powerW: 3200 });
    const { hob } = example('harbour');
    expect(hobOf('timed', example('harbour'))).toBe(hob);
  });
});

describe('the wrap', () => {
  it('can be every film there is', () => {
    expect(Object.keys(benchWords.things.wraps).sort()).toEqual(
      ['none', 'twist', ...WRAP_FILM_IDS].sort(),
    );
  });

  it.each(EXAMPLES)('of %s is said in words and read again', (_, batch) => {
    const plan = planOf(batch);
    for (const choice of ['', 'none', 'twist', ...WRAP_FILM_IDS] as const) {
      const wrap = wrapOf(choice, batch, plan);
      const { wrap: _old, ...bare } = batch;
      const next = throughFile(wrap === undefined ? bare : { ...bare, wrap });
      expect(wrapChoice(next)).toBe(choice);
      planOf(next);
    }
  });

  it('keeps its area and seals when the film becomes another', () => {
    const wrapped = { film: 'pet', areaCm2: 33, sealFactor: 2 } as const;
    const batch = { ...example('harbour'), wrap: wrapped };
    expect(wrapOf('ldpe', batch, undefined)).toEqual({ ...wrapped, film: 'ldpe' });
  });
});

describe('what is said', () => {
  const film = { film: 'oriented-pp', areaCm2: 40 } as const;
  const plain: BatchDocument = { ...example('harbour'), store: { forDays: 180 }, wrap: film };
  const acidInTheBoil: BatchDocument = {
    ...plain,
    formula: plain.formula.map((line) =>
      line.ingredient === 'citric-acid' ? { ...line, when: 'start' as const } : line,
    ),
  };
  it.each([
    ['/thermometer/readsInS', 40, 'cooking', plain],
    ['/hob', { kind: 'induction', powerW: 2000 }, 'cooking', plain],
    ['/hob/boilsInMin', 9, 'cooking', plain],
    ['/store/relativeHumidity', 0.8, 'keeping', plain],
    ['/wrap', 'none', 'keeping', plain],
    ['/wrap/areaCm2', 200, 'keeping', plain],
    ['/wrap/sealFactor', 4, 'keeping', plain],
    ['/handling/stirredAfterBoil', true, 'graining', plain],
    ['/water/alkalinityMmolPerL', 5, 'inversion', acidInTheBoil],
    ['/cook/underVacuumPa', 40_000, 'target', plain],
  ] as const)('at %s changes the plan, and is kept in a file', (path, value, part, batch) => {
    const next = setValue(startWith(batch, METRIC, 'nobodys'), path, value).now.batch;
    expect(throughFile(next)).toEqual(next);
    const before = planOf(batch)[part];
    expect(before).toBeDefined();
    expect(planOf(next)[part]).not.toEqual(before);
  });

  it('goes with the recipe where it is the recipe’s, and stays where it is the kitchen’s', () => {
    const said: BatchDocument = {
      ...plain,
      cook: { ...plain.cook, underVacuumPa: 40_000 },
      handling: { stirredAfterBoil: true },
      water: { alkalinityMmolPerL: 3 },
    };
    const recipe = recipeOf(said);
    expect(recipe).toMatchObject({
      store: { forDays: 180 },
      wrap: film,
      handling: { stirredAfterBoil: true },
      cook: { underVacuumPa: 40_000 },
    });
    for (const part of ['hob', 'thermometer', 'pan', 'room', 'water', 'kitchen']) {
      expect(part in recipe, part).toBe(false);
    }
  });
});

describe('liquid for dried syrup', () => {
  it('is one step, with the solids and the water it had', () => {
    const batch = example('harbour');
    const answer = swapSyrupForm(batch, 1);
    if (answer.kind === 'none') throw new Error(answer.reason);
    const state = takeRemedy(startWith(batch, METRIC, 'nobodys'), answer);
    expect(state.past).toHaveLength(1);
    expect(undo(state).now.batch).toBe(batch);
    const [before, after] = [planOf(batch), planOf(state.now.batch)].map(
      ({ composition }) => composition,
    );
    expect(after?.chargeG.value).toBeCloseTo(before?.chargeG.value ?? 0, 0);
    expect(after?.baseG.value).toBeCloseTo(before?.baseG.value ?? 0, 0);
    expect(state.now.batch.formula[1]?.ingredient).toBe('glucose-syrup');
  });

  it('says why it cannot be', () => {
    const dry = example('harbour');
    const formula = dry.formula.map((line) =>
      line.ingredient === 'water' ? { ingredient: 'water', massG: 5 } : line,
    );
    const answer = swapSyrupForm({ ...dry, formula }, 1);
    expect(answer).toEqual({ kind: 'none', reason: 'too-little-water' });
  });
});
