import { gFromLb, gFromOz, isNone, type MeasureUnit, measureToGrams } from 'vitrose';
import { formatMass, unitName } from 'vitrose/words';
import { benchWords } from '../../../words/bench.js';
import { AMOUNT_UNIT_SIGNS, type AmountUnit, DRAM_OF_WEIGHT_G, unitWord } from './amount-units.js';
import { type ReadNumber, readNumber } from './number.js';
import { tidy } from './tidy.js';
import type { Manner, Offer, Reading } from './types.js';

/** An amount as it was meant, before it is laid into a line of the formula. */
export type MeantAmount =
  | { readonly kind: 'mass'; readonly massG: number }
  | {
      readonly kind: 'measure';
      readonly quantity: number;
      readonly unit: MeasureUnit;
      /** The cook's own words. */
      readonly written: string;
    }
  | { readonly kind: 'share'; readonly share: number };

/** What surrounds an amount. */
export type AmountPlace = Manner & {
  readonly ingredient: string;
  /** The unit that stands in the list beside the field. */
  readonly unit: AmountUnit;
  /** What a share would be a share of, in words. */
  readonly shareOf: string;
  /** Acids and the like: a spoon is a poor scale for them. */
  readonly weighThis: boolean;
};

const MOST_G = 100_000;
const LEAST_G = 1e-6;

/** Reads `232`, `232 g`, `12 oz`, `1 lb 4 oz`, `2 cups`, `½ cup sugar`, `55 %`. A bare dram is asked about. */
export function readAmount(text: string, place: AmountPlace): Reading<MeantAmount> {
  const typed = text.trim();
  if (typed === '') return { kind: 'empty' };
  const number = readNumber(typed);
  if (number === undefined) return unread(benchWords.unread.noNumber(typed));
  const compound = poundsAndOunces(typed);
  if (compound !== undefined) return mass(compound, place, []);
  if (number.rest === '') return inUnit(number, place.unit, [], place, typed);
  const word = longestUnit(number.rest, place);
  switch (word.kind) {
    case 'unit':
      return inUnit(number, word.unit, word.others, place, typed);
    case 'dram-of-weight':
      return mass(number.values[0] * DRAM_OF_WEIGHT_G, place, []);
    case 'which-dram':
      return {
        kind: 'unread',
        reason: benchWords.unread.whichDram,
        offers: [
          { label: benchWords.unread.fluidDram, text: `${number.written} fluid dram` },
          { label: benchWords.unread.weightDram, text: `${number.written} avoirdupois dram` },
        ],
      };
    default:
      return unread(
        benchWords.unread.noUnit(number.rest, 'g, kg, oz, lb, ml, cups, tbsp, tsp, fl oz, %'),
      );
  }
}

/** The unit at the head of what follows the number; the name of the ingredient may follow it. */
function longestUnit(rest: string, { region }: Manner): ReturnType<typeof unitWord> {
  const words = rest.split(/\s+/);
  for (let count = Math.min(3, words.length); count > 0; count--) {
    const found = unitWord(words.slice(0, count).join(' '), region);
    if (found.kind !== 'unknown') return found;
  }
  return { kind: 'unknown' };
}

function inUnit(
  number: ReadNumber,
  unit: AmountUnit,
  others: readonly AmountUnit[],
  place: AmountPlace,
  typed: string,
): Reading<MeantAmount> {
  const [quantity, second] = number.values;
  if (unit === '%') {
    const share = quantity / 100;
    return share >= 0 && share <= 1
      ? {
          kind: 'read',
          value: { kind: 'share', share },
          echo: benchWords.echoShare(tidy(quantity), place.shareOf),
          offers: quantity > 0 && quantity < 1 ? [offer(`${tidy(quantity * 100)} %`)] : [],
        }
      : unread(benchWords.unread.outside(`${tidy(quantity)} %`, '0 %', '100 %'));
  }
  if (unit === 'g') {
    return mass(quantity, place, second === undefined ? [] : [offer(`${tidy(second)} g`)]);
  }
  const weighed = measureToGramsOrNone(place.ingredient, unit, quantity);
  if (weighed === undefined) return unread(benchWords.unread.notByMeasure);
  if (weighed.massG > MOST_G || weighed.massG < LEAST_G) {
    return unread(benchWords.unread.outsideMass(formatMass(MOST_G, place)));
  }
  const [low, high] = weighed.band;
  const spread =
    high - low > 0.01 * weighed.massG ? benchWords.between(formatMass(low), formatMass(high)) : '';
  const poor = place.weighThis && weighed.form !== null ? ` ${benchWords.weighThisOne}` : '';
  return {
    kind: 'read',
    value: { kind: 'measure', quantity, unit, written: typed },
    echo: `${tidy(quantity)} ${unitName(unit, quantity)} = ${formatMass(weighed.massG)}${spread}.${poor}`,
    offers: others.map((other) => ({
      label: benchWords.use(AMOUNT_UNIT_SIGNS[other]),
      text: `${number.written} ${AMOUNT_UNIT_SIGNS[other]}`,
    })),
  };
}

function measureToGramsOrNone(ingredient: string, unit: MeasureUnit, quantity: number) {
  if (!(quantity > 0 && quantity <= MOST_G)) return undefined;
  const weighed = measureToGrams({ ingredient, unit, quantity });
  return isNone(weighed) ? undefined : weighed;
}

function mass(massG: number, place: AmountPlace, offers: readonly Offer[]): Reading<MeantAmount> {
  if (!(massG >= LEAST_G && massG <= MOST_G)) {
    return unread(benchWords.unread.outsideMass(formatMass(MOST_G, place)));
  }
  const value = Number(massG.toPrecision(12));
  return {
    kind: 'read',
    value: { kind: 'mass', massG: value },
    echo: formatMass(value, { units: place.units }),
    offers,
  };
}

/** `1 lb 4 oz`, which is how American packets and old cards write it. */
function poundsAndOunces(text: string): number | undefined {
  const found = /^(.+?)\s*(?:lbs?|pounds?)\.?\s+(.+?)\s*(?:oz|ounces?)\.?$/i.exec(text);
  const pounds = readNumber(found?.[1] ?? '');
  const ounces = readNumber(found?.[2] ?? '');
  if (pounds === undefined || ounces === undefined) return undefined;
  if (pounds.rest !== '' || ounces.rest !== '') return undefined;
  return gFromLb(pounds.values[0]) + gFromOz(ounces.values[0]);
}

function offer(text: string): Offer {
  return { label: benchWords.use(text), text };
}

function unread(reason: string): Reading<MeantAmount> {
  return { kind: 'unread', reason, offers: [] };
}
