import { conductionAngle, cosinePulse, standingRatio } from '../../circuit/conduction.ts';
import { powerRatioOfDb } from '../../quantity/decibel.ts';
import { one, type Together } from './together.ts';

/** What the final has to do, and from what. V, W, dB, A, rad. */
export interface PowerStageAsked {
  readonly supply: number;
  readonly saturation: number;
  readonly pep: number;
  /** Loss allowed for the output network, dB. */
  readonly network: number;
  readonly biasBy: 'current' | 'angle';
  readonly standing: number;
  readonly angle: number;
  /** One transistor where nothing is said. */
  readonly together?: Together;
}

/** Highest harmonic that is followed. */
const HARMONICS = 10;

/**
 * The final by hand: a cosine pulse of collector current into a tuned load that makes the collector
 * swing from twice the supply down to the saturation voltage at peak envelope power.
 *
 * RL = (Vcc − Vsat)²/(2P), in push-pull four times that from collector to collector; the currents are
 * those of one side; I1 = (Vcc − Vsat)/RL; the pulse's other coefficients follow from the
 * conduction angle, and that from the standing current.
 *
 * @return power at the collector W, load Ω, currents A (fundamental and harmonics peak), angle rad,
 *   efficiency as a fraction. Holds up to the onset of saturation, with a load that shorts the
 *   harmonics' voltage.
 * Source: closed form; Terman, Radio Engineers' Handbook, 1943, section 5 (from memory).
 */
export function powerStage(asked: PowerStageAsked) {
  const { sides, left } = asked.together ?? one;
  const swing = asked.supply - asked.saturation;
  const collectorPower = asked.pep * powerRatioOfDb(asked.network);
  const collectorLoad = (sides * swing) ** 2 / (2 * collectorPower);
  const fundamental = (sides * swing) / collectorLoad;
  const angle =
    asked.biasBy === 'angle' ? asked.angle : conductionAngle(asked.standing / sides / fundamental);
  const quiescent =
    asked.biasBy === 'current'
      ? asked.standing
      : Math.max(0, standingRatio(angle) * fundamental * sides);
  const classA = angle >= 2 * Math.PI;
  // In class A the current never stops: it swings about the standing current, however large.
  const peakCurrent = classA
    ? quiescent / sides + fundamental
    : fundamental / cosinePulse(angle, 1);
  const dcCurrent = classA ? quiescent : sides * peakCurrent * cosinePulse(angle, 0);
  const harmonicCurrents: number[] = [dcCurrent, fundamental];
  for (let n = 2; n <= HARMONICS; n += 1) {
    const kept = n % 2 === 0 ? left : 1;
    harmonicCurrents.push(classA ? 0 : kept * peakCurrent * cosinePulse(angle, n));
  }
  return {
    collectorPower,
    collectorLoad,
    fundamental,
    conductionAngle: angle,
    operating: classOf(angle),
    quiescent,
    peakCurrent,
    dcCurrent,
    harmonicCurrents,
    efficiency: collectorPower / (asked.supply * dcCurrent),
    overall: asked.pep / (asked.supply * dcCurrent),
  };
}

function classOf(angle: number): 'a' | 'ab' | 'b' | 'c' {
  if (angle >= 2 * Math.PI) return 'a';
  if (angle > Math.PI) return 'ab';
  return angle === Math.PI ? 'b' : 'c';
}
