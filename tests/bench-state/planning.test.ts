import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it, vi } from 'vitest';
import { type BatchDocument, planBatch } from 'vitrose';
import { describePlan } from 'vitrose/words';
import type * as FindRoot from '../../packages/core/src/foundation/numeric/find-root.js';
import { startWith } from '../../site/src/bench/state/arrive.js';
import { differenceAt, moved, unchanged } from '../../site/src/bench/state/difference.js';
import { setUnread, setValue } from '../../site/src/bench/state/edits.js';
import { massInPan } from '../../site/src/bench/state/mass.js';
import { openedFigures } from '../../site/src/bench/state/opened.js';
import { createPlanner } from '../../site/src/bench/state/planner.js';
import { fileNameOf, programFor } from '../../site/src/bench/state/program.js';
import { otherCautions, stepLines, topCautions } from '../../site/src/bench/state/step-lines.js';
import { stopWords } from '../../site/src/bench/state/stop-words.js';
import { EXAMPLES, example, planOf } from './examples.js';

const counter = vi.hoisted(() => ({ solves: 0 }));

vi.mock('../../packages/core/src/foundation/numeric/find-root.js', async (original) => {
  const real = await original<typeof FindRoot>();
  return {
    ...real,
    findRoot: (...given: Parameters<typeof real.findRoot>) => {
      counter.solves += 1;
      return real.findRoot(...given);
    },
  };
});

const METRIC = { units: 'metric', region: 'world' } as const;
const MANNERS = [
  { units: 'metric', region: 'world' },
  { units: 'us', region: 'us' },
] as const;

describe('the planner', () => {
  it('plans a document once, however often the page is drawn', () => {
    const planner = createPlanner();
    const batch = example('harbour');
    for (let draw = 0; draw < 5; draw += 1) planner.plan(batch);
    expect(planner.count()).toBe(1);
  });

  it('plans once for an edit, with at most 120 root solves, and not for an undo', () => {
    const planner = createPlanner();
    const first = startWith(example('harbour'), METRIC, 'nobodys');
    planner.plan(first.now.batch);
    counter.solves = 0;
    const second = setValue(first, '/cook/toSeaLevelC', 150);
    planner.plan(second.now.batch);
    expect(planner.count()).toBe(2);
    expect(counter.solves).toBeGreaterThan(0);
    expect(counter.solves).toBeLessThanOrEqual(120);
    counter.solves = 0;
    planner.plan(first.now.batch);
    expect(planner.count()).toBe(2);
    expect(counter.solves).toBe(0);
  });

  it('does not plan what the server has planned', () => {
    const batch = example('harbour');
    const planned = { plan: planOf(batch), isOld: false, problems: [] };
    const planner = createPlanner(undefined, { batch, planned });
    expect(planner.plan(batch)).toBe(planned);
    expect(planner.count()).toBe(0);
    // And it is the last good plan for whatever comes out wrong.
    const wrong = planner.plan({ ...batch, formula: [] });
    expect(wrong).toMatchObject({ isOld: true, plan: planned.plan });
    expect(planner.count()).toBe(1);
  });

  it('does not plan what cannot be read', () => {
    const first = startWith(example('harbour'), METRIC, 'nobodys');
    const wrong = setUnread(first, 'f-printed', { text: 'hot', reason: 'Not a number.' });
    expect(wrong.now.batch).toBe(first.now.batch);
  });

  it('keeps the last good plan for a table that cannot be planned', () => {
    const planner = createPlanner();
    const batch = example('harbour');
    const good = planner.plan(batch);
    const empty: BatchDocument = { ...batch, formula: [] };
    const bad = planner.plan(empty);
    expect(bad).toMatchObject({ isOld: true, problems: [{ code: 'nothing-to-cook' }] });
    expect(bad.plan).toBe(good.plan);
    expect(createPlanner().plan(empty).plan).toBeUndefined();
  });
});

describe('readings of the kitchen, for a recipe printed 148 °C', () => {
  // The same offset is never counted twice: 143.9 and 142.1 would be the two mistakes.
  const base = example('harbour');
  const { kitchen: _kitchen, thermometer: _thermometer, ...recipe } = base;
  const stopAt = (parts: Partial<BatchDocument>): number =>
    planOf({ ...recipe, ...parts }).target.readingC.value;

  it('stop at 143.0 where the whole of 95.8 is the air', () => {
    expect(stopAt({ thermometer: { boilingWaterReadingC: 95.8 } })).toBeCloseTo(143, 1);
  });

  it('stop between 142.9 and 143.3 where 1 500 m is true', () => {
    const stop = stopAt({
      kitchen: { elevationM: 1500 },
      thermometer: { boilingWaterReadingC: 95.8 },
    });
    expect(stop).toBeGreaterThanOrEqual(142.85);
    expect(stop).toBeLessThanOrEqual(143.3);
  });

  it('stop at 148 at sea level', () => {
    expect(stopAt({ kitchen: { elevationM: 0 } })).toBeCloseTo(148, 1);
  });
});

describe('known-good batches', () => {
  const folder = new URL('../known/good/', import.meta.url);
  const files = readdirSync(folder).filter((file) => file.endsWith('.json'));

  it('are there', () => {
    expect(files.length).toBeGreaterThan(0);
  });

  it.each(files)('%s shows no advice above a note', (file) => {
    const batch: BatchDocument = JSON.parse(readFileSync(new URL(file, folder), 'utf8'));
    const { plan } = createPlanner().plan(batch);
    expect(plan?.advice.filter(({ severity }) => severity !== 'note')).toEqual([]);
  });
});

describe.each(EXAMPLES)('what the page takes from the plan of %s', (_, batch) => {
  const plan = planOf(batch);

  it.each(MANNERS)('has a large number of its own in $units', (manner) => {
    const words = stopWords(describePlan(plan, manner));
    expect(words?.unit).toBe(manner.units === 'us' ? '°F' : '°C');
    const inUnit =
      manner.units === 'us' ? plan.target.readingC.value * 1.8 + 32 : plan.target.readingC.value;
    expect(Math.abs(Number(words?.reading) - inUnit)).toBeLessThanOrEqual(0.5);
    expect(Number(words?.low)).toBeLessThanOrEqual(Number(words?.reading));
    expect(Number(words?.high)).toBeGreaterThanOrEqual(Number(words?.reading));
  });

  it('has words for every step, and every caution somewhere', () => {
    const steps = stepLines(plan, describePlan(plan, METRIC), METRIC);
    expect(steps).toHaveLength(plan.steps.length);
    for (const { text } of steps) expect(text).not.toBe('');
    const said = [
      ...topCautions(plan, METRIC),
      ...otherCautions(plan, METRIC),
      ...steps.flatMap(({ cautions }) => cautions),
    ].map(({ id }) => id);
    expect(new Set(said)).toEqual(new Set(plan.cautions.map(({ id }) => id)));
    expect(topCautions(plan, METRIC).length).toBeLessThanOrEqual(3);
  });

  it('opens numbers that know their model', () => {
    for (const line of ['stop', 'weighs', 'makes', 'keeps'] as const) {
      const opened = openedFigures(line, plan, METRIC);
      expect(opened.length).toBeGreaterThan(1);
      for (const { figure, format } of opened) {
        expect(format(figure.value)).not.toContain('NaN');
        expect(plan.models[figure.model]).toBeDefined();
      }
    }
  });

  it('has a mass for the drawings, as dry as the plan’s', () => {
    const mass = massInPan(batch, plan);
    expect(mass?.massG).toBeCloseTo(plan.composition.chargeG.value, 1);
    expect(mass?.drySolidsMassFraction).toBeCloseTo(
      plan.composition.startDrySolidsMassFraction.value,
      4,
    );
  });
});

describe('a difference', () => {
  it('shows for four seconds', () => {
    const after = moved(unchanged(145), 143, 1_000);
    expect(differenceAt(after, 1_000)).toBe(-2);
    expect(differenceAt(after, 4_999)).toBe(-2);
    expect(differenceAt(after, 5_000)).toBeUndefined();
  });

  it('counts from where a burst of typing began', () => {
    const typing = moved(moved(unchanged(145), 14, 0), 143, 200);
    expect(differenceAt(typing, 300)).toBe(-2);
    expect(differenceAt(moved(typing, 145, 400), 500)).toBeUndefined();
    expect(differenceAt(moved(typing, 150, 9_000), 9_000)).toBe(7);
  });
});

describe('as code', () => {
  it('is six lines', () => {
    expect(programFor('harbour-lemon-drops.json').split('\n')).toHaveLength(6);
  });

  it('names the file after the batch and after nothing else', () => {
    expect(fileNameOf(example('harbour'))).toBe('harbour-lemon-drops.json');
    expect(fileNameOf({ ...example('harbour'), name: '../<script>é½' })).toBe('script-e1-2.json');
    expect(fileNameOf({ ...example('harbour'), name: '???' })).toBe('batch.json');
  });
});

it('plans within the library alone, so that what is shown is what a program gets', () => {
  const batch = example('harbour');
  expect(createPlanner().plan(batch).plan).toEqual(
    (planBatch(batch) as { readonly plan: unknown }).plan,
  );
});
