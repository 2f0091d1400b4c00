import type { CommonEmitter } from '../../circuit/amplifier/commonEmitter.ts';
import type { TransformerDriver } from '../../circuit/amplifier/transformerDriver.ts';
import type { TwoWayAmplifier } from '../../circuit/amplifier/twoWayAmplifier.ts';
import type { TransmitSeen } from './seen.ts';

/** The two-way amplifier's parts as built. */
export const amplifierParts = (seen: TransmitSeen): TwoWayAmplifier => ({
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
export const driverParts = (seen: TransmitSeen): TransformerDriver => ({
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
  form: TransmitSeen['amplifierBias'],
  upper: number,
  lower: number,
): Pick<CommonEmitter, 'from' | 'upper' | 'lower'> => ({
  from: form === 'divider' ? 'supply' : 'collector',
  upper,
  lower: form === 'single' ? Number.POSITIVE_INFINITY : lower,
});
