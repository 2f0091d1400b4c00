import type { Netlist } from '../nodal/netlist.ts';
import type { DeviceNodes } from './commonEmitter.ts';
import type { HybridPi } from './hybridPi.ts';

/** A stage as a circuit for signals, its ports still open. */
export interface StageCircuit {
  readonly net: Netlist;
  /** Nodes of input and output. */
  readonly ports: readonly [number, number];
  /** The transistor that works. */
  readonly device: DeviceNodes;
  readonly pi: HybridPi;
}
