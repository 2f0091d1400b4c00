/** How the final's transistors stand together. */
export interface Together {
  /** Two in push-pull. */
  readonly sides: 1 | 2;
  /** Side by side on each. */
  readonly gang: number;
  /** What the two sides of a push-pull stage leave of even harmonics, a plain ratio. */
  readonly left: number;
}

/** The final's form in numbers. */
export function togetherOf(seen: {
  readonly finalForm: 'single' | 'parallel' | 'pushPull';
  readonly finalDevices: number;
  readonly evenBalance: number;
}): Together {
  const pushPull = seen.finalForm === 'pushPull';
  return {
    sides: pushPull ? 2 : 1,
    gang: seen.finalForm === 'single' ? 1 : seen.finalDevices,
    left: pushPull ? 10 ** (-seen.evenBalance / 20) : 1,
  };
}

export const one: Together = { sides: 1, gang: 1, left: 1 };
