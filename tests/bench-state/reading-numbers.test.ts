import { describe, expect, it } from 'vitest';
import { readNumber } from '../../site/src/bench/state/read/number.js';
import { readQuantity, writeQuantity } from '../../site/src/bench/state/read/quantity.js';
import { stepped } from '../../site/src/bench/state/step.js';

describe('a number as people type it', () => {
  it.each([
    ['95,8', 95.8, ''],
    ['95.8', 95.8, ''],
    ['½', 0.5, ''],
    ['1 1/2', 1.5, ''],
    ['1-1/2 cups', 1.5, 'cups'],
    ['1½', 1.5, ''],
    ['1 ½ cup', 1.5, 'cup'],
    ['3/4', 0.75, ''],
    ['⅔ cup', 2 / 3, 'cup'],
    ['12 oz', 12, 'oz'],
    ['300F', 300, 'F'],
    ['1 500', 1500, ''],
    ['1 500 m', 1500, 'm'],
    ['1\u202f172,5 g', 1172.5, 'g'],
    ['1.234,5', 1234.5, ''],
    ['1,234.5', 1234.5, ''],
    ['−3', -3, ''],
    ['-3', -3, ''],
    [',5', 0.5, ''],
    ['2 1/4 lb', 2.25, 'lb'],
  ])('%s', (text, value, rest) => {
    const number = readNumber(text);
    expect(number?.values[0]).toBeCloseTo(value, 12);
    expect(number?.rest).toBe(rest);
  });

  it('keeps both meanings of a comma with three digits after it', () => {
    expect(readNumber('1,500')?.values).toEqual([1500, 1.5]);
    expect(readNumber('1.500')?.values).toEqual([1.5]);
    expect(readNumber('0,125')?.values).toEqual([0.125]);
  });

  it.each(['', 'a few', 'some sugar', '1/0', '.', '1,2,3'])('does not make one of ‘%s’', (text) => {
    expect(readNumber(text)).toBeUndefined();
  });

  it.each(['__proto__', 'constructor', '9'.repeat(400)])('is not disturbed by %s', (text) => {
    expect(() => readNumber(text)).not.toThrow();
  });
});

const stop = { quantity: 'temperature', limits: [100, 230], units: 'metric' } as const;
const height = { quantity: 'elevation', limits: [-430, 9000], units: 'metric' } as const;
const humidity = { quantity: 'percent', limits: [0, 1], units: 'metric' } as const;

describe('a temperature', () => {
  it('is taken in the unit of the page, or in its own', () => {
    expect(readQuantity('148', stop)).toMatchObject({ kind: 'read', value: 148 });
    expect(readQuantity('300 F', stop)).toMatchObject({
      kind: 'read',
      value: 148.888888889,
      echo: '148.9 °C · 300 °F',
    });
    expect(readQuantity('298,4 °f', { ...stop, units: 'us' })).toMatchObject({ value: 148 });
  });

  it('that is impossible here and right in the other unit is offered, not taken', () => {
    expect(readQuantity('300', stop)).toEqual({
      kind: 'unread',
      reason: '300 °C? Probably 300 °F (148.9 °C).',
      offers: [{ label: 'Use °F', text: '300 °F' }],
    });
    expect(readQuantity('148', { ...stop, units: 'us' })).toMatchObject({
      kind: 'unread',
      reason: '148 °F? Probably 148 °C (298.4 °F).',
    });
  });

  it('that is impossible in both is refused with its limits', () => {
    expect(readQuantity('9000', stop)).toEqual({
      kind: 'unread',
      reason: '9000 °C is out of reach: from 100 °C · 212 °F to 230 °C · 446 °F.',
      offers: [],
    });
  });

  it('takes what it offers', () => {
    for (let typed = 231; typed < 446; typed += 1) {
      const reading = readQuantity(String(typed), stop);
      const [offer] = reading.kind === 'unread' ? reading.offers : [];
      expect(readQuantity(offer?.text ?? '', stop).kind).toBe('read');
    }
  });
});

describe('an altitude', () => {
  it('is read in feet where feet are written', () => {
    expect(readQuantity('5000 ft', height)).toMatchObject({ value: 1524 });
    expect(readQuantity("5,000'", height)).toMatchObject({ value: 1524 });
    expect(readQuantity('1,500', height)).toMatchObject({ value: 1500 });
    expect(readQuantity('1.5 km', height)).toMatchObject({ value: 1500 });
  });

  it('above every kitchen is probably in feet', () => {
    expect(readQuantity('12000', height)).toMatchObject({
      kind: 'unread',
      offers: [{ label: 'Use ft', text: '12000 ft' }],
    });
  });
});

describe('a share', () => {
  it('is in per cent on a page', () => {
    expect(readQuantity('55', humidity)).toMatchObject({ value: 0.55, echo: '55 %' });
    expect(readQuantity('55 %', humidity)).toMatchObject({ value: 0.55 });
  });

  it('that looks like a fraction is taken as it stands, and the other is offered', () => {
    expect(readQuantity('0.55', humidity)).toMatchObject({
      value: 0.0055,
      offers: [{ label: 'Use 55 %', text: '55 %' }],
    });
  });
});

it('counts whole pieces only', () => {
  const pieces = { quantity: 'count', limits: [1, 1e6], units: 'metric', whole: true } as const;
  expect(readQuantity('60', pieces)).toMatchObject({ value: 60 });
  expect(readQuantity('59.5', pieces)).toMatchObject({
    kind: 'unread',
    offers: [{ text: '59' }, { text: '60' }],
  });
});

it('says what it does not know', () => {
  expect(readQuantity('a lot', stop)).toMatchObject({ kind: 'unread' });
  expect(readQuantity('148 bananas', stop)).toEqual({
    kind: 'unread',
    reason: '‘bananas’ is no unit for this. Known: °C, °F.',
    offers: [],
  });
  expect(readQuantity('  ', stop)).toEqual({ kind: 'empty' });
});

it('writes what it reads', () => {
  for (const units of ['metric', 'us'] as const) {
    for (let value = 100; value <= 230; value += 0.7) {
      const text = writeQuantity(value, { quantity: 'temperature', units });
      const back = readQuantity(text, { ...stop, units });
      expect(back.kind === 'read' && Math.abs(back.value - value)).toBeLessThan(0.06);
    }
  }
});

describe('the arrow keys', () => {
  const press = (key: string, shiftKey = false) => ({
    key,
    shiftKey,
    altKey: false,
    ctrlKey: false,
    metaKey: false,
  });

  it('step by one, with Shift by a tenth, and keep the unit', () => {
    expect(stepped('148', press('ArrowUp'), 1)).toBe('149');
    expect(stepped('148', press('ArrowDown', true), 1)).toBe('147.9');
    expect(stepped('95,8', press('ArrowUp', true), 1)).toBe('95.9');
    expect(stepped('300 F', press('ArrowUp'), 1)).toBe('301 F');
  });

  it('leave everything else alone', () => {
    expect(stepped('148', press('5'), 1)).toBeUndefined();
    expect(stepped('a lot', press('ArrowUp'), 1)).toBeUndefined();
    expect(stepped('148', { ...press('ArrowUp'), altKey: true }, 1)).toBeUndefined();
  });
});
