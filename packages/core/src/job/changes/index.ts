export { acidTime } from './acid-time.js';
export { swapSyrupForm } from './swap-syrup-form.js';
export type { ChangesOf, NoChange } from './types.js';
export { withoutXylitol } from './without-xylitol.js';
