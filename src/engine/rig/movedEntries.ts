/** Entries that stand under another path from a version on, and those that are no longer asked for. */
export interface Moves {
  /** Old path to new path. */
  readonly moved: Readonly<Record<string, string>>;
  /** Old path to what the entry was called. */
  readonly gone: Readonly<Record<string, string>>;
}

/** From version 2 to version 3. */
export const to3: Moves = {
  moved: {
    'path.ground': 'antenna.ground',
    'windings.coilCore': 'cores.coilCore',
    'windings.wire': 'cores.wire',
    'windings.tail': 'cores.tail',
    'receive.preampCurrent': 'supply.preamp',
    'receive.oscillatorCurrent': 'supply.oscillator',
  },
  gone: {},
};

/** From version 3 to version 4. */
export const to4: Moves = {
  moved: { 'path.feedLoss': 'feed.knownLoss', 'path.farFeedLoss': 'feed.farKnownLoss' },
  gone: {},
};
