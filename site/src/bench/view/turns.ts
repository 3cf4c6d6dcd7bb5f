import { entriesIn } from './entries.js';

/** A part of the page that is not alive yet. */
export type Sleeper = {
  readonly wake: () => void;
  /** Where it stands, once it is awake. */
  readonly place: () => Node | undefined;
};

/** Parts of the page that wait, each for its turn to come alive. */
export type Turns = {
  /** Whether nothing waits any more: what is drawn from now on is alive at once. */
  readonly areOver: () => boolean;
  /** Asks for a turn. */
  readonly wait: (sleeper: Sleeper) => void;
  /** Gives each its turn, a breath apart, and those that come to wait meanwhile. */
  readonly give: (root: HTMLElement) => Promise<void>;
};

/**
 * Turns for the parts of one page.
 *
 * A page that comes alive in one piece answers nobody while it does. Between two turns the browser
 * answers keys and fingers; what somebody enters before a field's turn is kept through it.
 *
 * @param isServer - The server draws everything at once.
 */
export function createTurns(isServer: boolean): Turns {
  const waiting: Sleeper[] = [];
  let areOver = isServer;
  return {
    areOver: () => areOver,
    wait: (sleeper) => waiting.push(sleeper),
    give: async (root) => {
      for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
        const entries = entriesIn(root);
        next.wake();
        // The part is drawn in the queue of small tasks that is already waiting.
        await Promise.resolve();
        const place = next.place();
        for (const { field, enterAgain } of entries) {
          if (place?.contains(field) === true) enterAgain();
        }
        await breath();
      }
      areOver = true;
    },
  };
}

function breath(): Promise<void> {
  return new Promise((done) => setTimeout(done));
}
