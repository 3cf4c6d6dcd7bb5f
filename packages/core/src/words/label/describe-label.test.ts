import { describe, expect, it } from 'vitest';
import { mixture } from '../../matter/mixture/mixture.js';
import { nutrition } from '../../models/nutrition/nutrition.js';
import type { ClaimId, LabelTest, StatementId } from '../../models/nutrition/types.js';
import { describeLabel } from './describe-label.js';
import { CLAIM_NAMES, CLAIM_QUANTITIES, STATEMENT_WORDS } from './label-words.js';

const drop = mixture([
  { ingredient: 'isomalt', massG: 75, drySolidsMassFraction: 1 },
  { ingredient: 'sorbitol', massG: 22, drySolidsMassFraction: 1 },
  { ingredient: 'citric-acid', massG: 1, drySolidsMassFraction: 1 },
  { ingredient: 'aspartame', massG: 0.2 },
  { ingredient: 'water', massG: 1.8 },
]);

describe('a label in sentences', () => {
  it('tells a claim as a test with its figure, never as a permission', () => {
    const { claims } = describeLabel(nutrition(drop, { rules: 'eu' }));
    expect(claims).toEqual([
      '‘sugar-free’ needs an analysis (sugars, g in 100 g: 0, at most 0.5): isomalt frees sugar in heat and acid, so the finished sweet decides.',
      '‘low in sugars’ needs an analysis (sugars, g in 100 g: 0, at most 5): isomalt frees sugar in heat and acid, so the finished sweet decides.',
      '‘with no added sugars’: these figures keep the limit (sugars and syrup solids, g in 100 g: 0, at most 0). That is a test, not a permission.',
      '‘low in energy’: no (energy, kcal in 100 g: 237, at most 40).',
      '‘reduced in energy’: these figures keep the limit (energy saved: 40 %, at least 30 %). That is a test, not a permission.',
    ]);
  });

  it('tells what the label has to say, and what goes over a limit', () => {
    const { statements, doses } = describeLabel(nutrition(drop, { rules: 'eu' }));
    expect(statements).toEqual([
      'Beside the name the label says that it is made with sweeteners.',
      '97 % of it is added sugar alcohols: above 10 % the label says that eating much of it may be laxative.',
      'The label says that aspartame is in it, a source of phenylalanine.',
    ]);
    expect(doses).toEqual(['Aspartame: 0.2 %, over the limit of 0.1 % these rules name.']);
    const us = describeLabel(nutrition(drop, { rules: 'us' }), { region: 'us' });
    expect(us.statements[0]).toBe(
      'Where 50 g of sorbitol may be eaten in a day, which is 227 g of this, the label says that it may be laxative.',
    );
    expect(us.claims[0]).toContain('the finished candy decides');
    expect(us.doses).toEqual(['Sorbitol: 22 %; these rules name a limit of 99 %.']);
  });

  it('always sends to the authority', () => {
    for (const region of ['world', 'us'] as const) {
      const { note } = describeLabel({ claims: [], statements: [], doses: [] }, { region });
      expect(note).toContain('check with your authority');
      expect(note).toContain('neither an analysis nor legal advice');
    }
  });

  it('has words for every claim, quantity and statement', () => {
    const test: LabelTest = {
      id: 'sugar-free',
      kind: 'needs-analysis',
      because: 'limit-lies-in-the-band',
      quantity: 'sugarsG',
      per: 'reference',
      passes: 'below',
      value: 0.07,
      limit: 0.5,
      rule: 'us-21-cfr-101-60',
      grade: 'secondary',
    };
    for (const quantity of Object.keys(CLAIM_QUANTITIES) as LabelTest['quantity'][]) {
      for (const id of Object.keys(CLAIM_NAMES) as ClaimId[]) {
        const [sentence = ''] = describeLabel({
          claims: [{ ...test, id, quantity }],
          statements: [],
          doses: [],
        }).claims;
        expect(sentence).toMatch(/^‘[a-z -]+’ needs an analysis \(.+\): the limit lies .+\.$/);
      }
    }
    for (const id of Object.keys(STATEMENT_WORDS) as StatementId[]) {
      const numbers = {
        polyolsMassFraction: 0.3,
        limitMassFraction: 0.1,
        limitG: 20,
        reachedByEatingG: 40,
      };
      const [sentence = ''] = describeLabel({
        claims: [],
        doses: [],
        statements: [
          { id, subject: 'mannitol', numbers, rule: 'us-21-cfr-180-25', grade: 'secondary' },
        ],
      }).statements;
      expect(sentence).toMatch(/^[A-Z0-9‘][^{}]*\.$/);
    }
  });

  it('never calls a sweet fit for an illness, nor safe', () => {
    const all = [
      ...(['eu', 'us'] as const).flatMap((rules) => {
        const { claims, statements, doses, note } = describeLabel(nutrition(drop, { rules }));
        return [...claims, ...statements, ...doses, note];
      }),
      ...Object.values(CLAIM_NAMES),
      ...Object.values(STATEMENT_WORDS),
    ].join(' ');
    expect(all).not.toMatch(/diabet|suitable|safe|healthy|guilt|low-glyc/i);
  });
});
