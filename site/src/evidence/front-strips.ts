import { type Compared, compared, furthest, type Off, offs } from './compared.js';
import type { ModelSlug } from './model-pages.js';

/** A difference with the table it is of. */
export type Dot = Off & { readonly from: Compared };

/** All printed rows of one quantity, in one unit. */
export type Strip = {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  readonly page: ModelSlug;
  readonly dots: readonly Dot[];
  readonly worst: Dot;
};

type Kind = Pick<Strip, 'id' | 'title' | 'unit' | 'page'> & {
  readonly functions: readonly string[];
  /** Which columns of these functions are meant, by their unit. */
  readonly units: RegExp;
};

const DEGREES = /^(°C|°F|K)/;

const KINDS: readonly Kind[] = [
  {
    id: 'syrup',
    title: 'Where syrup boils',
    unit: '°C',
    page: 'boiling',
    functions: ['boilingPoint', 'cookTarget'],
    units: DEGREES,
  },
  {
    id: 'water',
    title: 'Where water boils',
    unit: '°C',
    page: 'water',
    functions: ['waterBoilingPoint'],
    units: DEGREES,
  },
  {
    id: 'glass',
    title: 'Up to where it stays hard',
    unit: '°C',
    page: 'glass',
    functions: ['glassTransition', 'dryGlassTransition'],
    units: DEGREES,
  },
  {
    id: 'activity',
    title: 'Water activity',
    unit: '',
    page: 'boiling',
    functions: ['waterActivity'],
    units: /./,
  },
  {
    id: 'sweetness',
    title: 'Sweetness, sugar = 1',
    unit: '',
    page: 'sweetness',
    functions: ['relativeSweetness'],
    units: /./,
  },
  {
    id: 'syrups',
    title: 'Dextrose equivalent',
    unit: 'DE',
    page: 'saccharides',
    functions: ['dextroseEquivalentFromProfile'],
    units: /./,
  },
  {
    id: 'density',
    title: 'Density of syrup',
    unit: 'kg/m³',
    page: 'density',
    functions: ['densityFromBrix'],
    units: /./,
  },
  {
    id: 'solubility',
    title: 'What water holds',
    unit: '% sugar',
    page: 'density',
    functions: ['sucroseSolubility'],
    units: /./,
  },
  {
    id: 'latent',
    title: 'Heat of steam',
    unit: 'kJ/kg',
    page: 'water',
    functions: ['waterLatentHeat'],
    units: /./,
  },
];

/** Every printed row we hold, by quantity; tables we computed ourselves are left out. */
export function frontStrips(): readonly Strip[] {
  return KINDS.flatMap(({ functions, units, ...kind }) => {
    const dots = compared(functions)
      .filter(({ own, of }) => !own && units.test(of.unit))
      .flatMap((from) => offs(from).map((off) => ({ ...inCelsius(off, from), from })));
    return dots.length === 0 ? [] : [{ ...kind, dots, worst: furthest(dots) as Dot }];
  });
}

/** A difference in °F becomes one in °C. */
function inCelsius(off: Off, { of }: Compared): Off {
  return of.unit.startsWith('°F') ? { ...off, by: off.by / 1.8 } : off;
}
