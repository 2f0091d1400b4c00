/** A kind of battery, as far as a day out asks. */
export interface Battery {
  readonly title: string;
  /** Volts of the rig's supply for each cell: how many cells stand in for a supply. */
  readonly perCell: number;
  /** Share of the printed capacity that may be used without harm. */
  readonly usable: number;
  /** Peukert's exponent: how much less a strong current gets out. 1: nothing. */
  readonly peukert: number;
  /** Time over which the printed capacity was drawn, s. */
  readonly over: number;
  /** Share drawn and volts of a cell at a weak current, from full to empty. */
  readonly cell: readonly (readonly [drawn: number, volts: number])[];
  /** Standard that says over which time capacity is printed. */
  readonly source: string;
}

const HOUR = 3600;

/**
 * Kinds of batteries. The time that capacity is printed for: by the standard named. Usable shares:
 * common practice, no source. Exponents (lead 1.1 to 1.3) and the volts of a cell: makers' curves,
 * from memory.
 */
export const batteries = {
  lead: {
    title: 'Lead, gel or fleece',
    perCell: 2.15,
    usable: 0.5,
    peukert: 1.2,
    over: 20 * HOUR,
    cell: [
      [0, 2.12],
      [0.1, 2.1],
      [0.5, 2.03],
      [0.8, 1.95],
      [1, 1.8],
    ],
    source: 'IEC 61056-1: twenty hours',
  },
  ironPhosphate: {
    title: 'Lithium iron phosphate',
    perCell: 3.3,
    usable: 0.9,
    peukert: 1.05,
    over: 5 * HOUR,
    cell: [
      [0, 3.38],
      [0.05, 3.32],
      [0.5, 3.27],
      [0.8, 3.2],
      [0.9, 3.1],
      [1, 2.5],
    ],
    source: 'IEC 61960-3: five hours',
  },
  lithiumIon: {
    title: 'Lithium ion',
    perCell: 3.8,
    usable: 0.8,
    peukert: 1.05,
    over: 5 * HOUR,
    cell: [
      [0, 4.15],
      [0.1, 4.03],
      [0.5, 3.7],
      [0.8, 3.52],
      [0.9, 3.4],
      [1, 3],
    ],
    source: 'IEC 61960-3: five hours',
  },
  nickel: {
    title: 'Nickel–metal hydride',
    perCell: 1.25,
    usable: 0.8,
    peukert: 1.1,
    over: 5 * HOUR,
    cell: [
      [0, 1.38],
      [0.1, 1.3],
      [0.5, 1.24],
      [0.8, 1.19],
      [0.9, 1.12],
      [1, 0.9],
    ],
    source: 'IEC 61951-2: five hours',
  },
  alkaline: {
    title: 'Alkaline cells',
    perCell: 1.5,
    usable: 0.8,
    peukert: 1.3,
    over: 20 * HOUR,
    cell: [
      [0, 1.55],
      [0.1, 1.42],
      [0.5, 1.22],
      [0.8, 1.05],
      [1, 0.8],
    ],
    source: 'makers’ data sheets at weak currents, from memory',
  },
} as const satisfies Record<string, Battery>;

export type BatteryKey = keyof typeof batteries;

/** The piece of a cell's curve in which a share drawn lies: share and volts at its two ends. */
export function cellPiece(battery: Battery, drawn: number) {
  const { cell } = battery;
  let i = 1;
  while (i < cell.length - 1 && drawn > (cell[i]?.[0] ?? 1)) i++;
  const [from, volts] = cell[i - 1] ?? [0, 0];
  const [to, toVolts] = cell[i] ?? [1, volts];
  return { from, volts, to, toVolts };
}

/** Volts of a cell when a share of its capacity is drawn: straight lines between the points. */
export function cellVolts(battery: Battery, drawn: number): number {
  const { from, volts, to, toVolts } = cellPiece(battery, drawn);
  return volts + ((toVolts - volts) * (drawn - from)) / (to - from);
}
