import { WRAP_FILM_IDS } from '../../models/moisture/films.js';
import { DOCUMENT_CAPS } from '../caps.js';
import { ownIngredientShape } from './composition.js';
import { cookShape } from './cook.js';
import { formulaLineShape } from './formula.js';
import { kitchenFields } from './kitchen-fields.js';
import type { Shape } from './types.js';

/** `vitrose.batch/1`. */
export const batchShape = {
  fields: {
    format: ['vitrose.batch/1'],
    'name?': 'string',
    'note?': 'string',
    formula: { list: formulaLineShape, most: DOCUMENT_CAPS.lines },
    cook: cookShape,
    ...kitchenFields,
    'store?': {
      fields: { 'temperatureC?': 'number', 'relativeHumidity?': 'number', 'forDays?': 'number' },
    },
    'wrap?': {
      either: [
        ['none', 'twist'],
        { fields: { film: WRAP_FILM_IDS, areaCm2: 'number', 'sealFactor?': 'number' } },
      ],
    },
    'handling?': { fields: { 'stirredAfterBoil?': 'boolean' } },
    'pieces?': {
      fields: {
        'massG?': 'number',
        'cavityMl?': 'number',
        'count?': 'number',
        'finishedMassG?': 'number',
        'lossFraction?': 'number',
        'breakFraction?': 'number',
      },
    },
    'ingredients?': { entries: ownIngredientShape },
  },
} as const satisfies Shape;
