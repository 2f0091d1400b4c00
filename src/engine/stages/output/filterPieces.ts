import { halfWave } from '../../circuit/halfWave.ts';
import { lowpassFromPrototype } from '../../circuit/lowpassFromPrototype.ts';
import { butterworth, chebyshev } from '../../circuit/prototype.ts';
import type { NetworkAsked } from './network.ts';
import { type Piece, plain } from './part.ts';
import type { StopBand } from './stopBand.ts';

/** Parts of the low-pass filter, a capacitor first. */
export function filterPieces(asked: NetworkAsked, end: number, stop: StopBand | null): Piece[] {
  const { lowpass, order, ripple, antenna, nominal, cutoffRatio } = asked;
  if (lowpass === 'none') return [];
  if (lowpass === 'halfWave' || lowpass === 'doubleHalfWave') {
    const { l, c } = halfWave(antenna, nominal);
    const outer = plain('capacitor', c, { of: 'halfCapacitor' });
    const section = [outer, plain('coil', l, { of: 'halfCoil' }), outer];
    return lowpass === 'halfWave' ? section : [...section, ...section];
  }
  const cutoff = cutoffRatio * nominal;
  if (stop) return ellipticPieces(stop, end, cutoff);
  const { g } = lowpass === 'butterworth' ? butterworth(order) : chebyshev(order, ripple);
  const own = g.slice(1, order + 1);
  return lowpassFromPrototype(own, end, cutoff).map((value, k) =>
    plain(k % 2 === 0 ? 'capacitor' : 'coil', value, { of: 'prototype', g: own[k] ?? 0 }),
  );
}

function ellipticPieces({ prototype }: StopBand, end: number, cutoff: number): Piece[] {
  const w = 2 * Math.PI * cutoff;
  const farads = (g: number) => g / (w * end);
  return prototype.shunts.flatMap((g, k): Piece[] => {
    const shunt = plain('capacitor', farads(g), { of: 'prototype', g });
    const trap = prototype.traps[k];
    if (!trap) return [shunt];
    const notch = trap.notch * cutoff;
    return [
      shunt,
      { ...plain('coil', (trap.l * end) / w, { of: 'prototype', g: trap.l }), notch },
      {
        kind: 'across',
        value: farads(trap.c),
        shares: [{ of: 'prototype', g: trap.c }],
        notch,
        order: null,
      },
    ];
  });
}
