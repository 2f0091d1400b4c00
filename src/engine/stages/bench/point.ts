import type { Look, Working } from '../../fields/workings.ts';
import type { Sides } from './judge.ts';
import type { BenchSeen } from './seen.ts';

/** Tables of test points, by the unit and the digits of their readings. */
export type Group =
  | 'supplies'
  | 'currents'
  | 'frequencies'
  | 'widths'
  | 'volts'
  | 'powers'
  | 'levels'
  | 'harmonics';

/** What reads the point: its error joins the tolerance. */
export type Instrument = 'meter' | 'scope' | 'power' | 'counter' | 'analyser';

/** How far a built rig may lie from the design, in the reading's own unit or as a share of it. */
export interface Spread {
  /** Share of the expected reading. */
  readonly share?: number;
  /** In the unit of the reading. */
  readonly fixed?: number;
  /** Where the figure comes from. */
  readonly from: string;
}

/** A limit that a rule or good practice sets on the reading. */
export interface Limit {
  readonly sides: 'atMost' | 'atLeast';
  readonly value: (seen: BenchSeen) => number | null;
  readonly working: Working | ((look: Look) => Working);
  /** Wanted distance from it; where not said, Output's margin wanted. Same unit. */
  readonly spare?: number;
}

/** A place along the finished rig where a reading can be taken. */
export interface Point {
  readonly group: Group;
  /** Place in the order of work. */
  readonly step: number;
  readonly point: string;
  readonly instrument: string;
  readonly by: Instrument;
  /** The stage whose figure the expectation needs. */
  readonly needs: string;
  /** The reading to expect, or null where that stage has no answer. */
  readonly expected: (seen: BenchSeen) => number | null;
  /** Why there is nothing to expect, where the stage it needs has an answer. */
  readonly absent?: (seen: BenchSeen) => string | null;
  readonly working: Working | ((look: Look) => Working);
  readonly spread: Spread;
  readonly sides: Sides;
  /** Own input that holds the reading. */
  readonly read: keyof BenchSeen & string;
  /** True where the sign may be left out: a level below the carrier. */
  readonly negative?: boolean;
  /** True where a power is read and the row shows volts across the dummy load. */
  readonly asVolts?: boolean;
  readonly limit?: Limit;
  /** What a reading below the band usually comes from; blank where lower is better. */
  readonly below: string;
  /** What a reading above it usually comes from. */
  readonly above: string;
}
