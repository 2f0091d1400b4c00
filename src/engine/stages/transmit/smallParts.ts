import type { CommonEmitter } from '../../circuit/amplifier/commonEmitter.ts';
import type { EmitterFollower } from '../../circuit/amplifier/emitterFollower.ts';
import type { MicrophoneAmplifier } from '../../circuit/amplifier/microphoneAmplifier.ts';
import type { TransformerDriver } from '../../circuit/amplifier/transformerDriver.ts';
import type { TwoWayAmplifier } from '../../circuit/amplifier/twoWayAmplifier.ts';
import type { SmallSeen } from './seen.ts';

/** The microphone amplifier's parts as built. */
export const micParts = (seen: SmallSeen): MicrophoneAmplifier => ({
  ...base(seen.micBias, seen.micUpper, seen.micLower),
  emitter: seen.micEmitter,
  bridged: seen.micBridged,
  bridge: seen.micBridge,
  feedback: Number.POSITIVE_INFINITY,
  feedbackC: 0,
  feed: seen.micFeed,
  choke: 0,
  inputC: seen.micCoupling,
  outputC: seen.micCoupling,
});

/** The follower's, behind the microphone amplifier's own coupling capacitor. */
export const followerParts = (seen: SmallSeen): EmitterFollower => ({
  upper: seen.followerUpper,
  lower: seen.followerLower,
  emitter: seen.followerEmitter,
  inputC: Number.POSITIVE_INFINITY,
  outputC: seen.followerCoupling,
});

/** The two-way amplifier's parts as built. */
export const amplifierParts = (seen: SmallSeen): TwoWayAmplifier => ({
  ...base(seen.amplifierBias, seen.amplifierUpper, seen.amplifierLower),
  emitter: seen.amplifierEmitter,
  bridged: seen.amplifierBridged,
  bridge: seen.amplifierBridge,
  feedback: seen.amplifierFeedback,
  feedbackC: seen.amplifierCoupling,
  feed: seen.amplifierFeed,
  choke: seen.amplifierChoke,
  coupling: seen.amplifierCoupling,
  asleep: seen.amplifierAsleep,
});

/** The driver's parts, its transformer wound so that the final's base becomes the load asked for. */
export const driverParts = (seen: SmallSeen): TransformerDriver => ({
  ...base(seen.driverBias, seen.driverUpper, seen.driverLower),
  emitter: seen.driverEmitter,
  bridged: seen.driverBridged,
  bridge: seen.driverBridge,
  feedback: seen.driverFeedback,
  feedbackC: seen.driverCoupling,
  feed: 0,
  choke: 0,
  inputC: seen.driverCoupling,
  primary: seen.driverWinding,
  turns: Math.sqrt(seen.driverLoad / seen.finalInput),
  leakage: seen.driverLeakage,
  core: seen.driverCore,
});

const base = (
  form: SmallSeen['amplifierBias'],
  upper: number,
  lower: number,
): Pick<CommonEmitter, 'from' | 'upper' | 'lower'> => ({
  from: form === 'divider' ? 'supply' : 'collector',
  upper,
  lower: form === 'single' ? Number.POSITIVE_INFINITY : lower,
});
