/** What a runner tells of an errand under way. */
export interface Told {
  /** How far it has come, 0 to 1. */
  readonly progress: (done: number) => void;
  readonly answer: (answer: unknown) => void;
  readonly failed: (says: string) => void;
}

/** Sends an errand away; answers a function that calls it back. */
export type Runner = (key: string, seen: unknown, told: Told) => () => void;
