import { type BiasPoint, biasPoint } from '../../circuit/amplifier/biasPoint.ts';
import { biasOf } from '../../circuit/amplifier/commonEmitter.ts';
import { type HybridPi, hybridPi } from '../../circuit/amplifier/hybridPi.ts';
import { cardAt, type TransistorCard } from '../../circuit/amplifier/transistorCard.ts';
import { transistors } from '../../data/devices.ts';
import type { RowOf } from '../../fields/kinds.ts';
import type { TransmitSeen } from './seen.ts';
import { smallCard } from './smallCard.ts';
import type { smallResults } from './smallFields.ts';
import { amplifierParts, driverParts } from './smallParts.ts';

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

/** Operating points of both small stages, usual and at both ends of the spread. */
export const smallBias = (seen: TransmitSeen) => ({
  amplifier: atRest(seen, 'Two-way amplifier', 'amplifier'),
  driver: atRest(seen, 'Driver', 'driver'),
});

function atRest(seen: TransmitSeen, stage: string, name: 'amplifier' | 'driver'): AtRest {
  const key = seen[`${name}Device`];
  const card = smallCard(key);
  const parts = name === 'amplifier' ? amplifierParts(seen) : driverParts(seen);
  const resistors = biasOf(parts, seen.supply);
  const { hfe, small } = transistors[key];
  const at = (bf: number, temperature: number, measured: number | null) =>
    biasPoint(resistors, cardAt({ ...card, bf }, temperature), temperature, measured);
  const usual = at(hfe[1], seen.ambient, seen[`${name}Current`]);
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
