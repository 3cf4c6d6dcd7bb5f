import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  applyChanges,
  type BatchDocument,
  type FormulaLine,
  type PlanDocument,
  planBatch,
  type Severity,
} from 'vitrose';
import { sensibleBatch } from '../documents/arbitrary-batch.js';

const ORDER: readonly (Severity | undefined)[] = [
  undefined,
  'note',
  'may-disappoint',
  'will-fail',
  'danger',
];

function planOf(batch: BatchDocument): PlanDocument | undefined {
  const result = planBatch(batch);
  return result.kind === 'plan' ? result.plan : undefined;
}

const elevationM = fc.double({ min: 0, max: 4_500, noNaN: true });
const sugarG = fc.double({ min: 100, max: 5_000, noNaN: true });
const syrupShare = fc.double({ min: 0.2, max: 0.6, noNaN: true });

const drops = fc
  .record({ sugarG, syrupShare, seaLevelC: fc.double({ min: 138, max: 158, noNaN: true }) })
  .map(
    ({ sugarG: sucrose, syrupShare: share, seaLevelC }): BatchDocument => ({
      format: 'vitrose.batch/1',
      formula: [
        { ingredient: 'sucrose', massG: sucrose },
        {
          ingredient: 'dried-glucose-syrup',
          dextroseEquivalent: 42,
          massG: (sucrose * share) / (1 - share),
        },
        { ingredient: 'water', massG: 0.5 * sucrose },
        { ingredient: 'citric-acid', when: 'off-heat', massG: 0.01 * sucrose },
      ],
      cook: { toSeaLevelC: seaLevelC },
    }),
  );

describe('a plan of drops', () => {
  it('stops cooler the higher the kitchen, at the same water', () => {
    fc.assert(
      fc.property(drops, elevationM, (batch, metres) => {
        const low = planOf(batch);
        const high = planOf({ ...batch, kitchen: { elevationM: metres + 10 } });
        if (low === undefined || high === undefined) throw new Error('refused');
        expect(high.target.readingC.value).toBeLessThan(low.target.readingC.value);
        expect(high.composition.baseMoistureMassFraction.value).toBeCloseTo(
          low.composition.baseMoistureMassFraction.value,
          9,
        );
      }),
    );
  });

  it('leaves less water the hotter it stops', () => {
    fc.assert(
      fc.property(drops, fc.double({ min: 0.5, max: 10, noNaN: true }), (batch, hotterK) => {
        if (!('toSeaLevelC' in batch.cook)) return;
        const cooler = planOf(batch);
        const hotter = planOf({
          ...batch,
          cook: { toSeaLevelC: batch.cook.toSeaLevelC + hotterK },
        });
        expect(hotter?.composition.baseMoistureMassFraction.value).toBeLessThan(
          cooler?.composition.baseMoistureMassFraction.value ?? 0,
        );
        expect(hotter?.keeping.glassTransitionC.value).toBeGreaterThan(
          cooler?.keeping.glassTransitionC.value ?? 0,
        );
      }),
    );
  });

  it('conserves mass: what goes in stays or boils off', () => {
    fc.assert(
      fc.property(sensibleBatch, (batch) => {
        const plan = planOf(batch);
        if (plan === undefined) return;
        const { chargeG, baseG, boilOffG } = plan.composition;
        expect(boilOffG.value + baseG.value).toBeCloseTo(chargeG.value, 6);
      }),
    );
  });

  it('scales every mass by the factor the batch is scaled by', () => {
    fc.assert(
      fc.property(drops, fc.double({ min: 0.2, max: 5, noNaN: true }), (batch, factor) => {
        const formula = batch.formula.map(
          (line): FormulaLine => ('massG' in line ? { ...line, massG: line.massG * factor } : line),
        );
        const one = planOf(batch);
        const many = planOf({ ...batch, formula });
        if (one === undefined || many === undefined) throw new Error('refused');
        for (const key of ['chargeG', 'baseG', 'boilOffG'] as const) {
          expect(many.composition[key].value / (factor * one.composition[key].value)).toBeCloseTo(
            1,
            9,
          );
        }
        expect(many.yield.finishedG.value / (factor * one.yield.finishedG.value)).toBeCloseTo(1, 9);
        expect(many.target.readingC.value).toBeCloseTo(one.target.readingC.value, 9);
      }),
    );
  });

  it('holds its stop inside its window', () => {
    fc.assert(
      fc.property(sensibleBatch, (batch) => {
        const plan = planOf(batch);
        if (plan === undefined) return;
        const {
          readingC,
          exactWindowReadingC: [low, high],
        } = plan.target;
        expect(low).toBeLessThanOrEqual(readingC.value + 1e-9);
        expect(high).toBeGreaterThanOrEqual(readingC.value - 1e-9);
      }),
    );
  });
});

describe('shares', () => {
  const share = fc.double({ min: 0.3, max: 0.8, noNaN: true });

  it('of dry solids come out of the cooked base, whatever the size', () => {
    fc.assert(
      fc.property(
        share,
        fc.integer({ min: 10, max: 500 }),
        fc.double({ min: 2, max: 20, noNaN: true }),
        (sucrose, count, massG) => {
          const plan = planOf({
            format: 'vitrose.batch/1',
            formula: [
              { ingredient: 'sucrose', shareOfDrySolids: sucrose },
              { ingredient: 'glucose-syrup', shareOfDrySolids: 1 - sucrose },
              { ingredient: 'water', shareOfIngredient: { ingredient: 'sucrose', share: 0.4 } },
              { ingredient: 'flavour-oil', shareOfFinished: 0.0025, when: 'off-heat' },
            ],
            cook: { toMoistureMassFraction: 0.025 },
            pieces: { count, massG, lossFraction: 0.03, breakFraction: 0.01 },
          });
          if (plan === undefined) throw new Error('refused');
          const [sugar, syrup, water, oil] = plan.formula;
          const dry = (sugar?.drySolidsG ?? 0) + (syrup?.drySolidsG ?? 0);
          expect((sugar?.drySolidsG ?? 0) / dry).toBeCloseTo(sucrose, 9);
          expect((water?.massG.value ?? 0) / (sugar?.massG.value ?? 1)).toBeCloseTo(0.4, 9);
          expect((oil?.massG.value ?? 0) / plan.yield.finishedG.value).toBeCloseTo(0.0025, 9);
          expect(plan.composition.moistureMassFraction.value).toBeCloseTo(0.025, 9);
          expect(plan.yield.finishedG.value).toBeCloseTo((count * massG) / (0.97 * 0.99), 6);
          expect(plan.yield.pieces?.value).toBe(count);
        },
      ),
    );
  });

  it('that leave room are filled up by the lines in grams', () => {
    fc.assert(
      fc.property(share, sugarG, (syrup, grams) => {
        const plan = planOf({
          format: 'vitrose.batch/1',
          formula: [
            { ingredient: 'sucrose', massG: grams },
            { ingredient: 'glucose-syrup', shareOfDrySolids: syrup },
            { ingredient: 'water', massG: grams / 2 },
          ],
          cook: { toSeaLevelC: 148 },
        });
        const [sugar, glucose] = plan?.formula ?? [];
        const dry = (sugar?.drySolidsG ?? 0) + (glucose?.drySolidsG ?? 0);
        expect((glucose?.drySolidsG ?? 0) / dry).toBeCloseTo(syrup, 9);
        expect(sugar?.massG.value).toBe(grams);
      }),
    );
  });
});

describe('remedies', () => {
  it('make their advice go away or weaker', () => {
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(sensibleBatch, (batch) => {
        const plan = planOf(batch);
        for (const { code, severity, remedies, path } of plan?.advice ?? []) {
          for (const remedy of remedies) {
            seen.set(`${code}:${remedy.code}`, (seen.get(`${code}:${remedy.code}`) ?? 0) + 1);
            const better = planBatch(applyChanges(batch, remedy.changes));
            const where = `${code} → ${remedy.code} on ${JSON.stringify(batch)}`;
            if (better.kind === 'refused')
              throw new Error(`${where}: refused ${JSON.stringify(better.problems)}`);
            const left = better.plan.advice.find(
              (other) => other.code === code && other.path === path,
            );
            if (ORDER.indexOf(left?.severity) >= ORDER.indexOf(severity))
              throw new Error(`${where}: still ${left?.severity}`);
          }
        }
      }),
      { numRuns: 1_500 },
    );
    expect(seen.size).toBeGreaterThan(12);
  });

  it('of a refused batch make it a plan', () => {
    const refusedFor = (wantedC: number): BatchDocument => ({
      format: 'vitrose.batch/1',
      formula: [
        { ingredient: 'isomalt', massG: 800 },
        { ingredient: 'xylitol', massG: 200 },
        { ingredient: 'water', massG: 250 },
      ],
      cook: { toGlassTransitionC: wantedC },
    });
    const result = planBatch(refusedFor(37));
    if (result.kind !== 'refused') throw new Error('a glass point beyond the knee was planned');
    const [problem] = result.problems;
    expect(problem?.code).toBe('beyond-the-knee');
    expect(problem?.remedies?.map(({ code }) => code)).toEqual([
      'stop-at-the-knee',
      'less-xylitol',
    ]);
    for (const { changes } of problem?.remedies ?? []) {
      expect(planBatch(applyChanges(refusedFor(37), changes)).kind).toBe('plan');
    }
  });
});
