import { speechEnvelope } from '../../circuit/speechEnvelope.ts';
import { audioChips } from '../../data/devices.ts';
import type { SupplySeen } from './seen.ts';

/** What the rig may be doing, in the order of rising current. */
export const states = ['receiving', 'listening', 'silent', 'speech', 'tone'] as const;
export type State = (typeof states)[number];

/** What each state is called. */
export const stateNames: Readonly<Record<State, string>> = {
  receiving: 'Receive, volume down',
  listening: 'Listening',
  silent: 'Transmit, silent',
  speech: 'Speaking',
  tone: 'Steady tone, and every speech peak',
};

export interface BudgetRow extends Readonly<Record<State, number>> {
  readonly stage: string;
}

/**
 * Mean supply current of a class-B audio stage that gives a tone, A: half of the sines pass from
 * the supply, Ipk/π.
 *
 * @param power W
 * @param speaker Ω
 */
export const audioCurrent = (power: number, speaker: number): number =>
  Math.sqrt((2 * power) / speaker) / Math.PI;

/** Current of every stage in every state, A, in the order of the signal. */
export function budget(seen: SupplySeen): BudgetRow[] {
  const { idle } = audioChips[seen.chip];
  const loud = audioCurrent(Math.min(seen.loudness, seen.speakerMost), seen.speaker);
  const spoken = seen.quiescent + (seen.peak - seen.quiescent) * speechEnvelope(seen.speechMean);
  return [
    always('Carrier oscillator', seen.oscillator),
    ...(seen.scheme === 'conversion' ? [always('Conversion oscillator', seen.conversion)] : []),
    always('Two-way amplifiers', 2 * seen.amplifier),
    row('Audio preamplifier', seen.preamp, seen.preamp, 0, 0, 0),
    row('Audio chip', idle, idle + loud, 0, 0, 0),
    sent('Microphone amplifier', seen.mic),
    sent('Follower', seen.follower),
    ...(seen.thirdGain === null ? [] : [sent('Third amplifier', seen.amplifier)]),
    sent('Driver', seen.driver),
    row('Final', 0, 0, seen.quiescent, spoken, seen.peak),
    sent('Relays', seen.relay),
    always('Everything else', seen.extras),
  ];
}

const row = (
  stage: string,
  receiving: number,
  listening: number,
  silent: number,
  speech: number,
  tone: number,
): BudgetRow => ({ stage, receiving, listening, silent, speech, tone });
const always = (stage: string, i: number) => row(stage, i, i, i, i, i);
const sent = (stage: string, i: number) => row(stage, 0, 0, i, i, i);

/** All stages together, A. */
export const total = (rows: readonly BudgetRow[], state: State): number =>
  rows.reduce((sum, one) => sum + one[state], 0);

/** State by state: current, watts, and who takes most. */
export const stateRows = (rows: readonly BudgetRow[], supply: number) =>
  states.map((state) => {
    const current = total(rows, state);
    const most = rows.reduce((best, one) => (one[state] > best[state] ? one : best));
    return {
      state: stateNames[state],
      current,
      power: current * supply,
      most: most.stage,
      share: most[state] / current,
    };
  });
