import type { PowerAnswer } from '../../engine/errands/power/powerAnswer.ts';
import { useAnswer } from '../../store/errands.ts';

/** What the exact answer found, or null while there is none. */
export const useExact = (): PowerAnswer['found'] => useAnswer<PowerAnswer>('power')?.found ?? null;
