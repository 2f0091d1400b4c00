import type { Ladder } from '../../circuit/ladder.ts';
import { kinds, ROOM } from './factors.ts';
import type { Spreads } from './spreads.ts';

/** A ladder whose parts can be set anew for each build, without anything being allocated. */
export interface Varied {
  readonly ladder: Ladder;
  /** Sets every part to its wanted value and what the draws say it is off by. */
  readonly set: (draws: Float64Array, spreads: Spreads) => void;
}

const at = (kind: (typeof kinds)[number]) => kinds.indexOf(kind) * ROOM;
const [COUPLING, SERIES, FREQUENCY, LM, RM, C0, ENDS] = [
  at('coupling'),
  at('series'),
  at('frequency'),
  at('lm'),
  at('rm'),
  at('c0'),
  at('ends'),
] as const;

/**
 * A copy of a ladder to be varied in place.
 *
 * Motional inductance, resistance and holder are off by a factor exp(σ·z), which is never negative
 * and for small σ is 1 + σ·z. The series resonance keeps its own draw: Cm follows from fs and Lm.
 */
export function varied(wanted: Ladder): Varied {
  const { lm, cm, rm, c0, series, coupling } = wanted;
  const n = lm.length;
  const fs = Float64Array.from(lm, (l, i) => 1 / (2 * Math.PI * Math.sqrt(l * (cm[i] ?? 0))));
  const source: [number, number] = [wanted.source[0], wanted.source[1]];
  const load: [number, number] = [wanted.load[0], wanted.load[1]];
  const ladder: Ladder = {
    ...wanted,
    lm: lm.slice(),
    cm: cm.slice(),
    rm: rm.slice(),
    c0: c0.slice(),
    series: series.slice(),
    coupling: coupling.slice(),
    source,
    load,
  };
  const set = (draws: Float64Array, spreads: Spreads) => {
    const { capacitors, frequency, ends } = spreads;
    for (let i = 0; i < n; i += 1) {
      const off = 1 + ((draws[FREQUENCY + i] as number) * frequency) / (fs[i] as number);
      const slow = Math.exp(spreads.lm * (draws[LM + i] as number));
      ladder.lm[i] = (lm[i] as number) * slow;
      ladder.cm[i] = (cm[i] as number) / (slow * off * off);
      ladder.rm[i] = (rm[i] as number) * Math.exp(spreads.rm * (draws[RM + i] as number));
      ladder.c0[i] = (c0[i] as number) * Math.exp(spreads.c0 * (draws[C0 + i] as number));
      ladder.series[i] = (series[i] as number) * (1 + capacitors * (draws[SERIES + i] as number));
    }
    for (let i = 0; i < coupling.length; i += 1) {
      ladder.coupling[i] =
        (coupling[i] as number) * (1 + capacitors * (draws[COUPLING + i] as number));
    }
    source[0] = wanted.source[0] * (1 + ends * (draws[ENDS] as number));
    load[0] = wanted.load[0] * (1 + ends * (draws[ENDS + 1] as number));
  };
  return { ladder, set };
}
