import { hybridPiOff, transitionOf } from '../../circuit/amplifier/hybridPi.ts';
import { type StabilityScan, stabilityScan } from '../../circuit/amplifier/stabilityScan.ts';
import { rememberOf } from '../../fields/remember.ts';
import type { Problem } from '../../fields/stage.ts';
import { dbOfPowerRatio, dbOfVoltageRatio } from '../../quantity/decibel.ts';
import { format } from '../../quantity/format.ts';
import { dbmOfWatts } from '../../quantity/power.ts';
import { nodeRows } from './nodeRows.ts';
import { noiseRows } from './noiseRows.ts';
import { type SmallSeen, smallKeys, type TransmitSeen } from './seen.ts';
import { type AtRest, smallBias, smallNames, smallWords } from './smallBias.ts';
import { smallCard } from './smallCard.ts';
import {
  addedByAmplifier,
  SCAN_FROM,
  SCAN_POINTS,
  SCAN_TO,
  type SolvedStage,
  solveAmplifier,
  solveDriver,
  solveFollower,
  solveMic,
} from './smallCircuits.ts';
import { smallDevice } from './smallDevice.ts';

/**
 * The small stages in the transmitter's order, each between what really stands beside it. The last
 * answer is kept: most changes of a rig leave these stages alone.
 */
export const smallFigures = rememberOf<
  TransmitSeen,
  (typeof smallKeys)[number],
  ReturnType<typeof figuresOf>
>(smallKeys, figuresOf);

function figuresOf(seen: SmallSeen) {
  const contradiction = contradicts(seen);
  if (contradiction) return { stop: contradiction };
  const bias = smallBias(seen);
  const stop = notAtWork(bias);
  if (stop) return { stop };
  // The follower's input hardly depends on its source: any will do to find it.
  const probe = solveFollower(seen, bias.follower, seen.micFeed);
  if (!follows(probe)) return { stop: noGain('followerCoupling') };
  const mic = solveMic(seen, bias.mic, probe.input.r);
  if (!works(mic)) return { stop: noGain('micEmitter') };
  const follower = solveFollower(seen, bias.follower, mic.output.r);
  if (!follows(follower)) return { stop: noGain('followerCoupling') };
  const first = solveAmplifier(seen, bias.amplifier, 'first', seen.modulatorImpedance);
  if (!works(first)) return { stop: noGain('amplifierFeedback') };
  // Behind the filter, its transformer is wound for the input resistance, so that the source equals it.
  const second = solveAmplifier(seen, bias.amplifier, 'second', first.input.r);
  const third = thirdOf(seen, bias.amplifier);
  if (third === 'lost') return { stop: noGain('amplifierFeedback') };
  // The input doesn't depend on the source: any will do to find it.
  const trial = solveDriver(seen, bias.driver, seen.amplifierLoad);
  if (!works(second)) return { stop: noGain('amplifierFeedback') };
  if (!works(trial)) return { stop: noGain('driverFeedback') };
  const before = third ?? (seen.scheme === 'conversion' ? null : second);
  // Straight behind the band-pass a transformer makes them match.
  const driverSource =
    before === null ? trial.input.r : (before.output.r * trial.input.r) / seen.amplifierLoad;
  const driver = solveDriver(seen, bias.driver, driverSource);
  if (!works(driver)) return { stop: noGain('driverFeedback') };
  const added = addedByAmplifier(seen, bias.amplifier);
  const noise = added?.noise ?? null;
  const bend = added?.bend ?? null;
  const drives = [
    ...mic.drives,
    ...follower.drives,
    ...first.drives,
    second.drives[1],
    ...(third?.drives ?? []),
    ...driver.drives,
  ];
  const stability = { amplifier: scan(first), driver: scan(driver) };
  const { amplifier: ofAmplifier, driver: ofDriver } = stability;
  return {
    stop: null,
    mic,
    follower,
    first,
    second,
    third,
    driver,
    problems: wanders(bias, stability),
    results: {
      biases: smallNames.flatMap((name) => bias[name].rows),
      models: modelRows(bias),
      circuits: drives,
      nodes: nodeRows(drives),
      stability,
      micStageGain: dbOfVoltageRatio(mic.volts * follower.volts),
      micLoad: seen.micInput ?? mic.input.r,
      micClip: dbmOfWatts(mic.clip),
      micStanding: standing(bias.mic),
      followerSource: mic.output.r,
      followerInput: follower.input.r,
      followerOutput: follower.output.r,
      followerStanding: standing(bias.follower),
      followerClip: dbmOfWatts(follower.clip),
      amplifierStanding: standing(bias.amplifier),
      amplifierGain: dbOfPowerRatio(first.powerGain),
      amplifierInput: first.input.r,
      amplifierInputC: first.input.c,
      amplifierOutput: first.output.r,
      amplifierOutputC: first.output.c,
      secondOutput: second.output.r,
      amplifierNoise: noise
        ? dbOfPowerRatio(noise.shares.reduce((sum, { share }) => sum + share, 1))
        : null,
      amplifierNoises: noise ? noiseRows(noise) : null,
      noiseFound: noise,
      amplifierIntercept: bend && dbmOfWatts(bend.intercept),
      bendFound: bend,
      amplifierClip: dbmOfWatts(first.clip),
      amplifierK: ofAmplifier.least === null ? null : ofAmplifier.lowest,
      amplifierKAt:
        ofAmplifier.least === null ? null : (ofAmplifier.frequency[ofAmplifier.least] ?? null),
      thirdGain: third && dbOfPowerRatio(third.powerGain),
      thirdInput: third?.input.r ?? null,
      thirdOutput: third?.output.r ?? null,
      thirdClip: third && dbmOfWatts(third.clip),
      driverStanding: standing(bias.driver),
      driverGain: dbOfPowerRatio(driver.powerGain),
      driverInput: driver.input.r,
      driverInputC: driver.input.c,
      driverSource,
      driverOutput: driver.output.r,
      driverClip: dbmOfWatts(driver.clip),
      driverK: ofDriver.least === null ? null : ofDriver.lowest,
      driverKAt: ofDriver.least === null ? null : (ofDriver.frequency[ofDriver.least] ?? null),
    },
  };
}

/** The amplifier behind the band-pass, from a source that matches it; null where there is none. */
function thirdOf(seen: SmallSeen, amplifier: AtRest): SolvedStage | null | 'lost' {
  if (seen.scheme !== 'conversion' || seen.thirdAmplifier === 'no') return null;
  const probe = solveAmplifier(seen, amplifier, 'third', seen.frontEnd);
  if (!works(probe)) return 'lost';
  const third = solveAmplifier(seen, amplifier, 'third', probe.input.r);
  return works(third) ? third : 'lost';
}

export type SmallFigures = Extract<ReturnType<typeof smallFigures>, { stop: null }>;

const scan = ({ two }: SolvedStage) => stabilityScan(two, SCAN_FROM, SCAN_TO, SCAN_POINTS);

const standing = ({ point }: AtRest): number => point.collectorCurrent + point.baseCurrent;

/** It amplifies the right way round, both ends take power, and no figure is beyond all sense. */
const works = (stage: SolvedStage | null): stage is SolvedStage =>
  stage !== null && stage.voltageGain < 0 && isSound(stage);

/** A follower: the output goes with the input. */
const follows = (stage: SolvedStage | null): stage is SolvedStage =>
  stage !== null && stage.voltageGain > 0 && isSound(stage);

const isSound = (stage: SolvedStage): boolean =>
  [stage.powerGain, stage.input.r, stage.output.r, stage.clip].every(sensible);

const sensible = (figure: number): boolean => figure > 1e-12 && figure < 1e12;

/** A stage whose transistor is saturated, or has no current to speak of. */
function notAtWork(bias: ReturnType<typeof smallBias>): Problem | null {
  for (const name of smallNames) {
    const { point } = bias[name];
    const which = smallWords[name];
    if (point.vce < LEAST_VOLTAGE) {
      return {
        field: `transmit.${name}Upper`,
        weight: 'stops',
        says: `${which}: between collector and emitter only ${format(Math.max(0, point.vce), 'V', 2)} would be left, too little to amplify.`,
        try: 'A larger upper base resistor, more emitter resistance, or less in the collector’s feed.',
      };
    }
    if (point.collectorCurrent < LEAST_CURRENT) {
      return {
        field: `transmit.${name}Lower`,
        weight: 'stops',
        says: `${which}: with these resistors no current flows.`,
        try: 'A smaller upper or a larger lower base resistor.',
      };
    }
  }
  return null;
}

/** The user's own transistor, where it is used and can't be. */
function contradicts(seen: SmallSeen): Problem | null {
  if (![seen.micDevice, seen.amplifierDevice, seen.driverDevice].includes('own')) return null;
  const field = 'transmit.ownSmallTransit';
  if (seen.ownSmallHfeLeast > seen.ownSmallHfe || seen.ownSmallHfe > seen.ownSmallHfeMost) {
    return {
      field: 'transmit.ownSmallHfe',
      weight: 'stops',
      says: 'Your own transistor: the usual current gain must lie between the least and the most.',
      try: 'Least, usual and most in this order, as the data sheet has them.',
    };
  }
  if (smallCard(smallDevice('own', seen))) return null;
  return {
    field,
    weight: 'stops',
    says: 'Your own transistor: the capacitances alone would keep fT lower than that at this current.',
    try: 'fT at the current that the sheet measures it at, or smaller capacitances.',
  };
}

/** Below these a stage isn't one: V, A. Common practice, no source. */
const LEAST_VOLTAGE = 0.6;
const LEAST_CURRENT = 1e-5;

const noGain = (
  key: 'amplifierFeedback' | 'driverFeedback' | 'micEmitter' | 'followerCoupling',
): Problem => ({
  field: `transmit.${key}`,
  weight: 'stops',
  says: key.endsWith('Feedback')
    ? 'With these parts the signal goes through the feedback resistor and not through the transistor.'
    : 'With these parts the microphone amplifier passes no signal on.',
  try: 'A smaller emitter resistor, larger capacitors and windings, or a larger feedback resistor.',
});

/** Currents that depend on luck and weather, and stages that may oscillate. */
function wanders(
  bias: ReturnType<typeof smallBias>,
  stability: Readonly<Record<'amplifier' | 'driver', StabilityScan>>,
): Problem[] {
  const problems: Problem[] = [];
  for (const name of smallNames) {
    const [, low, high] = bias[name].rows;
    const [least, most] = [low?.ic ?? 0, high?.ic ?? 0];
    const which = smallWords[name];
    if (most > 2 * least) {
      problems.push({
        field: name === 'follower' ? 'transmit.followerEmitter' : `transmit.${name}Bridged`,
        weight: 'warns',
        says: `${which}: the current may be anything from ${format(least, 'A', 2)} to ${format(most, 'A', 2)}, as the transistor and the weather will have it.`,
        try: 'Smaller base resistors and more emitter resistance, or choose the transistor by measuring.',
      });
    }
    const gives = name === 'amplifier' || name === 'driver' ? stability[name].gives : null;
    if (gives !== null) {
      problems.push({
        field: `transmit.${name}Feedback`,
        weight: 'warns',
        says: `${which}: near ${format(gives, 'Hz', 2)} more comes back out of an end than goes in. It may oscillate.`,
        try: 'A smaller feedback resistor, a larger one in the emitter, or a resistor of some ohms in series with the base.',
      });
    }
  }
  return problems;
}

/** The small-signal models, the sleeping transistor's among them. */
function modelRows(bias: ReturnType<typeof smallBias>) {
  const row = (stage: string, { pi }: AtRest) => ({
    stage,
    gm: pi.gm,
    rpi: 1 / pi.gpi,
    cpi: pi.cpi,
    cmu: pi.cmu,
    ro: 1 / pi.go,
    cec: pi.cec,
    ft: transitionOf(pi),
  });
  const off = hybridPiOff(bias.amplifier.card);
  return [
    row(smallWords.mic, bias.mic),
    row(smallWords.follower, bias.follower),
    row(smallWords.amplifier, bias.amplifier),
    {
      stage: 'Two-way amplifier, asleep',
      gm: null,
      rpi: null,
      cpi: off.cpi,
      cmu: off.cmu,
      ro: null,
      cec: null,
      ft: null,
    },
    row(smallWords.driver, bias.driver),
  ];
}
