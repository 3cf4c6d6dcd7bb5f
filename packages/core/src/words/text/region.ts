import type { DisplayOptions } from '../types.js';

/** Whether the region says candy and corn syrup. */
export function isUs({ region, units }: DisplayOptions): boolean {
  return (region ?? (units === 'us' ? 'us' : 'world')) === 'us';
}

/** Stems that read otherwise in the United States; longer ones first. */
const US_SPELLING = {
  jewellery: 'jewelry',
  sulphite: 'sulfite',
  gelatine: 'gelatin',
  glycerine: 'glycerin',
  flavour: 'flavor',
  colour: 'color',
  mould: 'mold',
  litre: 'liter',
  hob: 'stove',
  soya: 'soy',
} as const;

/**
 * A text of the catalogue in the spelling of the region.
 *
 * What stands in braces is a key and stays; so does what stands in quotes, which is the cook's own.
 */
export function spelled(text: string, options: DisplayOptions): string {
  if (!isUs(options)) return text;
  const stems = Object.keys(US_SPELLING).join('|');
  return text.replace(new RegExp(`\\{[^}]*\\}|‘[^’]*’|${stems}`, 'gi'), (found) => {
    const us = US_SPELLING[found.toLowerCase() as keyof typeof US_SPELLING];
    if (us === undefined) return found;
    return found[0] === found[0]?.toLowerCase() ? us : us.charAt(0).toUpperCase() + us.slice(1);
  });
}
