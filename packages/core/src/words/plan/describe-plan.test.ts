import { describe, expect, it } from 'vitest';
import type { PlanDocument, PlannedTarget } from '../../job/plan/types.js';
import { describePlan } from './describe-plan.js';
import { ISOMALT_DROPS_PAGE, LEMON_DROPS_PAGE, LEMON_DROPS_US } from './golden-pages.fixture.js';
import { ISOMALT_DROPS, LEMON_DROPS } from './plans.fixture.js';
import type { DescribedPlan } from './types.js';

function answers(
  plan: PlanDocument,
  options: Parameters<typeof describePlan>[1] = {},
): readonly string[] {
  return describePlan(plan, options).answer.map(({ label, text }) => `${label} ${text}`);
}

function section(described: DescribedPlan, id: string): string {
  return described.sections.find((one) => one.id === id)?.lines.join('\n') ?? '';
}

function withTarget(target: Partial<PlannedTarget>): PlanDocument {
  return { ...LEMON_DROPS, target: { ...LEMON_DROPS.target, ...target } };
}

function withKitchen(kitchen: Partial<PlanDocument['kitchen']>): PlanDocument {
  return { ...LEMON_DROPS, kitchen: { ...LEMON_DROPS.kitchen, ...kitchen } };
}

describe('the page', () => {
  it('of lemon drops at 1 500 m reads like this', () => {
    expect(describePlan(LEMON_DROPS).text).toBe(LEMON_DROPS_PAGE);
  });

  it('of isomalt drops reads like this', () => {
    expect(describePlan(ISOMALT_DROPS).text).toBe(ISOMALT_DROPS_PAGE);
  });

  it('in US units reads like this', () => {
    const { text } = describePlan(LEMON_DROPS, { units: 'us' });
    const part = (from: string, to: string) => text.slice(text.indexOf(from), text.indexOf(to));
    expect(
      text.slice(0, text.indexOf('Before anything')) +
        part('Formula', 'What it is made of') +
        part('Against the clock', 'What comes out') +
        part('How it keeps', 'Buying, giving'),
    ).toBe(LEMON_DROPS_US);
  });

  it('fits a terminal: 78 columns, plain signs only, nothing left open', () => {
    for (const plan of [LEMON_DROPS, ISOMALT_DROPS]) {
      for (const units of ['metric', 'us'] as const) {
        const { text } = describePlan(plan, { units });
        for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(78);
        expect(text).not.toContain('\u001b');
        expect(text).not.toMatch(/\p{Extended_Pictographic}|\u00a0| $|undefined|NaN|[{}|]/mu);
      }
    }
  });
});

describe('the first answer', () => {
  it('is five lines', () => {
    expect(answers(LEMON_DROPS)).toEqual([
      'Stop at 143 °C · 289 °F on your thermometer, between 141 and 144.',
      'Pan weighs 1 172 g with everything.',
      'Makes 60 pieces of 5.8 g, in four fills of 15.',
      'Keeps hard up to about 43 °C · 109 °F; wrap within half an hour.',
      'Watch The probe is not covered. The mass stands 13 mm deep at the stop; the probe needs 25 mm. [Take a pan 11.7 cm wide]',
    ]);
  });

  it('opens only what is there', () => {
    for (const plan of [LEMON_DROPS, ISOMALT_DROPS]) {
      const { answer, sections } = describePlan(plan);
      const ids = sections.map(({ id }) => id);
      for (const line of answer) for (const id of line.opens ?? []) expect(ids).toContain(id);
    }
  });

  it('puts °F first and its window on that scale in US units', () => {
    expect(answers(LEMON_DROPS, { units: 'us' })[0]).toBe(
      'Stop at 290 °F · 143 °C on your thermometer, between 286 and 291.',
    );
  });

  it('shows tenths only where whole degrees would close the window', () => {
    expect(answers(ISOMALT_DROPS)[0]).toContain(
      '160.9 °C · 321.6 °F on your thermometer, between 159.7 and 162.3.',
    );
    expect(answers(withTarget({ windowReadingC: [141, 144] }))[0]).toContain('143 °C');
    expect(answers(withTarget({ windowReadingC: [141.5, 144.4] }))[0]).toContain('143.1 °C');
  });

  it('says when the number rests on the model, and only then', () => {
    const rests = 'This one rests on the model. Weigh the pan as well.';
    for (const asked of ['moisture', 'glass-transition'] as const)
      expect(answers(withTarget({ asked }))[0]).toContain(rests);
    for (const asked of ['sea-level', 'stage'] as const)
      expect(answers(withTarget({ asked }))[0]).not.toContain(rests);
  });

  it('watches the worst thing, whatever the order of the plan', () => {
    const [note, disappointing] = LEMON_DROPS.advice;
    const danger = {
      code: 'target-above-mould' as const,
      severity: 'danger' as const,
      numbers: { pourC: 150, mouldMaxC: 120 },
      remedies: [],
    };
    expect(
      answers({
        ...LEMON_DROPS,
        advice: [note, disappointing, danger].filter((one) => one !== undefined),
      })[4],
    ).toBe(
      'Watch Danger: Too hot for the mould. It is poured at 150 °C (302 °F); the mould bears 120 °C (248 °F).',
    );
    expect(answers({ ...LEMON_DROPS, advice: [] })[4]).toBe(
      'Watch the last degrees: they come fast. Turn the heat down early and stay with the pan.',
    );
  });

  it('counts fills', () => {
    const made = (full: number, rest: number) =>
      answers({
        ...LEMON_DROPS,
        yield: { ...LEMON_DROPS.yield, pours: { full, rest, cavities: 15 } },
      })[2];
    expect(made(1, 0)).toContain('in one fill of 15.');
    expect(made(4, 3)).toContain('in four fills of 15 and 3 more.');
    expect(made(0, 9)).toContain('in 9 of 15 cavities.');
  });
});

describe('the window', () => {
  const told = (plan: PlanDocument, units: 'metric' | 'us') => {
    const described = describePlan(plan, { units });
    const steps = /between ([\d.]+) and ([\d.]+)\. Heat/.exec(section(described, 'steps'));
    const answer = /between ([\d.]+) and ([\d.]+)\./.exec(described.answer[0]?.text ?? '');
    const opened = section(described, 'kitchen').split('\n');
    return { steps: steps?.slice(1), answer: answer?.slice(1), opened };
  };

  it('is the same two numbers wherever it stands', () => {
    for (const plan of [LEMON_DROPS, ISOMALT_DROPS]) {
      for (const units of ['metric', 'us'] as const) {
        const { steps, answer = [], opened } = told(plan, units);
        expect(answer).toHaveLength(2);
        expect(steps).toEqual(answer);
        const [low, high] = answer;
        const line = opened.find((text) => /^(Outside|Below)/.test(text));
        expect(line).toMatch(
          new RegExp(`(Outside ${low} to ${high},|Below ${low},.*above ${high},)`),
        );
      }
    }
  });

  it('never ends before the stop it belongs to', () => {
    const atTheEdge = withTarget({
      readingC: { value: 142.9, band: [142, 144], model: 'thermometer' },
      windowReadingC: [143, 148],
      exactWindowReadingC: [142.9, 148.3],
    });
    expect(answers(atTheEdge)[0]).toContain('143 °C · 289 °F on your thermometer, between 143 and');
    expect(answers(atTheEdge, { units: 'us' })[0]).toContain(
      '289 °F · 143 °C on your thermometer, between 289 and 298.',
    );
  });
});

describe('trust', () => {
  it('is never in the first answer, and stands with its word where a number is opened', () => {
    for (const line of answers(LEMON_DROPS))
      expect(line).not.toMatch(/estimate|worked out|memory|practice|print|assumption/);
    const described = describePlan(LEMON_DROPS);
    expect(section(described, 'composition')).toContain(
      '2.9 % water left (2.1 % to 3.8 %, worked out here)',
    );
    expect(section(described, 'yield')).toContain('(38 g to 60 g, common practice)');
  });
});

describe('the kitchen', () => {
  const lines = (plan: PlanDocument, options = {}) =>
    section(describePlan(plan, options), 'kitchen');
  const shift = (value: number) => ({
    shiftK: { value, band: [value, value] as const, model: 'same-solids' as const },
  });

  it('says how much cooler syrup boils, from one degree on', () => {
    expect(lines(withTarget(shift(-4.9)))).toContain(
      "In your kitchen syrup boils about five degrees cooler, so this is the recipe's 148.",
    );
    expect(lines(withTarget(shift(-1)))).toContain('about one degree cooler');
    expect(lines(withTarget(shift(1.4)))).toContain('about one degree hotter');
    expect(lines(withTarget(shift(-0.9)))).toContain(
      "Your kitchen moves the recipe's 148 by less than a degree.",
    );
    expect(lines(withTarget(shift(-4.9)), { units: 'us' })).toContain(
      "about nine degrees cooler, so this is the recipe's 298.",
    );
    expect(lines(withTarget({ ...shift(-4.9), asked: 'stage', stage: 'hard-crack' }))).toContain(
      'so this is the hard crack of a chart, 148 for this mix at sea level.',
    );
  });

  it('rounds up how much the cause of a reading matters', () => {
    const cause = (causeMattersK: number, options = {}) =>
      lines(withKitchen({ from: 'boiling-water-reading', causeMattersK }), options);
    expect(cause(0.4)).toContain(
      'Height, weather or thermometer: the stop is the same within about 1 °C.',
    );
    expect(cause(1)).toContain('within about 1 °C.');
    expect(cause(2.1)).toContain('within about 3 °C.');
    expect(cause(2.1, { units: 'us' })).toContain('within about 4 °F.');
    expect(lines(withKitchen({ from: 'elevation', causeMattersK: 2.1 }))).not.toContain(
      'Height, weather',
    );
  });

  it('never calls a thermometer faulty unless a second one vouches for the water', () => {
    expect(lines(LEMON_DROPS)).toContain('shows 0.8 °C more: thermometer and weather together');
    expect(lines(withKitchen({ differenceIsTheThermometers: true }))).toContain(
      "shows 0.8 °C more: that is the thermometer's own",
    );
  });

  it('tells of both ends of a crooked thermometer, and what it shows at the stop', () => {
    const figure = (value: number) => ({
      value,
      band: [value, value] as const,
      model: 'water' as const,
    });
    const crooked = {
      ...withTarget({ correction: 'scale', hereC: figure(147.2), readingC: figure(142.97) }),
      kitchen: {
        ...LEMON_DROPS.kitchen,
        waterBoilsAtC: figure(99.2),
        readingDifferenceK: figure(-2.2),
        differenceIsTheThermometers: true,
      },
    };
    // (97 − 2) / 99.2 for each degree, from 2 in ice: 142.97 at 147.2.
    expect(lines(crooked)).toContain(
      'In melting ice your thermometer shows 2 °C (35.6 °F), in boiling water 97 °C (206.6 °F).\nIts scale is corrected at both ends: when it shows 143 °C (289 °F), the mass is at 147 °C (297 °F).',
    );
    expect(lines(crooked)).not.toContain('weather');
    const unsure = {
      ...crooked,
      kitchen: { ...crooked.kitchen, differenceIsTheThermometers: false },
    };
    expect(lines(unsure)).toContain('In boiling water that is thermometer and weather together.');
  });

  it('tells of an ice reading that stands alone', () => {
    const iced = {
      ...withTarget({ correction: 'shift' }),
      kitchen: { ...LEMON_DROPS.kitchen, readingDifferenceK: undefined },
    };
    expect(lines(iced)).toContain(
      'In melting ice your thermometer shows 0.8 °C (33.4 °F), and the stop allows for it.',
    );
  });

  it('names early hard crack as what it is', () => {
    expect(lines(LEMON_DROPS)).toContain('Early hard crack, where most boiled drops are stopped');
    expect(lines(ISOMALT_DROPS)).not.toContain('lear liquid');
  });

  it('says that nobody has measured isomalt', () => {
    expect(lines(ISOMALT_DROPS)).toContain(
      'Nobody has published a boiling curve for isomalt. Take 160.9 as a place to start and judge the first drop.',
    );
    expect(lines(LEMON_DROPS)).not.toContain('isomalt');
  });
});

describe('cautions', () => {
  it('stand at the top three at most', () => {
    const many = LEMON_DROPS.cautions.map((planned) => ({ ...planned, atTop: true }));
    expect(describePlan({ ...LEMON_DROPS, cautions: many }).sections[0]?.lines).toHaveLength(3);
  });

  it('of a plan are each said in full once, and named wherever the hand is', () => {
    for (const plan of [LEMON_DROPS, ISOMALT_DROPS]) {
      const described = describePlan(plan);
      const all = ['cautions', 'steps', 'more-cautions']
        .map((id) => section(described, id))
        .join('\n');
      for (const { id } of plan.cautions) {
        const inFull = describePlan({
          ...plan,
          steps: [],
          cautions: [{ id, moment: 'hot', atTop: true, numbers: {} }],
        });
        const title = section(inFull, 'cautions').split('. ')[0] ?? '';
        expect(all).toContain(title);
      }
    }
    const text = describePlan(ISOMALT_DROPS)
      .sections.flatMap(({ lines }) => lines)
      .join('\n');
    expect(text.match(/Xylitol \(birch sugar\) can kill a dog/g)).toHaveLength(3);
    expect(text.match(/do not wait for signs/g)).toHaveLength(1);
  });

  it('stay when there are more than three at the top', () => {
    const many = LEMON_DROPS.cautions.map((planned) => ({ ...planned, atTop: true }));
    const described = describePlan({ ...LEMON_DROPS, steps: [], cautions: many });
    const all = `${section(described, 'cautions')}\n${section(described, 'more-cautions')}`;
    expect(all.split('\n')).toHaveLength(many.length);
  });
});

describe('the sweetness', () => {
  it('says what it leaves out', () => {
    const tasting = (...leavesOut: readonly string[]) =>
      section(
        describePlan({ ...LEMON_DROPS, taste: { ...LEMON_DROPS.taste, leavesOut } }),
        'yield',
      );
    expect(tasting()).toContain('as sweet as sugar (0.72');
    expect(tasting('acesulfame-k')).toContain('sugar, without what acesulfame-K adds (0.72');
    expect(tasting('acesulfame-k', 'sucralose')).toContain('acesulfame-K and sucralose add (0.72');
  });
});

it('speaks and spells as the United States do, but leaves the cook’s words', () => {
  const { text } = describePlan(
    { ...LEMON_DROPS, name: 'Mould-blown colour drops' },
    { units: 'us' },
  );
  expect(text).toContain('Mould-blown colour drops');
  expect(text.replace('Mould-blown colour', '')).not.toMatch(
    /mould|colour|flavour|litre|jewellery|soya|sulphite|\bhob\b|\bsweets\b|finished sweet|degrees Celsius/,
  );
});

it('says hard candy where that is the word', () => {
  const unnamed = { ...LEMON_DROPS, name: undefined };
  expect(describePlan(unnamed, { region: 'us' }).text.split('\n')[0]).toBe('Hard candy');
  expect(describePlan(unnamed).text.split('\n')[0]).toBe('Boiled sweets');
});
