import type { Mixture } from '../../../matter/mixture/types.js';
import { workingTemperatures } from '../../../models/glass/index.js';
import type { PlannedWindow } from '../types.js';

/** What can be done to this mass at which temperature, hottest first. */
export function planWindows(finished: Mixture): readonly PlannedWindow[] {
  const { steps } = workingTemperatures(finished);
  const at = (id: keyof typeof steps) => steps[id].temperatureC;
  return [
    { id: 'deposit', lowC: at('deposit') },
    { id: 'pour-by-hand', lowC: at('pour-last'), highC: at('deposit') },
    { id: 'fold', lowC: at('stamp'), highC: at('fold') },
    { id: 'pull', lowC: at('keep-shape'), highC: at('fold') },
    { id: 'stamp', lowC: at('keep-shape'), highC: at('stamp') },
    { id: 'stick', lowC: at('stick') },
    { id: 'demould', highC: at('demould') },
    { id: 'wrap', highC: at('wrap') },
  ];
}
