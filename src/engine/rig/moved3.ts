/** Entries of version 2 that stand under another path in version 3. */
export const moved: Readonly<Record<string, string>> = {
  'path.ground': 'antenna.ground',
  'windings.coilCore': 'cores.coilCore',
  'windings.wire': 'cores.wire',
  'windings.tail': 'cores.tail',
  'receive.preampCurrent': 'supply.preamp',
  'receive.oscillatorCurrent': 'supply.oscillator',
};

/** Entries of version 2 that are no longer asked for, each with what it was called. */
export const gone: Readonly<Record<string, string>> = {};
