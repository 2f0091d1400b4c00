/** Where a value came from. */
export type Origin = 'typed' | 'typical' | 'worked' | 'measured';

/** How a check turned out; `waits` while an earlier stage has no answer. */
export type Outcome = 'holds' | 'close' | 'fails' | 'waits';

/** What is wrong with a value, and what would help. */
export interface Trouble {
  readonly says: string;
  readonly try?: string | undefined;
}
