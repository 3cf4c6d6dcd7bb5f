import { isNone } from '../../../foundation/results/is-none.js';
import { boilDownPoint, panCoolingTime } from '../../../models/heat/index.js';
import { readingOf } from '../reading.js';
import { REST_MIN } from '../steps.js';
import type { Figure, MomentId, PlannedMoment } from '../types.js';
import type { CookingQuestion } from './plan-cooking.js';

/** A pan nobody measured, mm: it decides only how fast the mass cools in it. */
export const USUAL_PAN_MM = { value: 180, source: 'assumption', grade: 'assumed' } as const;

/** One thing is stirred in after the other: a minute each, common practice. */
export const STIR_IN_MIN = { value: 1, source: 'common-practice', grade: 'practice' } as const;

/** The moments of the cook in order, each no earlier than the one before. */
export function momentsOf(
  question: CookingQuestion,
  minutes: (value: number) => Figure,
): readonly PlannedMoment[] {
  const { boil, kitchen, stop, pour, lateKinds } = question;
  const { path, down, turnDown } = boil;
  const stopMin = (path[path.length - 1]?.timeS ?? 0) / 60;
  const moments: PlannedMoment[] = [];
  const at = (id: MomentId, atMin: number, hereC: number) =>
    moments.push({
      id,
      atMin: minutes(atMin),
      hereC,
      readingC: readingOf(hereC, kitchen).readingC,
    });
  at('first-boil', down.firstBoilS / 60, down.firstBoilC);
  const turn = boilDownPoint(path, { temperatureC: turnDown.fromC });
  if (turnDown.share < 1 && !isNone(turn) && turn.timeS > down.firstBoilS)
    at('turn-down', turn.timeS / 60, turnDown.fromC);
  at('stop', stopMin, stop.hereC);
  const restBelowC = lateKinds.length > 0 ? pour.flavourBelowC : pour.pourBetweenC[1];
  // From here on the pan cools in the room.
  const room: Room = { roomC: question.roomC, tauMin: panTimeConstantMin(question) };
  let [clockMin, hereC] = cooled(room, stop.hereC, stopMin, REST_MIN.value, restBelowC);
  at('rest', clockMin, hereC);
  if (lateKinds.some((kind) => kind !== 'acid')) {
    [clockMin, hereC] = cooled(room, hereC, clockMin, 0, pour.flavourBelowC);
    at('colour-and-flavour', clockMin, hereC);
    [clockMin, hereC] = cooled(room, hereC, clockMin, STIR_IN_MIN.value, undefined);
  }
  if (lateKinds.includes('acid')) {
    [clockMin, hereC] = cooled(room, hereC, clockMin, 0, pour.acidBetweenC[1]);
    at('acid', clockMin, hereC);
    [clockMin, hereC] = cooled(room, hereC, clockMin, STIR_IN_MIN.value, undefined);
  }
  [clockMin, hereC] = cooled(room, hereC, clockMin, 0, pour.pourBetweenC[1]);
  at('pour', clockMin, hereC);
  return moments;
}

/** Pots the cooling model knows, g. */
const POT_DOMAIN_G = [1, 1_000_000] as const;

/** Time constant of the pan as it cools, minutes; nothing for a crumb or a tonne. */
export function panTimeConstantMin({
  batch,
  pots,
  stop,
  roomC,
}: Pick<CookingQuestion, 'batch' | 'pots' | 'stop' | 'roomC'>): number | undefined {
  const massG = pots.base.massG * (pots.base.drySolidsMassFraction / stop.baseDrySolids);
  const [lightestG, heaviestG] = POT_DOMAIN_G;
  if (massG < lightestG || massG > heaviestG) return undefined;
  const answer = panCoolingTime({
    massG,
    panDiameterMm: batch.pan?.diameterMm ?? USUAL_PAN_MM.value,
    panMassG: batch.pan?.emptyMassG,
    fromC: stop.hereC,
    toC: Math.max(roomC + 1, stop.hereC - 20),
    airC: roomC,
  });
  return isNone(answer) ? undefined : answer.timeConstantS / 60;
}

/** The room, and how fast this pan cools in it; no time constant where nobody can say. */
type Room = { readonly roomC: number; readonly tauMin: number | undefined };

/** Clock and temperature after so many minutes in the room, and not before the mass is down to a temperature. */
function cooled(
  { roomC, tauMin }: Room,
  fromC: number,
  fromMin: number,
  waitMin: number,
  belowC: number | undefined,
): [number, number] {
  if (tauMin === undefined) return [fromMin + waitMin, fromC];
  const untilBelow =
    belowC === undefined || fromC <= belowC || belowC <= roomC
      ? 0
      : tauMin * Math.log((fromC - roomC) / (belowC - roomC));
  const took = Math.max(waitMin, untilBelow);
  return [fromMin + took, roomC + (fromC - roomC) * Math.exp(-took / tauMin)];
}
