import type { KeepingBarsState } from './state.js';
import { humidity } from './words.js';

/**
 * The keeping bars in words: what a reader hears who does not see them.
 *
 * @param state - The state they are drawn from.
 */
export function describeKeepingBars(state: KeepingBarsState): string {
  const known = [ownWords(state), softWords(state), stickyWords(state)].filter((one) => one !== '');
  const first =
    known.length === 0
      ? ['An axis of humidity from 0 to 100 %. What air this sweet bears is not known.']
      : known;
  return [...first, roomWords(state)].filter((one) => one !== '').join(' ');
}

function ownWords({ equilibrium: own }: KeepingBarsState): string {
  if (own === undefined) return '';
  return `Air drier than ${humidity(own)} dries a bare sweet; in wetter air it takes up water.`;
}

// Whoever speaks first says what it is about.
function softWords({ equilibrium, criticalRelativeHumidity: critical }: KeepingBarsState): string {
  if (critical === undefined) return '';
  return equilibrium === undefined
    ? `In air of more than ${humidity(critical)} humidity a bare sweet takes up water and goes soft in time.`
    : `Above ${humidity(critical)} it goes soft in time.`;
}

function stickyWords(state: KeepingBarsState): string {
  const { equilibrium, criticalRelativeHumidity, stickyFrom, stickyAt } = state;
  const from = stickyFrom ?? stickyAt;
  if (equilibrium === undefined && criticalRelativeHumidity === undefined && from !== undefined) {
    const does =
      stickyFrom === undefined ? 'is sticky all over' : 'begins to stick to what it touches';
    const full =
      stickyFrom === undefined || stickyAt === undefined
        ? ''
        : `, and from ${humidity(stickyAt)} it is sticky all over`;
    return `In air of more than ${humidity(from)} humidity a bare sweet ${does}${full}.`;
  }
  if (stickyFrom === undefined)
    return stickyAt === undefined ? '' : `It is sticky all over from ${humidity(stickyAt)}.`;
  const full = stickyAt === undefined ? '' : ` and is sticky all over from ${humidity(stickyAt)}`;
  return `It begins to stick at ${humidity(stickyFrom)}${full}.`;
}

function roomWords(state: KeepingBarsState): string {
  const {
    relativeHumidity: room,
    equilibrium,
    criticalRelativeHumidity,
    stickyFrom,
    stickyAt,
  } = state;
  if (room === undefined) return '';
  const over = (from: number | undefined): boolean => from !== undefined && room >= from;
  const does = [
    equilibrium !== undefined && room < equilibrium ? 'it dries' : '',
    over(equilibrium) ? 'it takes up water' : '',
    over(criticalRelativeHumidity) ? 'it goes soft in time' : '',
    over(stickyAt) ? 'it is sticky all over' : over(stickyFrom) ? 'it begins to stick' : '',
  ].filter((one) => one !== '');
  const at = `Your room is at ${humidity(room)}`;
  if (does.length === 0) return `${at}.`;
  const last = does.at(-1) ?? '';
  return does.length === 1
    ? `${at}: there ${last}.`
    : `${at}: there ${does.slice(0, -1).join(', ')}, and ${last}.`;
}
