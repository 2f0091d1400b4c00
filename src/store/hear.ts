import { create } from 'zustand';

/** A sound of one's own: samples at the rate that the errand works at. */
export interface OwnSound {
  readonly name: string;
  readonly samples: Float32Array;
}

/** What is listened to. Nothing of it is saved, and nothing of it leaves the page. */
interface HearState {
  /** Not saved: a file's sound or what was spoken; null for the voice by formula. */
  readonly own: OwnSound | null;
  /** Not saved: which of the sounds is heard. */
  readonly which: string;
  take(own: OwnSound | null): void;
  choose(which: string): void;
}

export const useHear = create<HearState>()((set) => ({
  own: null,
  which: 'A',
  take: (own) => set({ own }),
  choose: (which) => set({ which }),
}));
