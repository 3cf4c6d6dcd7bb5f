import type { BatchDocument, Hob, PlanDocument, Wrap } from 'vitrose';
import { hobFromKettle } from './air.js';

/** What a page can say of a hob; nothing is said by an empty word. */
export type HobKind = Hob['kind'] | '';

/** A usual hob of the kind, until its power is given. */
const USUAL_W = { gas: 2_500, resistance: 1_500, induction: 1_800 } as const;
/** A usual kettle test, minutes. */
const USUAL_MIN = 4;

/** The hob of this kind, its own figures where it has them. */
export function hobOf(kind: HobKind, { hob }: BatchDocument): Hob | undefined {
  if (kind === '') return undefined;
  if (kind === 'timed') return hob?.kind === 'timed' ? hob : hobFromKettle(USUAL_MIN);
  return { kind, powerW: hob !== undefined && 'powerW' in hob ? hob.powerW : USUAL_W[kind] };
}

type Film = Extract<Wrap, object>['film'];

/** What a page can say of a wrap. */
export type WrapChoice = Film | 'none' | 'twist' | '';

/** A pop of 12 g takes 60 cm²; other sizes by their surface. */
const POP = { massG: 12, areaCm2: 60 } as const;

/** The wrap of this kind; a film keeps its area, and has a usual one for the piece until it is given. */
export function wrapOf(
  choice: WrapChoice,
  { wrap }: BatchDocument,
  plan: PlanDocument | undefined,
): Wrap | undefined {
  if (choice === '') return undefined;
  if (choice === 'none' || choice === 'twist') return choice;
  if (typeof wrap === 'object') return { ...wrap, film: choice };
  const pieceG = plan?.yield.pieceG?.value ?? POP.massG;
  const areaCm2 = Math.max(1, Math.round(POP.areaCm2 * (pieceG / POP.massG) ** (2 / 3)));
  return { film: choice, areaCm2 };
}

/** Which of them a batch says. */
export function wrapChoice({ wrap }: BatchDocument): WrapChoice {
  if (wrap === undefined) return '';
  return typeof wrap === 'string' ? wrap : wrap.film;
}
