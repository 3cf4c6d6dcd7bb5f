import type { ProfileRow, ProfileRows } from './profile-rows.js';
import type { Profile } from './types.js';

/** A blend of two syrups: the shares mix by dry mass, and so does the dextrose equivalent. */
export function mixProfiles(a: Profile, b: Profile, shareOfB: number): Profile {
  const mixed = (x: number, y: number): number => x * (1 - shareOfB) + y * shareOfB;
  return {
    dp1: mixed(a.dp1, b.dp1),
    dp2: mixed(a.dp2, b.dp2),
    dp3: mixed(a.dp3, b.dp3),
    dp4plus: mixed(a.dp4plus, b.dp4plus),
  };
}

/** The shares of one row. */
export function profileOf([, dp1, dp2, dp3, dp4plus]: ProfileRow): Profile {
  return { dp1, dp2, dp3, dp4plus };
}

/** The blend of two neighbouring rows that has this dextrose equivalent; end pieces go on. */
export function profileAlong(rows: ProfileRows, dextroseEquivalent: number): Profile {
  let [from, to] = rows;
  for (const row of rows) {
    if (row[0] > to[0] && to[0] < dextroseEquivalent) {
      from = to;
      to = row;
    }
  }
  const share = (dextroseEquivalent - from[0]) / (to[0] - from[0]);
  return mixProfiles(profileOf(from), profileOf(to), share);
}
