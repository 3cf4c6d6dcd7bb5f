import { expect, it } from 'vitest';
import { fill } from './fill.js';
import { spelled } from './region.js';

const us = { region: 'us' } as const;

it('spells as the region does, capitals and all', () => {
  expect(spelled('Colours, moulds and flavour; 8 litres; jewellery, soya', us)).toBe(
    'Colors, molds and flavor; 8 liters; jewelry, soy',
  );
  expect(spelled('Colours and moulds', {})).toBe('Colours and moulds');
  expect(spelled('the mould', { units: 'us', region: 'world' })).toBe('the mould');
});

it('leaves keys and the words of the cook alone', () => {
  expect(fill('The mould bears {mouldMaxC}', { numbers: { mouldMaxC: 220 } }, us)).toContain(
    'The mold bears 220 °C',
  );
  expect(spelled('a mould, ‘my mould’', us)).toBe('a mold, ‘my mould’');
  expect(fill('It is {what}.', { names: { what: 'her flavour' } }, us)).toBe('It is her flavour.');
});
