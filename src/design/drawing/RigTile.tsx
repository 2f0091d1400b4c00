import type { ReactNode } from 'react';
import {
  Amplifier,
  Antenna,
  Arrow,
  Changeover,
  Coil,
  Crystal,
  CrystalFilter,
  Dial,
  Loudspeaker,
  Meter,
  Microphone,
  Modulator,
  Oscillator,
  Toroid,
  Wave,
} from './symbols.tsx';

interface Tile {
  /** Where wires come in from above and go on below, in the tile's 84 units of width. */
  above: readonly number[];
  below: readonly number[];
  /** Drawn around (0, 0), 32 units to each side. */
  symbol: ReactNode;
}

const both = [26, 44] as const;
const one = [35] as const;

const tiles: Readonly<Record<string, Tile>> = {
  plan: { above: [], below: [], symbol: <Dial x={0} y={0} scale={0.72} /> },
  receive: {
    above: [],
    below: both,
    symbol: (
      <>
        <path d="M-16-14V0M2-14V0" />
        <Microphone x={-16} y={-14} turn={90} scale={0.9} />
        <Loudspeaker x={2} y={-12} turn={90} scale={0.8} />
        <Amplifier x={-16} y={14} turn={90} scale={0.75} />
        <Amplifier x={2} y={14} turn={-90} scale={0.75} />
      </>
    ),
  },
  carrier: {
    above: both,
    below: both,
    symbol: (
      <>
        <path d="M-7 0h38" />
        <Modulator x={-7} y={0} />
        <Oscillator x={28} y={0} scale={0.95} />
      </>
    ),
  },
  quartz: {
    above: both,
    below: both,
    symbol: (
      <>
        <Amplifier x={-16} y={0} turn={90} scale={0.75} />
        <Amplifier x={2} y={0} turn={-90} scale={0.75} />
        <Crystal x={29} y={0} turn={90} scale={0.9} />
      </>
    ),
  },
  filter: { above: both, below: both, symbol: <CrystalFilter x={0} y={0} scale={0.8} /> },
  transmit: {
    above: both,
    below: both,
    symbol: <Amplifier x={-16} y={0} turn={90} scale={1.25} />,
  },
  windings: {
    above: both,
    below: one,
    symbol: (
      <>
        <path className="body blank" d="M-22-12h30v24h-30z" />
        <Changeover x={-7} y={0} turn={90} scale={0.75} />
        <Toroid x={27} y={0} scale={0.85} />
      </>
    ),
  },
  output: {
    above: one,
    below: one,
    symbol: (
      <>
        <path className="body blank" d="M-11-22h8v44h-8z" />
        <Coil x={-7} y={0} turn={90} />
        <path d="M-7-26h22M-7 26h22M15-31v10M20-31v10M20-26h8M15 21v10M20 21v10M20 26h8M28-30v8M31-28v4M28 22v8M31 24v4" />
      </>
    ),
  },
  path: {
    above: one,
    below: [],
    symbol: (
      <>
        <path d="M-7 0V20h14V4" />
        <Antenna x={7} y={20} />
        <Wave x={22} y={-8} scale={0.7} />
      </>
    ),
  },
  bench: { above: [], below: [], symbol: <Meter x={0} y={0} /> },
};

const wires = (tile: Tile) =>
  [...tile.above.map((x) => `M${x} 0V5`), ...tile.below.map((x) => `M${x} 5V10`)].join('');

/** One stage of the rig in the upright form: its symbol on the wires that pass it. */
export function RigTile({ of }: { of: string }) {
  const tile = tiles[of];
  if (tile === undefined) return null;
  return (
    <span className="rig-tile">
      <svg
        aria-hidden="true"
        className="rig-tile__wires"
        viewBox="0 0 84 10"
        preserveAspectRatio="none"
      >
        <path d={wires(tile)} />
      </svg>
      <svg aria-hidden="true" className="rig-tile__symbol" viewBox="-42 -34 84 68">
        {tile.symbol}
        {of === 'transmit' && <Arrow x={2} y={-6} turn={-90} />}
      </svg>
    </span>
  );
}
