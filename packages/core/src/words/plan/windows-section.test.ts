import { describe, expect, it } from 'vitest';
import type { PlanDocument } from '../../job/plan/types.js';
import { WINDOW_WORDS } from '../names/cook-words.js';
import { LEMON_DROPS } from './plans.fixture.js';
import { windowLines } from './windows-section.js';

function poured(pour: Partial<PlanDocument['pour']>): string {
  const plan = { ...LEMON_DROPS, windows: [], pour: { ...LEMON_DROPS.pour, ...pour } };
  return windowLines(plan, {}).join('\n');
}

describe('the working windows', () => {
  it('are told from the hot end down, open where they have no end', () => {
    expect(windowLines(LEMON_DROPS, {})).toEqual([
      'Runs into moulds by itself from 122 °C (252 °F) up.',
      'Can be poured from 122 °C (252 °F) down to 106 °C (223 °F).',
      'Can be folded and rolled to ropes from 93 °C (199 °F) down to 83 °C (181 °F).',
      'Can be pulled from 93 °C (199 °F) down to 64 °C (147 °F).',
      'Can be cut and stamped from 83 °C (181 °F) down to 64 °C (147 °F).',
      'Sticks to what it touches from 62 °C (144 °F) up.',
      'Comes out of the mould at 43 °C (109 °F) or below.',
      'Can be wrapped at 33 °C (91 °F) or below.',
      'In this pan it pours for about 9 minutes (6 to 13, worked out here), enough to fill the mould five times.',
    ]);
  });

  it('have words for all that can be done', () => {
    const windows = (Object.keys(WINDOW_WORDS) as (keyof typeof WINDOW_WORDS)[]).map((id) => ({
      id,
      highC: 90,
    }));
    const lines = windowLines({ ...LEMON_DROPS, windows }, {});
    for (const line of lines.slice(0, windows.length))
      expect(line).toMatch(/^[A-Z][a-z ]+ at 90 °C \(194 °F\) or below\.$/);
  });

  it('count the fillings that fit into the time it pours', () => {
    expect(poured({ poursInTime: 0 })).toContain(', not enough to fill the mould once.');
    expect(poured({ poursInTime: 1 })).toContain(', enough to fill the mould once.');
    expect(poured({ poursInTime: 2 })).toContain(', enough to fill the mould twice.');
    expect(poured({ poursInTime: undefined })).toMatch(/worked out here\)\.$/);
    expect(poured({ potLifeMin: undefined })).toBe('');
  });

  it('stand in °F and molds in the United States', () => {
    const us = windowLines(LEMON_DROPS, { units: 'us' });
    expect(us[0]).toBe('Runs into molds by itself from 251 °F (122 °C) up.');
    expect(us.join(' ')).not.toContain('mould');
  });
});
