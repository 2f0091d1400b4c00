/** What Bag reads: its own list. */
export const bagReads = { crystals: 'bag.crystals?' } as const;
