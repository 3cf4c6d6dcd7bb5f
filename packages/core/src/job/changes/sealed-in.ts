import type { Change } from '../advice/types.js';

/** A lollipop of 12 g takes 60 cm² of film; other sizes by their surface: derived. */
const POP = { massG: 12, areaCm2: 60 } as const;

/** The film most sweets are sealed in. */
const USUAL_FILM = 'oriented-pp';

/** Each piece sealed in a film of its own. */
export function sealedIn(pieceG: number = POP.massG): Change {
  const areaCm2 = Math.max(1, Math.round(POP.areaCm2 * (pieceG / POP.massG) ** (2 / 3)));
  return { path: '/wrap', value: { film: USUAL_FILM, areaCm2 } };
}
