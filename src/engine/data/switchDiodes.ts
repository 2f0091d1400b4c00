/** A diode that a carrier switches on and off. */
export interface SwitchDiode {
  readonly name: string;
  /** Voltage from which it conducts at some milliamperes, V: the foot of the tangent there. */
  readonly knee: number;
  /** Emission coefficient, 1: its slope resistance is so many thermal voltages over the current. */
  readonly emission: number;
  /** Resistance in series, Ω. */
  readonly bulk: number;
  readonly source: string;
}

export type SwitchDiodeKey = 'n4148' | 'schottky' | 'germanium';

/** Diodes offered for the modulator. */
export const switchDiodes: Readonly<Record<SwitchDiodeKey, SwitchDiode>> = {
  n4148: {
    name: '1N4148, silicon',
    knee: 0.62,
    emission: 1.75,
    bulk: 0.6,
    source: 'maker’s model card (IS 2.5 nA, N 1.75, RS 0.57 Ω), from memory; knee at 5 mA',
  },
  schottky: {
    name: 'Small Schottky diode',
    knee: 0.35,
    emission: 1.05,
    bulk: 6,
    source: 'typical of 70 V, 2 pF signal types (0.41 V at 1 mA), from memory',
  },
  germanium: {
    name: 'Germanium point contact',
    knee: 0.22,
    emission: 1.5,
    bulk: 30,
    source: 'common practice, no source',
  },
};
