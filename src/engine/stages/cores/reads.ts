/** What the core box reads: the frequency, and its own entries. */
export const coresReads = {
  nominal: 'plan.nominal',
  coilCore: 'cores.coilCore',
  wire: 'cores.wire',
  tail: 'cores.tail',
  former: 'cores.former',
  airWire: 'cores.airWire',
  airPitch: 'cores.airPitch',
  box: 'cores.box?',
  turns1: 'cores.turns1?',
  trial1: 'cores.trial1?',
  turns2: 'cores.turns2?',
  trial2: 'cores.trial2?',
  outer: 'cores.outer?',
  inner: 'cores.inner?',
  height: 'cores.height?',
} as const;
