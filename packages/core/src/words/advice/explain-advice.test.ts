import { describe, expect, it } from 'vitest';
import type { Advice, AdviceCode, RemedyCode } from '../../job/advice/types.js';
import { explainAdvice, remedyLabel } from './explain-advice.js';

function told(code: AdviceCode, more: Partial<Advice> = {}, options = {}): string {
  const advice: Advice = { code, severity: 'note', numbers: {}, remedies: [], ...more };
  const { title, text } = explainAdvice(advice, options);
  return `${title}. ${text}`.trim();
}

describe('advice of the pan and of keeping', () => {
  it('on a hob that never gets there', () => {
    expect(told('never-boils')).toBe(
      'This hob never gets there. Before the stop the pan loses as much heat to the room as the hob gives it.',
    );
    expect(told('never-boils', {}, { region: 'us' })).toContain('as the stove gives it.');
  });

  it('on a thermometer that is slow', () => {
    const numbers = { lagK: 6.2, rateKPerMin: 24.8, lagTurnedDownK: 1.5 };
    expect(told('reading-lags', { numbers })).toBe(
      'Your thermometer is slow for this flame. At full heat it climbs 25 °C a minute at the stop, and the reading is 6 °C behind. Turned down it is 1.5 °C.',
    );
    expect(told('reading-lags', { numbers }, { units: 'us' })).toContain(
      'climbs 45 °F a minute at the stop, and the reading is 11 °F behind. Turned down it is 2.7 °F.',
    );
    expect(told('reading-lags')).toBe('Your thermometer is slow for this flame.');
  });

  it('on acid in the boil', () => {
    const numbers = { invertedFraction: 0.43, costsK: 9.6 };
    expect(told('acid-too-early', { numbers })).toBe(
      'Acid in the boil softens it. About 43 % of the sucrose splits into invert sugar before the stop: the mass yellows, and the sweet softens 10 °C lower. Acid goes in last, off the heat.',
    );
    expect(told('acid-too-early', { numbers }, { units: 'us' })).toContain(
      'the candy softens 17 °F lower',
    );
    expect(told('acid-too-early')).toBe(
      'Acid in the boil softens it. Acid goes in last, off the heat.',
    );
  });

  it('on more water than the sugar needs', () => {
    const numbers = { waterG: 280, neededWaterG: 75, longerMin: 7.2 };
    expect(told('much-water', { numbers })).toBe(
      'More water than the sugar needs. There is 280 g of water; 75 g dissolves the sugar. Boiling the rest away takes about 7 minutes.',
    );
    const { longerMin: _, ...untimed } = numbers;
    expect(told('much-water', { numbers: untimed })).not.toContain('Boiling');
    expect(told('much-water')).toBe('More water than the sugar needs.');
  });

  it.each([
    ['process', 'while you work it'],
    ['wrapped', 'in the store, wrapped'],
    ['open', 'bare in the air of the store'],
  ])('on graining, and where it would: %s', (where, words) => {
    const more = { numbers: { doctorShare: 0.12 }, names: { where } };
    expect(told('may-grain', more)).toBe(
      `It may grain. That would be ${words}. The doctor (what keeps it from graining) is 12 % of the solids. An estimate: the time is good to a factor of ten.`,
    );
    expect(told('may-grain', { ...more, severity: 'may-disappoint' })).toMatch(
      /^It is near certain to grain\. That/,
    );
  });

  it('on graining without its numbers', () => {
    expect(told('may-grain')).toBe(
      'It may grain. An estimate: the time is good to a factor of ten.',
    );
  });

  it('on what is less sweet than sugar', () => {
    expect(told('less-sweet-than-sugar', { numbers: { sweetness: 0.62 } })).toMatch(
      /^Less sweet than sugar\. About 0\.62 times as sweet as sugar\. If you want more, start with half/,
    );
    expect(told('less-sweet-than-sugar')).not.toContain('times');
    expect(told('less-sweet-than-sugar')).toContain('limits are local');
  });
});

describe('its buttons', () => {
  const label = (code: RemedyCode, numbers: Readonly<Record<string, number>> = {}, options = {}) =>
    remedyLabel({ code, changes: [], numbers }, options);

  it.each<[RemedyCode, Record<string, number>, string, string]>([
    ['stronger-hob', { powerW: 2400 }, 'Take a hob of 2 400 W', 'Take a stove of 2 400 W'],
    ['quicker-thermometer', { readsInS: 4 }, 'Take a thermometer that settles in 4 seconds', ''],
    ['acid-at-the-end', {}, 'Put the acid in last, off the heat', ''],
    ['less-water', { waterG: 90 }, 'Take 90 g of water', 'Take 90 g (3.2 oz) of water'],
    ['powder-for-syrup', {}, 'Take dried glucose syrup', 'Take dried corn syrup'],
    ['syrup-for-powder', {}, 'Take liquid glucose syrup', 'Take liquid corn syrup'],
    ['do-not-stir', {}, 'Do not stir after the boil', ''],
    ['wrap-it', {}, 'Seal each piece in a film', ''],
    ['add-acesulfame', { acesulfameG: 0.84 }, 'Add 0.8 g of acesulfame-K', ''],
  ])('say what will change: %s', (code, numbers, world, us) => {
    expect(label(code, numbers)).toBe(world);
    expect(label(code, numbers, { units: 'us' })).toBe(us === '' ? world : us);
  });

  it.each<[RemedyCode, string]>([
    ['stronger-hob', 'Stronger hob'],
    ['quicker-thermometer', 'Quicker thermometer'],
    ['less-water', 'Less water'],
    ['add-acesulfame', 'Add acesulfame'],
  ])('fall back on their code without the number: %s', (code, words) => {
    expect(label(code)).toBe(words);
  });
});
