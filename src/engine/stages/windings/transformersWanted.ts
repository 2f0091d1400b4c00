import type { WindingsSeen } from './seen.ts';

/** A broadband transformer that the rig needs. */
export interface TransformerWanted {
  readonly label: string;
  readonly kind: 'output' | 'trifilar' | 'coupling';
  /** What it is there for. */
  readonly does: string;
  /** Which winding has a tap in its middle: its impedance and turns are those of one half. */
  readonly tapped: 'first' | 'second' | null;
  /** Impedances, Ω. */
  readonly first: number;
  readonly second: number;
  /** Turns of the first winding over the second; 1 for a trifilar winding. */
  readonly ratio: number;
  /** Whole turns of first and second that the ratio is made of, or null where it is free. */
  readonly whole: readonly [number, number] | null;
  /** What it carries at full power, W; null where the signal is small. */
  readonly power: number | null;
  /** Turns that the user wants on the first winding. */
  readonly asked: number | null;
}

const couplingDoes: Readonly<Record<string, string>> = {
  'First amplifier to filter':
    'Makes of the filter the load that the amplifier wants, and of the amplifier the source that the filter wants.',
  'Filter to second amplifier': 'Ends the filter in the resistance that it was designed for.',
  'Second amplifier to driver': 'Makes of the driver’s input the load that the amplifier wants.',
  'Second amplifier to mixer': 'Makes of the mixer the load that the amplifier wants.',
  'Band-pass to third amplifier': 'Ends the band-pass in the resistance that it was designed for.',
  'Band-pass to driver': 'Ends the band-pass in the resistance that it was designed for.',
  'Third amplifier to driver': 'Makes of the driver’s input the load that the amplifier wants.',
  'Driver to final': 'Turns the driver’s volts into the current that the final’s base takes.',
};

/** What the stages before ask for. */
export function transformersWanted(seen: WindingsSeen): TransformerWanted[] {
  return [...outputWanted(seen), modulatorWanted(seen), ...couplingsWanted(seen)];
}

function outputWanted(seen: WindingsSeen): TransformerWanted[] {
  const { collectorLoad, collectorPower, transformerRatio, antenna } = seen;
  if (collectorLoad === null || collectorPower === null || transformerRatio === null) return [];
  const { transformerPrimary: p, transformerSecondary: s } = seen;
  // Half the turns, a quarter of the impedance.
  const half = isPushPull(seen) ? 2 : 1;
  return [
    {
      label: 'Output transformer',
      kind: 'output',
      tapped: half === 2 ? 'first' : null,
      does: 'Makes of the antenna, through the output network, the load that the final wants.',
      first: collectorLoad / half ** 2,
      second: antenna,
      ratio: 1 / transformerRatio / half,
      whole: p === null || s === null ? null : [p, half * s],
      power: collectorPower,
      asked: null,
    },
  ];
}

/** Two transistors that take turns, on the halves of one winding. */
export const isPushPull = (seen: Pick<WindingsSeen, 'finalForm'>): boolean =>
  seen.finalForm === 'pushPull';

function modulatorWanted(seen: WindingsSeen): TransformerWanted {
  return {
    label: 'Modulator',
    kind: 'trifilar',
    tapped: null,
    does: 'Gives both diodes the same carrier in opposite senses, so that it cancels in their middle.',
    first: seen.modulatorImpedance,
    second: seen.modulatorImpedance,
    ratio: 1,
    whole: null,
    power: null,
    asked: seen.modulatorTurns,
  };
}

function couplingsWanted(seen: WindingsSeen): TransformerWanted[] {
  const { collectorPower, finalGain } = seen;
  return (seen.couplings ?? []).flatMap(({ place, collector, following, turns }) => {
    if (place === null || collector === null || following === null || turns === null) return [];
    const toFinal = place === 'Driver to final';
    const half = toFinal && isPushPull(seen) ? 2 : 1;
    return [
      {
        label: place,
        kind: 'coupling' as const,
        tapped: half === 2 ? ('second' as const) : null,
        does: couplingDoes[place] ?? 'Makes of what follows the load that is wanted.',
        first: collector,
        second: following / half ** 2,
        ratio: turns * half,
        whole: null,
        power: toFinal && collectorPower !== null ? collectorPower / 10 ** (finalGain / 10) : null,
        asked: null,
      },
    ];
  });
}
