import {
  type BiasPoint,
  type BiasResistors,
  biasPoint,
} from '../../circuit/amplifier/biasPoint.ts';
import { biasOf } from '../../circuit/amplifier/commonEmitter.ts';
import { followerBias } from '../../circuit/amplifier/emitterFollower.ts';
import { type HybridPi, hybridPi } from '../../circuit/amplifier/hybridPi.ts';
import { cardAt, type TransistorCard } from '../../circuit/amplifier/transistorCard.ts';
import type { RowOf } from '../../fields/kinds.ts';
import type { SmallSeen } from './seen.ts';
import { soundCard } from './smallCard.ts';
import { type SmallKey, smallDevice } from './smallDevice.ts';
import type { smallResults } from './smallFields.ts';
import { amplifierParts, driverParts, followerParts, micParts } from './smallParts.ts';

type Row = RowOf<typeof smallResults.biases.columns>;

/** Coldest and hottest junction that the spread is worked out for, K. Common practice, no source. */
export const COLDEST = 273.15;
export const HOTTEST = 333.15;

/** A small stage at rest with a usual transistor. */
export interface AtRest {
  readonly card: TransistorCard;
  readonly point: BiasPoint;
  readonly pi: HybridPi;
  readonly rows: readonly Row[];
}

/** The small stages in the signal's order. */
export const smallNames = ['mic', 'follower', 'amplifier', 'driver'] as const;
export type SmallName = (typeof smallNames)[number];

/** What they are called. */
export const smallWords: Readonly<Record<SmallName, string>> = {
  mic: 'Microphone amplifier',
  follower: 'Follower',
  amplifier: 'Two-way amplifier',
  driver: 'Driver',
};

/** Operating points of all small stages, usual and at both ends of the spread. */
export const smallBias = (seen: SmallSeen): Readonly<Record<SmallName, AtRest>> => ({
  mic: atRest(seen, 'mic', seen.micDevice, biasOf(micParts(seen), seen.supply), null),
  follower: atRest(
    seen,
    'follower',
    seen.micDevice,
    followerBias(followerParts(seen), seen.supply),
    seen.micCurrent,
  ),
  amplifier: atRest(
    seen,
    'amplifier',
    seen.amplifierDevice,
    biasOf(amplifierParts(seen), seen.supply),
    seen.amplifierCurrent,
  ),
  driver: atRest(
    seen,
    'driver',
    seen.driverDevice,
    biasOf(driverParts(seen), seen.supply),
    seen.driverCurrent,
  ),
});

function atRest(
  seen: SmallSeen,
  name: SmallName,
  key: SmallKey,
  resistors: BiasResistors,
  measured: number | null,
): AtRest {
  const stage = smallWords[name];
  const device = smallDevice(key, seen);
  const card = soundCard(device);
  const { hfe, small } = device;
  const at = (bf: number, temperature: number, known: number | null) =>
    biasPoint(resistors, cardAt({ ...card, bf }, temperature), temperature, known);
  const usual = at(hfe[1], seen.ambient, measured);
  const row = (condition: string, gain: number, temperature: number, point: BiasPoint): Row => ({
    stage,
    condition,
    gain,
    temperature,
    vbe: point.vbe,
    ic: point.collectorCurrent,
    vb: point.base,
    ve: point.emitter,
    vc: point.collector,
  });
  const now = cardAt(card, seen.ambient);
  return {
    card: now,
    point: usual,
    pi: hybridPi(now, seen.ambient, usual),
    rows: [
      row('usual transistor, air as it is', hfe[1], seen.ambient, usual),
      row('least gain, cold', hfe[0], COLDEST, at(hfe[0], COLDEST, null)),
      row('most gain, hot', small.hfeMost, HOTTEST, at(small.hfeMost, HOTTEST, null)),
    ],
  };
}
