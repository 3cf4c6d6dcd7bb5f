import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { WarningCode } from '../../foundation/results/types.js';
import { explain } from './explain.js';
import { WARNING_WORDS } from './warning-words.js';

const source = fileURLToPath(new URL('../../', import.meta.url));

/** Every warning the models can raise, read from where they raise it. */
function raised(): readonly { readonly code: WarningCode; readonly parameter: string }[] {
  const found = new Map<string, { code: WarningCode; parameter: string }>();
  for (const path of readdirSync(source, { recursive: true, encoding: 'utf8' })) {
    if (!/^(matter|models|job)\b.*(?<!\.test|\.fixture)\.ts$/.test(path)) continue;
    const text = readFileSync(`${source}${path}`, 'utf8');
    for (const [, parameter = ''] of text.matchAll(/warnOutside\(\s*'(\w+)'/g)) {
      found.set(`outside ${parameter}`, { code: 'outside-tested-range', parameter });
    }
    for (const [, code = '', parameter = ''] of text.matchAll(
      /code: '([\w-]+)',\s*parameter: '(\w+)',\s*value/g,
    )) {
      found.set(`${code} ${parameter}`, { code: code as WarningCode, parameter });
    }
    const calls = text.match(/warnOutside\(/g)?.length ?? 0;
    const named = text.match(/warnOutside\(\s*'\w+'/g)?.length ?? 0;
    expect(named, `${path} warns about something this test cannot read`).toBe(calls);
  }
  return [...found.values()];
}

const WARNINGS = raised();

describe('every warning a model can raise', () => {
  it('is found here', () => {
    expect(WARNINGS.length).toBeGreaterThan(12);
    expect(new Set(WARNINGS.map(({ code }) => code))).toEqual(
      new Set(Object.keys(WARNING_WORDS) as WarningCode[]),
    );
  });

  it.each(WARNINGS)('reads as a sentence: $code of $parameter', ({ code, parameter }) => {
    for (const units of ['metric', 'us'] as const) {
      for (const subject of [undefined, 'sucralose', 'saccharides']) {
        const text = explain(
          { code, parameter, value: 0.9, limits: [0.1, 0.8], subject },
          { units },
        );
        expect(text).toMatch(/^[A-Z].*\.$/);
        expect(text).not.toMatch(/[{}|]|undefined|NaN/);
        if (code === 'species-not-modelled') expect(text).not.toContain('saccharides');
        // A name in code is no word, and neither is what is left when its unit is cut off.
        expect(text).not.toContain(parameter);
        expect(text.replaceAll(/hPa|inHg/g, '')).not.toMatch(
          /[a-z][A-Z]|\b(per|of|from|mass fraction)[:,.]/,
        );
      }
    }
  });

  it('says what it is about', () => {
    expect(
      explain({
        code: 'shown-from-memory',
        parameter: 'gramsPerMl',
        value: 0.933,
        limits: [0.893, 1.014],
        subject: 'cream-of-tartar',
      }),
    ).toBe(
      'How much cream of tartar goes into a spoon or a cup, 0.93 g for each ml, is a figure from memory, not found again in print. A scale knows better.',
    );
    expect(
      explain({
        code: 'shown-from-memory',
        parameter: 'addedSweetness',
        value: 0.4962,
        limits: [0.4, 0.6],
        subject: 'acesulfame-k',
      }),
    ).toBe(
      'What acesulfame-K adds to the sweetness, 0.5 with sugar at 1, is worked out with figures from memory, not found again in print. Start with half and taste.',
    );
    expect(
      explain({
        code: 'shown-from-memory',
        parameter: 'solubleMassFraction',
        value: 0.5825,
        limits: [0.546, 0.619],
        subject: 'glucose',
      }),
    ).toBe(
      'How much glucose water holds, 58 %, is a figure from memory, not found again in print.',
    );
    expect(
      explain({
        code: 'outside-tested-range',
        parameter: 'tastingConcentrationGPer100Ml',
        value: 20,
        limits: [5, 15],
      }),
    ).toContain('How strong it is in the mouth: 20 g in 100 ml here, tested from 5 g in 100 ml');
    expect(
      explain({
        code: 'species-not-modelled',
        parameter: 'shareOfDrySolids',
        value: 0.001,
        limits: [0, 0],
        subject: 'acesulfame-k',
      }),
    ).toBe(
      'How sweet acesulfame-K is, is not known here: 0.1 % of all but the water is left out of the sweetness.',
    );
    expect(
      explain({
        code: 'outside-tested-range',
        parameter: 'dissolvedMassFraction',
        value: 0.9971,
        limits: [0, 0.995],
      }),
    ).toBe(
      'The strength of the syrup: 99.7 % here, tested from 0 % to 99.5 %. The answer stands, with less behind it.',
    );
  });
});
