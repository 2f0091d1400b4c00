import { shelfOf } from '../../src/engine/stages/cores/shelf.ts';
import type { WindingsSeen } from '../../src/engine/stages/windings/seen.ts';

/** Cores and wire where one core is asked for. */
export const shelfFor = (coilCore: string) =>
  shelfOf({ coilCore, wire: 'metric', tail: 0.04 }, 7.2e6, []);

/** What Windings is given of a rig of two watts on 40 m. */
export const windingsRig: WindingsSeen = {
  nominal: 7.2e6,
  antenna: 50,
  coils: [
    { label: 'L1', l: 1.38e-6, current: 0.26, voltage: 22, own: null },
    { label: 'L2', l: 1.7e-6, current: 0.26, voltage: 26, own: null },
  ],
  wound: null,
  listed: null,
  coilQ: 150,
  transformerPrimary: 3,
  transformerSecondary: 4,
  transformerRatio: 4 / 3,
  seriesL: null,
  collectorLoad: 27,
  collectorPower: 2.2,
  dcCurrent: 0.26,
  finalForm: 'single',
  finalInput: 10,
  finalGain: 15,
  speechMean: 0.2,
  modulatorImpedance: 200,
  couplings: [{ place: 'Amplifier to filter', collector: 200, following: 448, turns: 0.668 }],
  shelf: shelfFor('auto'),
  wire: 'metric',
  tail: 0.04,
  testCapacitor: 100e-12,
  former: 10e-3,
  airWire: 1e-3,
  airPitch: 1.5,
  reactanceTimes: 4,
  transformerCore: 'auto',
  modulatorCore: 'auto',
  modulatorTurns: null,
  chokeFeed: 0.15,
  chokesAtHand: null,
};
