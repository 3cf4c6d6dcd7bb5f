import { describe, expect, it } from 'vitest';
import { type BatchTarget, INGREDIENT_IDS, planBatch } from 'vitrose';

const targets: readonly BatchTarget[] = [
  { toSeaLevelC: 120 },
  { toStage: 'hard-crack' },
  { toStage: 'brown-liquid' },
  { toMoistureMassFraction: 0.03 },
  { toGlassTransitionC: 30 },
];

describe('every ingredient alone with water, and beside sugar', () => {
  it.each(INGREDIENT_IDS)('%s gives a plan or problems, whatever is asked', (id) => {
    for (const cook of targets) {
      const alone = planBatch({
        format: 'vitrose.batch/1',
        formula: [
          { ingredient: id, massG: 300 },
          { ingredient: 'water', massG: 200 },
        ],
        cook,
      });
      expect(['plan', 'refused']).toContain(alone.kind);
    }
    const beside = planBatch({
      format: 'vitrose.batch/1',
      formula: [
        { ingredient: 'sucrose', massG: 300 },
        { ingredient: 'glucose-syrup', massG: 200 },
        { ingredient: id, massG: 5 },
        { ingredient: 'water', massG: 200 },
      ],
      cook: { toSeaLevelC: 148 },
    });
    expect(beside.kind).toBe('plan');
  });
});
