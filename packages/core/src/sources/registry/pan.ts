import type { Source } from '../types.js';

/** Sources of the pan topic: ingredients, measures, thermometers, density. */
export const PAN_SOURCES = {
  'recalled-compositions': {
    authors: '',
    year: 'n.d.',
    title: 'Compositions of ingredients as sold, recalled',
    kind: 'practice',
    did: 'Recalled from specifications and food tables and not found again; ask for the certificate.',
  },
  'white-1962': {
    authors: 'White, J. W., Riethof, M. L., Subers, M. H. & Kushnir, I.',
    year: '1962',
    title: 'Composition of American honeys',
    container: 'Technical Bulletin 1261, United States Department of Agriculture',
    kind: 'publication',
    did: 'Mean of 490 honeys seen as tabled in a later book of 1980.',
  },
  'bfr-2019': {
    authors: 'German Federal Institute for Risk Assessment (BfR)',
    year: '2019',
    title: 'Opinion 012/2019 on heating foods with sucralose',
    kind: 'publication',
    did: 'Quoted from news of the opinion; the opinion itself was not read.',
  },
  'kitchen-weight-charts': {
    authors: '',
    year: 'n.d.',
    title: 'Kitchen weight charts: grams per cup and spoon',
    kind: 'practice',
    did: 'Read off several charts and home weighings, which differ; low and high are their spread.',
  },
  'recalled-household-weights': {
    authors: '',
    year: 'n.d.',
    title: 'Weights of household measures, recalled from food composition tables',
    kind: 'practice',
    did: 'Recalled and not found again.',
  },
  'icumsa-1994': {
    authors: 'International Commission for Uniform Methods of Sugar Analysis (ICUMSA)',
    year: '1994',
    title: 'Specification and Standard SPS-4: densimetry and tables',
    container: 'printed in Bubnik, Z. et al. 1995, Sugar Technologists Manual, 8th edition',
    kind: 'publication',
    did: 'Coefficients taken from two public transcriptions that agree.',
  },
  'kell-1975': {
    authors: 'Kell, G. S.',
    year: '1975',
    title:
      'Density, thermal expansivity, and compressibility of liquid water from 0 to 150 °C: correlations and tables for atmospheric pressure and saturation reviewed and expressed on 1968 temperature scale',
    container: 'Journal of Chemical and Engineering Data 20:97–105',
    kind: 'publication',
    did: 'Equation taken from a secondary copy; checked at 4, 20 and 100 °C.',
  },
  'emergent-column': {
    authors: '',
    year: 'n.d.',
    title: 'Emergent-column correction of liquid-in-glass thermometers',
    kind: 'practice',
    did: 'Form and constants recalled from thermometer standards and not found again.',
  },
} as const satisfies Readonly<Record<string, Source>>;
