import type { CarrierChoice } from './carrierCrystal.ts';

/** A filter made of certain crystals of the bag. */
export interface Offered {
  /** From source to load. */
  readonly labels: readonly string[];
  /** dB; as on the Filter sheet once these are in place. */
  readonly ripple: number;
  readonly loss: number;
  /** Between the −3 dB points, Hz. */
  readonly width: number;
  /** From the best point down to the lowest one in the middle seven tenths of the width, dB. */
  readonly fall: number;
  /** Between the lowest and the highest series resonance, Hz. */
  readonly within: number;
  /** Aligning capacitors that are really fitted. */
  readonly capacitors: number;
  /** The one figure that was made least, dB. */
  readonly merit: number;
  /** Gain about the middle of its passband, dB, at the answer's offsets. */
  readonly gain: Float64Array;
}

/** What the bag can make of the filter. */
export interface Selection {
  readonly chosen: Offered;
  /** The n closest neighbours in order of frequency. */
  readonly closest: Offered;
  /** From the middle of the passband, Hz. */
  readonly offsets: Float64Array;
  readonly carrier: CarrierChoice | null;
  /** Crystals kept back for the carrier, because no other reached it. */
  readonly heldBack: readonly string[];
  /** Labels of the crystals that neither filter nor carrier takes, by rising frequency. */
  readonly left: readonly string[];
  /** Arrangements that were looked at. */
  readonly looks: number;
}

/** How many to buy. */
export interface BuyAnswer {
  readonly set: number;
  /** Hz */
  readonly window: number;
  readonly confidence: number;
  /** Null where even the largest lot drawn is not enough. */
  readonly number: number | null;
  /** Lots of 1, 2, 3 … crystals, as far as anything changes, and how likely the set is in them. */
  readonly lots: Float64Array;
  readonly chances: Float64Array;
  /** What the lots were drawn from. */
  readonly from: 'bag' | 'typed' | 'typical';
  /** Standard deviation of what they were drawn from, Hz. */
  readonly spread: number;
  readonly trials: number;
}

export interface ChooseAnswer {
  readonly selection: Selection | null;
  /** Why there is none. */
  readonly why: string | null;
}
