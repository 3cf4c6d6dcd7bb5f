import { describe, expect, it } from 'vitest';
import type { BatchDocument, FormulaLine } from 'vitrose';
import { comparePlans, describePlan } from 'vitrose/words';
import { startWith } from '../../site/src/bench/state/arrive.js';
import { type BesideKind, besides } from '../../site/src/bench/state/beside.js';
import { clearTable, layBeside, setValue } from '../../site/src/bench/state/edits.js';
import { undo } from '../../site/src/bench/state/history.js';
import { jarIngredients } from '../../site/src/bench/state/jar-label.js';
import { labelRows } from '../../site/src/bench/state/label-rows.js';
import type { BenchState } from '../../site/src/bench/state/types.js';
import { EXAMPLES, example, planOf } from './examples.js';

const METRIC = { units: 'metric', region: 'world' } as const;
const start = (batch: BatchDocument): BenchState => startWith(batch, METRIC, 'nobodys');
const kindsOf = (state: BenchState): readonly BesideKind[] =>
  besides(state).map(({ kind }) => kind);
const withFormula = (batch: BatchDocument, formula: readonly FormulaLine[]): BatchDocument => ({
  ...batch,
  formula,
});
/** The worked example with its acid in when the line says. */
const withAcid = (when: 'start' | 'off-heat'): BatchDocument => {
  const batch = example('harbour');
  return withFormula(
    batch,
    batch.formula.map((line) => (line.ingredient === 'citric-acid' ? { ...line, when } : line)),
  );
};

describe('what can be laid beside a plan', () => {
  it('is the other time of the acid, and not the one it has', () => {
    expect(kindsOf(start(withAcid('off-heat')))).toContain('acid-first');
    expect(kindsOf(start(withAcid('off-heat')))).not.toContain('acid-last');
    // In from the cold pan it is neither at the first boil nor last.
    expect(kindsOf(start(withAcid('start')))).toEqual(
      expect.arrayContaining(['acid-first', 'acid-last']),
    );
    const { formula } = example('harbour');
    const sweet = formula.filter(({ ingredient }) => ingredient !== 'citric-acid');
    const kinds = kindsOf(start(withFormula(example('harbour'), sweet)));
    expect(kinds).not.toContain('acid-first');
    expect(kinds).not.toContain('acid-last');
  });

  it('is without xylitol only where there is some', () => {
    expect(kindsOf(start(example('isomalt-with-xylitol')))).toContain('without-xylitol');
    expect(kindsOf(start(example('isomalt-drops')))).not.toContain('without-xylitol');
  });

  it('is the other form of each starch syrup, told apart where there are several', () => {
    const one = besides(start(example('harbour'))).filter(({ kind }) => kind === 'liquid');
    expect(one.map(({ id, line }) => [id, line])).toEqual([['liquid', undefined]]);
    const batch = example('harbour');
    const two = withFormula(batch, [
      { ingredient: 'glucose-syrup', massG: 40 },
      ...batch.formula,
      { ingredient: 'glucose-syrup', massG: 60, dextroseEquivalent: 60 },
    ]);
    const swapped = besides(start(two)).filter(({ kind }) => kind === 'dried');
    expect(swapped.map(({ id, line }) => [id, line])).toEqual([
      ['dried-1', 1],
      ['dried-6', 6],
    ]);
    // Each changes its own line and no other syrup.
    expect(swapped[0]?.batch.formula[0]?.ingredient).toBe('dried-glucose-syrup');
    expect(swapped[0]?.batch.formula[5]?.ingredient).toBe('glucose-syrup');
    expect(swapped[1]?.batch.formula[0]?.ingredient).toBe('glucose-syrup');
  });

  it('is another kitchen, but for the one it stands in, and that cannot be taken', () => {
    const nowhere = { ...example('harbour'), kitchen: undefined, thermometer: undefined };
    expect(kindsOf(start(nowhere))).not.toContain('sea-level');
    expect(kindsOf(start(nowhere))).toContain('mountain');
    const high = { ...nowhere, kitchen: { elevationM: 1_500 } };
    expect(kindsOf(start(high))).toContain('sea-level');
    expect(kindsOf(start(high))).not.toContain('mountain');
    const sea = besides(start(high)).find(({ kind }) => kind === 'sea-level');
    expect(sea?.takes).toBe(false);
    // What a thermometer showed in another kitchen says nothing in this one; how slow it is, does.
    const reading = { ...high, thermometer: { boilingWaterReadingC: 96, responseS: 20 } };
    const moved = besides(start(reading)).find(({ kind }) => kind === 'sea-level');
    expect(moved?.batch.thermometer).toEqual({ responseS: 20 });
  });

  it('is what stood there before the last change, where a plan can have', () => {
    const first = start(example('harbour'));
    expect(kindsOf(first)).not.toContain('before');
    const second = setValue(first, '/cook/toSeaLevelC', 150);
    const before = besides(second).find(({ kind }) => kind === 'before');
    expect(before?.batch).toBe(first.now.batch);
    const { batch } = first.now;
    const emptied = clearTable(first, withFormula(batch, []));
    const filled = layBeside(emptied, batch);
    expect(kindsOf(filled)).not.toContain('before');
  });

  it('is taken as one step, and taken back as one', () => {
    const first = start(example('isomalt-with-xylitol'));
    const without = besides(first).find(({ kind }) => kind === 'without-xylitol');
    if (without === undefined) throw new Error('Nothing is offered.');
    const second = layBeside(first, without.batch);
    expect(JSON.stringify(second.now.batch)).not.toContain('xylitol"');
    expect(second.past).toHaveLength(1);
    expect(second.round).toBe(first.round + 1);
    expect(undo(second).now.batch).toBe(first.now.batch);
  });

  it.each(EXAMPLES)('is a batch that can be planned: %s', (_, batch) => {
    for (const other of besides(start(batch))) planOf(other.batch);
  });

  it('says in words that early acid makes a softer sweet', () => {
    const batch = withAcid('off-heat');
    const early = besides(start(batch)).find(({ kind }) => kind === 'acid-first');
    if (early === undefined) throw new Error('Nothing is offered.');
    const [here, there] = [planOf(batch), planOf(early.batch)];
    const line = comparePlans(here, there, METRIC).find(({ id }) => id === 'hard');
    expect(line?.differs).toBe(true);
    expect(there.keeping.glassTransitionC.value).toBeLessThan(
      here.keeping.glassTransitionC.value - 10,
    );
  });
});

describe('the table of a label', () => {
  it('has the rows of each place in its order, and what is part of what', () => {
    const plan = planOf(example('harbour'));
    expect(labelRows(plan, 'eu').map(({ id }) => id)).toEqual([
      'energy',
      'fat',
      'carbohydrate',
      'sugars',
      'protein',
    ]);
    const us = labelRows(plan, 'us');
    expect(us.map(({ id }) => id)).toContain('addedSugars');
    expect(us.filter(({ isPart }) => isPart).map(({ id }) => id)).toEqual([
      'sugars',
      'addedSugars',
    ]);
  });

  it('gives energy as the place counts it, thousands apart', () => {
    const plan = planOf(example('harbour'));
    const { energyKJ, energyKcal } = plan.label.eu.per100G;
    expect(energyKJ).toBeGreaterThan(1_000);
    expect(labelRows(plan, 'eu')[0]?.per100.replaceAll('\u00a0', '')).toBe(
      `${energyKJ.toFixed(0)}kJ (${energyKcal.toFixed(0)}kcal)`,
    );
    expect(labelRows(plan, 'us')[0]?.per100).toMatch(/^\d+\u00a0kcal$/);
  });

  it('has sugar alcohols and salt where there are some, and never prints a little as nothing', () => {
    const plan = planOf(example('isomalt-with-xylitol'));
    const row = labelRows(plan, 'eu').find(({ id }) => id === 'polyols');
    expect(Number.parseFloat(row?.per100 ?? '')).toBeCloseTo(plan.label.eu.per100G.polyolsG, 1);
    const { eu } = plan.label;
    const amounts = { ...eu.per100G, saltG: 0.025 };
    const salty = {
      ...plan,
      label: {
        eu: { ...eu, per100G: amounts, perPiece: undefined },
        us: { ...plan.label.us, per100G: amounts },
      },
    };
    const salt = labelRows(salty, 'eu').find(({ id }) => id === 'salt');
    expect(salt).toMatchObject({ per100: 'under 0.1\u00a0g', perPiece: undefined });
    const sodium = labelRows(salty, 'us').find(({ id }) => id === 'sodium');
    expect(sodium?.per100).toBe('10\u00a0mg');
  });

  it.each(EXAMPLES)('gives a piece only where its size is known: %s', (_, batch) => {
    const plan = planOf(batch);
    for (const rules of ['eu', 'us'] as const) {
      const known = plan.label[rules].perPiece !== undefined;
      for (const { perPiece } of labelRows(plan, rules)) {
        expect(perPiece !== undefined).toBe(known);
      }
    }
  });
});

describe('the jar', () => {
  it('names what is in it, the heaviest first, each once, without the water', () => {
    const batch = example('harbour');
    const plan = planOf(batch);
    expect(jarIngredients(plan, METRIC).slice(0, 2)).toEqual(['sugar', 'dried glucose syrup']);
    expect(jarIngredients(plan, METRIC)).not.toContain('water');
    // Two heaps of sugar are one ingredient, and count together.
    const split = withFormula(batch, [
      { ingredient: 'dried-glucose-syrup', massG: 120 },
      { ingredient: 'sucrose', massG: 100 },
      { ingredient: 'sucrose', massG: 100 },
      { ingredient: 'water', massG: 500 },
    ]);
    expect(jarIngredients(planOf(split), METRIC)).toEqual(['sugar', 'dried glucose syrup']);
  });
});

describe('the taste', () => {
  it.each(EXAMPLES)('is said in a sentence that the page can find: %s', (_, batch) => {
    const made = describePlan(planOf(batch), METRIC).sections.find(({ id }) => id === 'yield');
    expect(made?.lines.filter((line) => line.includes('as sweet as sugar'))).toHaveLength(1);
  });
});
