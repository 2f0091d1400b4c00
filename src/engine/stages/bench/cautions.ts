import { format } from '../../quantity/format.ts';

/**
 * Traps of the instruments and dangers of the work, in words.
 *
 * @param lost what oscilloscope and probe lose at the operating frequency, dB ≥ 0, or null
 */
export function cautions(lost: number | null): string {
  const scope =
    lost !== null && lost > 0.5
      ? `Oscilloscope and probe show ${format(lost, 'dB', 3)} too little at this frequency: use a trimmed ×10 probe and five times the bandwidth. `
      : '';
  return `${scope}First power-up with the current limit at 0.1–0.2 A. Transmit only into a dummy load that bears the power, in short bursts: the final, its heat sink and the load get hot enough to burn, and radio-frequency voltage burns too. Trim a ×10 probe on its square wave before believing a voltage; ground it with a short spring. Never connect an analyser or software radio without 30–50 dB before it; ten decibels more must change nothing but the level. The antenna comes last, and only with a licence.`;
}
