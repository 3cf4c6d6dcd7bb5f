import type { Source } from '../types.js';

/** Sources of the cautions: official advice, law, and publications on harm. */
export const CAUTION_SOURCES = {
  'gwaltney-brant-xylitol': {
    authors: 'Gwaltney-Brant, S. M.',
    year: 'n.d.',
    title: 'Xylitol toxicosis in dogs',
    container: 'Merck Veterinary Manual, section Toxicology',
    kind: 'publication',
    did: 'Read: over about 75 to 100 mg/kg low blood sugar, over 500 mg/kg liver damage.',
  },
  'piscitelli-2010': {
    authors: 'Piscitelli, C. M., Dunayer, E. K. & Aumann, M.',
    year: '2010',
    title: 'Xylitol toxicity in dogs',
    container: 'Compendium: Continuing Education for Veterinarians 32(2)',
    address: 'https://pubmed.ncbi.nlm.nih.gov/20473849/',
    kind: 'publication',
    did: 'Read: over 0.1 g/kg low blood sugar, over 0.5 g/kg liver failure.',
  },
  'qvh-burns-first-aid': {
    authors: 'Queen Victoria Hospital NHS Foundation Trust',
    year: 'n.d.',
    title: 'Burns first aid and prevention',
    address:
      'https://www.qvh.nhs.uk/our-services/plastic-surgery-and-burns/burns/burns-first-aid-and-prevention/',
    kind: 'publication',
    did: 'Read; the page follows the first-aid advice of the British Burn Association.',
  },
  'aap-choking-2010': {
    authors: 'American Academy of Pediatrics, Committee on Injury, Violence, and Poison Prevention',
    year: '2010',
    title: 'Prevention of choking among children',
    container: 'Pediatrics 125(3), 601',
    kind: 'publication',
    did: 'Abstract seen: risk highest at three and under, hard candy named. The age of four is quoted elsewhere.',
  },
  'bfr-sucralose-2019': {
    authors: 'German Federal Institute for Risk Assessment (BfR)',
    year: '2019',
    title:
      'Harmful compounds might be formed when foods containing the sweetener sucralose are heated',
    container: 'BfR Opinion No 012/2019 of 9 April 2019',
    kind: 'publication',
    did: 'Quoted elsewhere: breakdown from 120 °C on.',
  },
  'eu-1169-2011-annex-3': {
    authors: 'European Union',
    year: '2011',
    title: 'Regulation (EU) No 1169/2011, Annex III',
    container: 'Official Journal of the European Union',
    kind: 'publication',
    did: 'A copy was seen: statements for over 10 % added polyols and for aspartame.',
  },
  'inspq-tiny-tot': {
    authors: 'Institut national de santé publique du Québec',
    year: 'n.d.',
    title: 'From Tiny Tot to Toddler',
    address: 'https://www.inspq.qc.ca',
    kind: 'publication',
    did: 'Seen: no honey, cooked or not, before the age of one.',
  },
  'singh-sen-sarma-2022': {
    authors: 'Singh, S. K. & Sen Sarma, M.',
    year: '2022',
    title: 'Hereditary fructose intolerance: A comprehensive review',
    container: 'World Journal of Clinical Pediatrics 11(4), 321–329',
    address: 'https://doi.org/10.5409/wjcp.v11.i4.321',
    kind: 'publication',
    did: 'Opening seen. The sugar alcohols to avoid were seen in a published table of excipients.',
  },
  'ec-sweeteners-2021': {
    authors: 'European Commission, Knowledge for Policy',
    year: '2021',
    title: 'Sugars and sweeteners, table of acceptable daily intakes',
    address:
      'https://knowledge4policy.ec.europa.eu/health-promotion-knowledge-gateway/sugars-sweeteners-7_en',
    kind: 'publication',
    did: 'Read, for the European Union. The limits of the United States were seen elsewhere; later European rises for acesulfame-K and saccharin are recalled and not used.',
  },
  'efsa-erythritol-2023': {
    authors: 'European Food Safety Authority',
    year: '2023',
    title: 'Opinion on erythritol as a food additive',
    container: 'EFSA Journal',
    address: 'https://doi.org/10.2903/j.efsa.2023.8430',
    kind: 'publication',
    did: 'An index entry was seen: 0.5 g/kg of body weight a day.',
  },
} as const satisfies Readonly<Record<string, Source>>;
