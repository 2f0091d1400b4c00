import { bentCurrents } from '../../circuit/amplifier/bentCurrents.ts';
import { emitterFollower } from '../../circuit/amplifier/emitterFollower.ts';
import { hybridPiOff } from '../../circuit/amplifier/hybridPi.ts';
import { microphoneAmplifier } from '../../circuit/amplifier/microphoneAmplifier.ts';
import type { StageCircuit } from '../../circuit/amplifier/stageCircuit.ts';
import { closeStage, stageFigures } from '../../circuit/amplifier/stageFigures.ts';
import { type ThirdOrder, thirdOrder } from '../../circuit/amplifier/thirdOrder.ts';
import { transformerDriver } from '../../circuit/amplifier/transformerDriver.ts';
import { twoWayAmplifier } from '../../circuit/amplifier/twoWayAmplifier.ts';
import { noiseShares } from '../../circuit/nodal/noiseFigure.ts';
import { scattering, type TwoPort } from '../../circuit/nodal/scattering.ts';
import type { Complex } from '../../circuit/nodal/twoPortFigures.ts';
import type { SmallSeen } from './seen.ts';
import type { AtRest } from './smallBias.ts';
import type { NoiseFound, SolvedDrive } from './smallFields.ts';
import { amplifierParts, driverParts, followerParts, micParts } from './smallParts.ts';

/** Collector–emitter voltage that no signal may use, V. Common practice, no source. */
export const SWING_KEEPS = 0.5;

/** An impedance as a resistance (Ω) and a capacitance (F) in parallel. */
export interface Parallel {
  readonly r: number;
  readonly c: number;
}

/** A small stage between its neighbours. */
export interface SolvedStage {
  /** Real part: its sign tells whether the stage turns the signal over. */
  readonly voltageGain: number;
  /** Size of the voltage gain. */
  readonly volts: number;
  readonly powerGain: number;
  readonly input: Parallel;
  readonly output: Parallel;
  /** Greatest power in the load, W, and what sets it. */
  readonly clip: number;
  readonly limitedBy: 'current' | 'voltage';
  readonly two: TwoPort;
  readonly drives: readonly [SolvedDrive, SolvedDrive];
}

/** Band in which stability is looked for, Hz, and at how many frequencies. */
export const SCAN_FROM = 1e5;
export const SCAN_TO = 300e6;
export const SCAN_POINTS = 29;

/** Frequency at which the stages for speech are worked out, Hz: the middle of speech. */
export const SPEECH = 1000;

/** The microphone amplifier from the microphone into the follower. */
export const solveMic = (
  seen: SmallSeen,
  { point, pi }: AtRest,
  load: number,
): SolvedStage | null =>
  solveStage('mic', microphoneAmplifier(micParts(seen), pi), [seen.micSource, load], SPEECH, point);

/** The follower from the microphone amplifier into the modulator. */
export const solveFollower = (
  seen: SmallSeen,
  { point, pi }: AtRest,
  source: number,
): SolvedStage | null =>
  solveStage(
    'follower',
    emitterFollower(followerParts(seen), pi),
    [source, seen.modulatorImpedance],
    SPEECH,
    point,
  );

/** The two-way amplifier from a source into its load; which place, for the workings' sake. */
export const solveAmplifier = (
  seen: SmallSeen,
  { card, point, pi }: AtRest,
  name: 'first' | 'second' | 'third',
  source: number,
): SolvedStage | null =>
  solveStage(
    name,
    twoWayAmplifier(amplifierParts(seen), pi, hybridPiOff(card)),
    [source, seen.amplifierLoad],
    name === 'third' ? seen.frequency : filterFrequencyOf(seen),
    point,
  );

/** Where the crystal filter and the amplifiers beside it work, Hz. */
export const filterFrequencyOf = ({ filterFrequency, frequency }: SmallSeen): number =>
  filterFrequency ?? frequency;

/** Spacing of the tones that the intercept is meant for, Hz: the usual one of receiver tests. */
export const TONE_SPACING = 20e3;

/** What the two-way amplifier adds from a source equal to its load: noise, and products of two tones. */
export function addedByAmplifier(
  seen: SmallSeen,
  { card, point, pi }: AtRest,
): { readonly noise: NoiseFound; readonly bend: ThirdOrder | null } | null {
  const circuit = twoWayAmplifier(amplifierParts(seen), pi, hybridPiOff(card));
  const two = closeStage(circuit, [seen.amplifierLoad, seen.amplifierLoad]);
  const frequency = filterFrequencyOf(seen);
  if (!scattering(two, frequency)) return null;
  const { inner, collector, emitter } = circuit.device;
  const noise = noiseShares(
    circuit.net,
    two,
    [
      { name: 'I_B', from: inner, to: emitter, current: point.baseCurrent },
      { name: 'I_C', from: collector, to: emitter, current: point.collectorCurrent },
    ],
    seen.ambient,
  );
  const bent = bentCurrents(card, seen.ambient, point);
  return { noise, bend: thirdOrder(circuit, two, bent, frequency, TONE_SPACING) };
}

/** The driver from a source through its transformer into the final's base. */
export const solveDriver = (
  seen: SmallSeen,
  { point, pi }: AtRest,
  source: number,
): SolvedStage | null =>
  solveStage(
    'driver',
    transformerDriver(driverParts(seen), pi),
    [source, seen.finalInput],
    seen.frequency,
    point,
  );

function solveStage(
  name: string,
  circuit: StageCircuit,
  ends: readonly [number, number],
  frequency: number,
  point: AtRest['point'],
): SolvedStage | null {
  const two = closeStage(circuit, ends);
  const figures = stageFigures(circuit, two, frequency, point, SWING_KEEPS);
  if (!figures) return null;
  return {
    voltageGain: figures.voltageGain.re,
    volts: Math.hypot(figures.voltageGain.re, figures.voltageGain.im),
    powerGain: figures.powerGain,
    input: parallel(figures.input, frequency),
    output: parallel(figures.output, frequency),
    clip: figures.most ** 2 / (2 * ends[1]),
    limitedBy: figures.limit,
    two,
    drives: [drive(name, circuit, two, 0), drive(name, circuit, two, 1)],
  };
}

/** Node voltages with 1 V behind one end: a wave of √W has 2√R volts behind it. */
function drive(name: string, circuit: StageCircuit, two: TwoPort, driven: 0 | 1): SolvedDrive {
  const { re, im } = driven === 0 ? two.first : two.second;
  const scale = 1 / (2 * Math.sqrt(two.ends[driven]));
  const { net, ports, device } = circuit;
  return {
    name,
    driven,
    net,
    ports,
    device,
    re: re.slice(0, net.nodes).map((x) => x * scale),
    im: im.slice(0, net.nodes).map((x) => x * scale),
  };
}

function parallel({ re, im }: Complex, frequency: number): Parallel {
  const square = re * re + im * im;
  return { r: square / re, c: -im / square / (2 * Math.PI * frequency) };
}
