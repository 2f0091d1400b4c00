import { useEffect, useState } from 'react';

/** One frame of the screen, ms, and a little. */
const FRAME = 20;

/**
 * A value that is shown a few frames later, each place in its turn: where one answer feeds many
 * pictures, no single frame has to draw them all.
 *
 * @param turn how many others go before
 */
export function useInTurn<T>(value: T, turn: number): T | null {
  const [shown, show] = useState<T | null>(turn === 0 ? value : null);
  useEffect(() => {
    const timer = setTimeout(() => show(() => value), turn * FRAME);
    return () => clearTimeout(timer);
  }, [value, turn]);
  return shown;
}
