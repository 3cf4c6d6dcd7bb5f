import type { IngredientKind } from '../../matter/ingredients/types.js';
import type { Mixture } from '../../matter/mixture/types.js';
import type { WeighedLine } from './outcome.js';
import type { CautionId, Moment, PlannedCaution } from './types.js';

/** What decides which cautions belong to a batch. */
export type CautionsQuestion = {
  readonly lines: readonly WeighedLine[];
  readonly finished: Mixture;
  readonly stopC: number;
  readonly underVacuum: boolean;
  readonly polyolShare: number;
  readonly acidShare: number;
  readonly childShare: number | undefined;
};

type Rule = {
  readonly id: CautionId;
  readonly moment: Moment;
  /** The more harm it can do here, the higher: the first three stand at the top. */
  readonly harm: (question: CautionsQuestion) => number;
  /** Whether it belongs here at all; always, when left out. */
  readonly when?: (question: CautionsQuestion) => boolean;
};

/** EU law asks for the laxative note above this share of added polyols. */
const LAXATIVE_SHARE = 0.1;
/** From here on burns go deeper and plastics give way; a stop printed 165 belongs to it. */
const VERY_HOT_C = 164.5;
/** Above this the mouth suffers: common practice. */
const SOUR_SHARE = 0.02;

/** The cautions of this batch, most harmful first; at most three of them at the top. */
export function planCautions(question: CautionsQuestion): readonly PlannedCaution[] {
  return rules()
    .filter(({ when }) => when === undefined || when(question))
    .map(({ id, moment, harm }) => ({ id, moment, weight: harm(question) }))
    .sort((a, b) => b.weight - a.weight)
    .map(({ id, moment, weight }, index) => ({
      id,
      moment,
      atTop: index < 3 && weight > 0,
      numbers: numbersOf(id, question),
    }));
}

function numbersOf(
  id: CautionId,
  { finished, stopC, childShare }: CautionsQuestion,
): PlannedCaution['numbers'] {
  if (id === 'dogs-xylitol') return { xylitolMassFraction: speciesShare(finished, 'xylitol') };
  if (id === 'above-165' || id === 'hot-sugar') return { stopC };
  if (id === 'polyol-child' && childShare !== undefined) return { childShare };
  return {};
}

function rules(): readonly Rule[] {
  const always = (weight: number) => () => weight;
  return [
    { id: 'dogs-xylitol', moment: 'giving', harm: always(95), when: has('xylitol') },
    { id: 'honey-under-one', moment: 'giving', harm: always(85), when: uses('honey') },
    { id: 'hot-sugar', moment: 'hot', harm: ({ stopC }) => (stopC >= VERY_HOT_C ? 96 : 90) },
    { id: 'choking', moment: 'giving', harm: always(80) },
    { id: 'never-water-on-hot-mass', moment: 'hot', harm: always(70) },
    { id: 'above-165', moment: 'hot', harm: always(75), when: ({ stopC }) => stopC >= VERY_HOT_C },
    {
      id: 'vacuum-vessels',
      moment: 'hot',
      harm: always(88),
      when: ({ underVacuum }) => underVacuum,
    },
    {
      id: 'sweetener-heat',
      moment: 'hot',
      harm: always(60),
      when: (q) => uses('sucralose')(q) || uses('aspartame')(q),
    },
    { id: 'alcohol-flavour', moment: 'pouring', harm: always(78), when: uses('flavour-alcohol') },
    {
      id: 'glycol-flavour-vapour',
      moment: 'pouring',
      harm: always(50),
      when: uses('flavour-propylene-glycol'),
    },
    { id: 'strong-oils', moment: 'weighing', harm: always(55), when: uses('flavour-oil') },
    {
      id: 'late-liquids',
      moment: 'pouring',
      harm: always(58),
      when: ({ lines }) =>
        lines.some(
          ({ late, drySolids, record }) =>
            late && (drySolids.value < 0.9 || record.kind === 'flavour'),
        ),
    },
    { id: 'bicarbonate-foams', moment: 'hot', harm: always(52), when: uses('sodium-bicarbonate') },
    { id: 'burn-first-aid', moment: 'hot', harm: always(0) },
    { id: 'weighing-hot-pan', moment: 'hot', harm: always(40) },
    { id: 'pan-a-third-full', moment: 'hot', harm: always(30) },
    { id: 'no-glass-thermometer', moment: 'hot', harm: always(25) },
    { id: 'unattended', moment: 'hot', harm: always(45) },
    { id: 'mould-heat', moment: 'pouring', harm: always(35) },
    { id: 'acid-powder', moment: 'weighing', harm: always(33), when: ofKind('acid') },
    {
      id: 'sour-teeth',
      moment: 'giving',
      harm: always(20),
      when: ({ acidShare }) => acidShare > SOUR_SHARE,
    },
    {
      id: 'acid-in-isomalt',
      moment: 'pouring',
      harm: always(10),
      when: (q) => has('isomalt')(q) && ofKind('acid')(q),
    },
    {
      id: 'laxative',
      moment: 'giving',
      harm: always(48),
      when: ({ polyolShare }) => polyolShare > LAXATIVE_SHARE,
    },
    {
      id: 'polyol-child',
      moment: 'giving',
      harm: always(47),
      when: ({ childShare }) => childShare !== undefined,
    },
    { id: 'fructose-intolerance', moment: 'giving', harm: always(32) },
    { id: 'phenylalanine', moment: 'giving', harm: always(54), when: uses('aspartame') },
    { id: 'allergens', moment: 'buying', harm: always(46), when: ofKind('food', 'starch-syrup') },
    {
      id: 'sweetener-daily-limits',
      moment: 'giving',
      harm: always(14),
      when: (q) => ofKind('intense-sweetener')(q) || has('erythritol')(q),
    },
    {
      id: 'limits-are-local',
      moment: 'buying',
      harm: always(15),
      when: ofKind('colour', 'intense-sweetener', 'acid', 'flavour'),
    },
    {
      id: 'not-for-illness',
      moment: 'giving',
      harm: always(16),
      when: ({ polyolShare }) => polyolShare > LAXATIVE_SHARE,
    },
  ];
}

function uses(id: string): (question: CautionsQuestion) => boolean {
  return ({ lines }) => lines.some((line) => line.id === id && line.massG > 0);
}

function ofKind(...kinds: readonly IngredientKind[]): (question: CautionsQuestion) => boolean {
  return ({ lines }) => lines.some(({ record, massG }) => kinds.includes(record.kind) && massG > 0);
}

function has(species: string): (question: CautionsQuestion) => boolean {
  return ({ finished }) => speciesShare(finished, species) > 0;
}

/** Share of one species in the whole mass, 0–1. */
export function speciesShare(mixed: Mixture, species: string): number {
  return (
    mixed.solids.reduce(
      (sum, solid) => sum + (solid.kind === 'pure' && solid.species === species ? solid.massG : 0),
      0,
    ) / mixed.massG
  );
}
