import { drySolidsAtBoil } from 'vitrose';
import { stageSentence } from 'vitrose/words';
import { SUCROSE_SYRUP } from '../ladder/mixture-at.js';
import { pressureOf } from '../ladder/read-kitchen.js';
import { stageIdAt } from '../ladder/rung-at.js';
import { printed, reading, temperature, temperatures } from '../ladder/temperature-words.js';
import { type SugarRuleGeometry, sugarRuleGeometry } from './geometry.js';
import type { SugarRuleState } from './state.js';

/**
 * The sugar rule in words: what a reader hears who does not see it.
 *
 * @param state - The state it is drawn from.
 * @returns a few sentences; degrees are those the thermometer shows.
 */
export function describeSugarRule(state: SugarRuleState): string {
  return describeGeometry(sugarRuleGeometry(state));
}

/** The same for a rule that is worked out already. */
export function describeGeometry(geometry: SugarRuleGeometry): string {
  return [kitchenWords(geometry), hardCrackWords(geometry), stopWords(geometry)]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

function kitchenWords({ state, ladder }: SugarRuleGeometry): string {
  const { readingOffsetK = 0, units = 'c' } = state;
  const water = temperature(ladder.waterBoilsAtC + readingOffsetK, units, 1);
  const reads = readingOffsetK === 0 ? 'water boils at' : 'boiling water reads';
  return `A rule with two strips, textures and degrees, for a kitchen where ${reads} ${water}.`;
}

function hardCrackWords({ state, ladder }: SugarRuleGeometry): string {
  const { readingOffsetK = 0, units = 'c' } = state;
  if (!ladder.namesApply)
    return 'Stage names do not fit this mass; the beads of water still count.';
  const rung = ladder.rungs.find((one) => one.id === 'hard-crack');
  if (rung === undefined) return '';
  const here = temperatures(rung.lowC + readingOffsetK, rung.highC + readingOffsetK, units);
  const there = temperatures(rung.lowSeaLevelC, rung.highSeaLevelC, units);
  return here === there
    ? `Hard crack is ${here}.`
    : `Hard crack, ${there} for sucrose at sea level, is ${here} here. Clear and brown liquid do not move with the air.`;
}

function stopWords(geometry: SugarRuleGeometry): string {
  const { state, ladder } = geometry;
  const { stopHereC, readingOffsetK = 0, units = 'c' } = state;
  if (stopHereC === undefined) return '';
  const at = `The line stands at ${temperature(stopHereC + readingOffsetK, units)}`;
  const name = ladder.namesApply ? ` ${stageSentence(stageIdAt(ladder, stopHereC))}` : '';
  return `${at}${windowWords(state)}.${name}${waterWords(state, stopHereC)}`;
}

function windowWords({ windowHereC, readingOffsetK = 0, units = 'c' }: SugarRuleState): string {
  if (windowHereC === undefined) return '';
  const [low, high] = windowHereC;
  return `, good between ${reading(low + readingOffsetK, units)} and ${reading(high + readingOffsetK, units)}`;
}

function waterWords(state: SugarRuleState, stopHereC: number): string {
  const mixture = state.mixture ?? SUCROSE_SYRUP;
  const boil = drySolidsAtBoil(mixture, { temperatureC: stopHereC, pressurePa: pressureOf(state) });
  if ('kind' in boil) return '';
  return ` It leaves about ${printed(100 * (1 - boil.drySolidsMassFraction), 0)} g of water in 100 g.`;
}
