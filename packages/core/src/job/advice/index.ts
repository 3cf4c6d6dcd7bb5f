import { acidTooEarly } from './acid.js';
import type { AdviceContext } from './context.js';
import { dextroseNotSyrup, noDoctor } from './doctor.js';
import { heatSpoilsSweetener, muchAcid, weighThisOne } from './doses.js';
import { mayGrain } from './graining.js';
import { beyondTheKnee, rank, sugarBurns, tooSoftForTheStore } from './hardness.js';
import { neverBoils, readingLags } from './hob.js';
import { mouldsShort, piecesShort, targetAboveMould } from './mould.js';
import { panTooFull, probeNotCovered } from './pan.js';
import { stageNamesDoNotApply } from './stage-names.js';
import { stickyRoom } from './sticky-room.js';
import { lessSweetThanSugar } from './sweetness.js';
import {
  altitudeWouldHelp,
  readingAndAltitudeDiffer,
  targetAboveThermometer,
} from './thermometer.js';
import type { Advice } from './types.js';
import { lateWater, muchWater, tooLittleWaterToDissolve } from './water.js';

export { applyChanges } from './apply-changes.js';
export { ADVICE_THRESHOLDS } from './thresholds.js';
export type { Advice, AdviceCode, Change, Remedy, RemedyCode, Severity } from './types.js';

/** Everything the cook should know beforehand, most serious first. */
export function adviseOn(context: AdviceContext): readonly Advice[] {
  const single = [
    targetAboveMould,
    neverBoils,
    targetAboveThermometer,
    tooSoftForTheStore,
    sugarBurns,
    panTooFull,
    dextroseNotSyrup,
    noDoctor,
    acidTooEarly,
    mayGrain,
    muchAcid,
    tooLittleWaterToDissolve,
    lateWater,
    probeNotCovered,
    readingLags,
    muchWater,
    readingAndAltitudeDiffer,
    mouldsShort,
    piecesShort,
    stickyRoom,
    stageNamesDoNotApply,
    beyondTheKnee,
    altitudeWouldHelp,
    lessSweetThanSugar,
  ].flatMap((advise) => advise(context) ?? []);
  const advice = [...heatSpoilsSweetener(context), ...single, ...weighThisOne(context)];
  return advice.sort((a, b) => rank(b.severity) - rank(a.severity));
}
