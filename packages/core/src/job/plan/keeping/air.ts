import { isNone } from '../../../foundation/results/is-none.js';
import type { Mixture } from '../../../matter/mixture/types.js';
import { criticalHumidity, equilibriumRelativeHumidity } from '../../../models/moisture/index.js';
import { type Ledger, warn } from '../../ledger.js';
import { figure } from '../figure.js';
import type { PlannedAir } from '../types.js';

/** What air a bare sweet bears at the temperature of its store; nothing where nobody has measured it. */
export function planAir(finished: Mixture, storeC: number, ledger: Ledger): PlannedAir | undefined {
  const own = equilibriumRelativeHumidity(finished, { temperatureC: storeC });
  const critical = criticalHumidity(finished, { storeC });
  if (isNone(own) || isNone(critical)) return undefined;
  warn(ledger, [...own.warnings, ...critical.warnings]);
  return {
    ownRelativeHumidity: figure(own.relativeHumidity, own.band, 'moisture'),
    criticalRelativeHumidity: figure(critical.relativeHumidity, critical.band, 'moisture'),
    sticksFromRelativeHumidity: critical.sticksFrom.relativeHumidity,
    stickyAtRelativeHumidity: critical.stickyAt.relativeHumidity,
  };
}
