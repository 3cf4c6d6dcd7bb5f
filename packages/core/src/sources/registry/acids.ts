import type { Source } from '../types.js';

/** Sources of acid: dissociation, inversion, browning, sourness. */
export const ACID_SOURCES = {
  'bates-pinching-1949': {
    authors: 'Bates, R.G.; Pinching, G.D.',
    year: '1949',
    title: 'Resolution of the dissociation constants of citric acid at 0 to 50°',
    container: 'Journal of the American Chemical Society 71:1274',
    kind: 'publication',
    did: 'Constants at 25 °C and their temperature law seen in two public tables that name it; the title recalled. Beyond 50 °C the law is run on.',
  },
  'acid-constant-tables': {
    authors: '',
    year: 'n.d.',
    title:
      'Public tables of acid constants at 25 °C, and the registration dossier of tartaric acid',
    container: 'European Chemicals Agency',
    address:
      'https://www.echa.europa.eu/sv/web/guest/registration-dossier/-/registered-dossier/11349/4/22',
    kind: 'publication',
    did: 'Seen, two tables for each acid; not the measurements behind them.',
  },
  'merck-index-tartrate': {
    authors: '',
    year: 'n.d.',
    title: 'Solubility of potassium hydrogen tartrate, entry of the Merck Index',
    kind: 'publication',
    did: 'Seen in a reprint: 1 g in 162 mL of water, in 16 mL of boiling water; 0.4 % at 10 °C. A second page has 6.1 at 100 °C. One that prints 0.37 at 20 °C contradicts 0.4 at 10 and was left aside.',
  },
  'recalled-acids': {
    authors: '',
    year: 'n.d.',
    title: 'Recalled from handbooks of sweets and of chemistry',
    kind: 'assumption',
    did: 'From memory; not found again in print.',
  },
  'acidity-band': {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'How far constants of 25 °C and activities of 1 may be off in the pan',
    kind: 'derivation',
    did: 'The temperature law of citric acid moves its first constant by 0.11 up to 100 °C, and two tables print tartaric acid 0.06 apart. Very strong acid in little water may be off by more.',
  },
  'vukov-1965': {
    authors: 'Vukov, K.',
    year: '1965',
    title: 'Kinetic aspects of sucrose hydrolysis',
    container: 'International Sugar Journal 67:172',
    kind: 'publication',
    did: 'Not seen itself: form and constants as carried by Rein, P. (2012), Cane Sugar Engineering, seen in public model code. The unit of water was settled by measured rates.',
  },
  'dry-end-guess': {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'How much slower acid works in a nearly dry mass',
    kind: 'assumption',
    did: 'A guess, chosen so that kneading in one per cent of acid at 100 to 110 °C costs a few per cent of the sucrose, as the trade finds.',
  },
  'browning-energy-choice': {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Activation energy of browning, chosen between printed ones',
    kind: 'derivation',
    did: 'Between 104.7 kJ/mol for sucrose (Shin and Ahn 1999), 140 for the breakdown of glucose and fructose (Nolasco and Massaguer 2006) and 110 to 180 for glucose with amino acids (Carabasa-Giribet and Ibarz-Ribas 2000); all seen in summaries.',
  },
} as const satisfies Readonly<Record<string, Source>>;
