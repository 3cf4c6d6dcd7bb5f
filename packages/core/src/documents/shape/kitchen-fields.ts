import type { Fields } from './types.js';

/** What belongs to a kitchen rather than to a batch, under the names both documents use. */
export const kitchenFields = {
  'kitchen?': {
    either: [
      { fields: { elevationM: 'number' } },
      { fields: { pressurePa: 'number' } },
      { fields: { seaLevelPressurePa: 'number', elevationM: 'number' } },
      { fields: { waterBoilsAtC: 'number' } },
    ],
  },
  'thermometer?': {
    fields: {
      'kind?': ['probe', 'thermocouple', 'dial', 'liquid-in-glass', 'infrared'],
      'boilingWaterReadingC?': 'number',
      'iceWaterReadingC?': 'number',
      'maxC?': 'number',
      'readsInS?': 'number',
    },
  },
  'hob?': {
    either: [
      { fields: { kind: ['gas', 'resistance', 'induction'], powerW: 'number' } },
      { fields: { kind: ['timed'], waterG: 'number', fromC: 'number', boilsInMin: 'number' } },
    ],
  },
  'pan?': {
    fields: { 'diameterMm?': 'number', 'capacityMl?': 'number', 'emptyMassG?': 'number' },
  },
  'room?': { fields: { 'temperatureC?': 'number', 'relativeHumidity?': 'number' } },
  'water?': { fields: { 'alkalinityMmolPerL?': 'number' } },
  'mould?': {
    fields: {
      'kind?': ['silicone', 'metal', 'polycarbonate', 'plastic', 'starch', 'sugar-bed', 'slab'],
      'cavityMl?': 'number',
      'cavities?': 'number',
      'moulds?': 'number',
      'maxC?': 'number',
    },
  },
} as const satisfies Fields;
