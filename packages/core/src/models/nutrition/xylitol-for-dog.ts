import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import { settle } from './claims.js';
import { PORTION_DOMAIN_G } from './nutrition.js';

const source = 'gwaltney-brant-xylitol',
  grade = 'primary';

/** Published lines of harm, mg of xylitol per kg of dog. None of them is a dose without harm. */
export const XYLITOL_DOG_MG_PER_KG = {
  careful: { value: 75, source, grade },
  lowBloodSugar: { value: 100, source, grade },
  liver: { value: 500, source, grade },
} as const satisfies CitedConstants;

/** The lightest and the heaviest dogs there are, with room, kg. */
export const DOG_MASS_DOMAIN_KG: Span = [0.1, 150];

/** What xylitol can do to a dog that ate it. Whatever stands here: phone a vet at once. */
export type XylitolForDog = {
  readonly xylitolG: number;
  readonly doseMgPerKg: number;
  /** The highest published line that is reached. None reached means nothing: doses are guessed. */
  readonly reached: 'liver' | 'low-blood-sugar' | 'careful-line' | 'no-published-line';
  /** The heaviest dog that this much takes to each line, kg. */
  readonly heaviestDogKg: {
    readonly careful: number;
    readonly lowBloodSugar: number;
    readonly liver: number;
  };
  /** The same for every dose. */
  readonly doThis: 'phone-a-vet-or-an-animal-poison-line-at-once';
  /** The caution that belongs beside it. */
  readonly caution: 'dogs-xylitol';
};

/**
 * How much xylitol a dog got from sweets it ate, beside the published lines of harm.
 *
 * If a dog has eaten any, phone a vet or an animal poison line at once; do not wait for signs, and
 * do not wait for this number. No amount is called harmless here. Other animals are harmed too.
 *
 * @param input - `eatenG`: sweets eaten, 0.01 to 100 000 g; `xylitolMassFraction`: 0 to 1 of the
 *   sweet; `dogKg`: 0.1 to 150 kg.
 * @returns `doseMgPerKg`, the highest line `reached`, the heaviest dog for each line, kg, and what
 *   to do, which never changes.
 * @throws {@link ModelRangeError} if a number cannot be meant.
 * @example
 * xylitolForDog({ eatenG: 3, xylitolMassFraction: 0.97, dogKg: 29 }).reached // 'low-blood-sugar'
 * @source gwaltney-brant-xylitol, piscitelli-2010
 */
export function xylitolForDog(input: {
  readonly eatenG: number;
  readonly xylitolMassFraction: number;
  readonly dogKg: number;
}): Checked<XylitolForDog> {
  const { eatenG, xylitolMassFraction, dogKg } = input;
  requireWithin('eatenG', eatenG, PORTION_DOMAIN_G);
  requireWithin('xylitolMassFraction', xylitolMassFraction, [0, 1]);
  requireWithin('dogKg', dogKg, DOG_MASS_DOMAIN_KG);
  const xylitolG = eatenG * xylitolMassFraction;
  const doseMgPerKg = (xylitolG * 1_000) / dogKg;
  const { careful, lowBloodSugar, liver } = XYLITOL_DOG_MG_PER_KG;
  const heaviest = (lineMgPerKg: number) => (xylitolG * 1_000) / lineMgPerKg;
  return {
    xylitolG,
    doseMgPerKg,
    reached: lineReached(doseMgPerKg),
    heaviestDogKg: {
      careful: heaviest(careful.value),
      lowBloodSugar: heaviest(lowBloodSugar.value),
      liver: heaviest(liver.value),
    },
    doThis: 'phone-a-vet-or-an-animal-poison-line-at-once',
    caution: 'dogs-xylitol',
    warnings: [],
  };
}

function lineReached(doseMgPerKg: number): XylitolForDog['reached'] {
  const { careful, lowBloodSugar, liver } = XYLITOL_DOG_MG_PER_KG;
  const dose = settle(doseMgPerKg);
  if (dose >= liver.value) return 'liver';
  if (dose >= lowBloodSugar.value) return 'low-blood-sugar';
  return dose >= careful.value ? 'careful-line' : 'no-published-line';
}
