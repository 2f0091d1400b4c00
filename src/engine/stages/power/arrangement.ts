/** How the final's transistors stand together. */
export interface Arrangement {
  /** Two in push-pull. */
  readonly sides: 1 | 2;
  /** Side by side on each. */
  readonly gang: number;
  /** Part of the even harmonics that the two sides of a push-pull stage differ by. */
  readonly unlike: number;
}

/**
 * @param form of the final
 * @param devices side by side, on each side; not looked at for a single one
 * @param balance by how much even harmonics cancel in push-pull, dB
 */
export function arrangementOf(
  form: 'single' | 'parallel' | 'pushPull',
  devices: number,
  balance: number,
): Arrangement {
  return {
    sides: form === 'pushPull' ? 2 : 1,
    gang: form === 'single' ? 1 : devices,
    unlike: form === 'pushPull' ? 10 ** (-balance / 20) : 1,
  };
}
