import type { Shape } from './types.js';

/** Where to stop: exactly one target, hence one branch for each. */
export const cookShape = {
  either: [
    {
      fields: {
        toStage: [
          'thread',
          'soft-ball',
          'firm-ball',
          'hard-ball',
          'soft-crack',
          'hard-crack',
          'clear-liquid',
          'brown-liquid',
        ],
        'aim?': ['low', 'middle', 'high'],
        'underVacuumPa?': 'number',
      },
    },
    { fields: { toSeaLevelC: 'number', 'underVacuumPa?': 'number' } },
    { fields: { toMoistureMassFraction: 'number', 'underVacuumPa?': 'number' } },
    { fields: { toGlassTransitionC: 'number', 'underVacuumPa?': 'number' } },
  ],
} as const satisfies Shape;
