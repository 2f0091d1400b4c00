import { factor, solve } from '../nodal/factor.ts';
import { scattering, type TwoPort } from '../nodal/scattering.ts';
import type { BentCurrents } from './bentCurrents.ts';
import type { StageCircuit } from './stageCircuit.ts';

/** A complex number. */
type Complex = readonly [number, number];

/** What two equal tones make of each other in a stage. */
export interface ThirdOrder {
  /** Output power of each tone when each brings a watt, W: the power gain. */
  readonly tone: number;
  /** Output power of the product 2f1 − f2 then, W. */
  readonly product: number;
  /** Output power of each tone at which the product would be as strong, W. */
  readonly intercept: number;
}

/**
 * Third-order intercept of a stage that `closeStage` has closed, by the method of nonlinear
 * currents: the bent part of the transistor's currents drives the linear circuit at 2f and at the
 * difference, what comes of it drives it again at f. Weak signals only.
 *
 * @param frequency Hz, of both tones
 * @param spacing of the tones, Hz
 * @return null where the circuit has no answer
 * @source Wambacq & Sansen, Distortion Analysis of Analog Integrated Circuits (1998), ch. 5
 */
export function thirdOrder(
  { device }: StageCircuit,
  two: TwoPort,
  bent: BentCurrents,
  frequency: number,
  spacing: number,
): ThirdOrder | null {
  if (!scattering(two, frequency)) return null;
  const { size } = two.system;
  const re = new Float64Array(size);
  const im = new Float64Array(size);
  const at = (node: number): Complex =>
    node > 0 ? [re[node - 1] ?? 0, im[node - 1] ?? 0] : [0, 0];
  const inner = (): Complex => minus(at(device.inner), at(device.emitter));
  const put = (node: number, [x, y]: Complex, sign: number) => {
    if (node === 0) return;
    re[node - 1] = (re[node - 1] ?? 0) + sign * x;
    im[node - 1] = (im[node - 1] ?? 0) + sign * y;
  };
  // A bent current from collector to emitter, with what it asks of the base: its share and its charge.
  const driven = (f: number, collector: Complex, base: Complex): boolean => {
    if (!factor(two.system, 2 * Math.PI * f, two.lu)) return false;
    const store = 2 * Math.PI * f * bent.transit;
    const intoBase: Complex = [base[0] - store * collector[1], base[1] + store * collector[0]];
    re.fill(0);
    im.fill(0);
    put(device.collector, collector, -1);
    put(device.inner, intoBase, -1);
    put(device.emitter, collector, 1);
    put(device.emitter, intoBase, 1);
    solve(two.lu, re, im);
    return true;
  };
  const { second: c2, third: c3 } = bent.collector;
  const { second: b2, third: b3 } = bent.base;

  // One watt of each tone, peak values.
  const port = two.ports[1];
  re.set(two.first.re);
  im.set(two.first.im);
  const [outRe, outIm] = at(port);
  const tone = (outRe ** 2 + outIm ** 2) / two.ends[1];
  const v = times(inner(), [Math.SQRT2, 0]);
  const mirrored: Complex = [v[0], -v[1]];

  const square = times(v, v);
  const half: Complex = [square[0] / 2, square[1] / 2];
  if (!driven(2 * frequency, scaled(half, c2), scaled(half, b2))) return null;
  const twice = inner();
  const size2 = v[0] ** 2 + v[1] ** 2;
  if (!driven(spacing, [c2 * size2, 0], [b2 * size2, 0])) return null;
  const difference = inner();

  const mixed = plus(times(twice, mirrored), times(difference, v));
  const cubed = scaled(v, 0.75 * size2);
  const collector = plus(scaled(mixed, c2), scaled(cubed, c3));
  const base = plus(scaled(mixed, b2), scaled(cubed, b3));
  if (!driven(frequency, collector, base)) return null;
  const [x, y] = at(port);
  const product = (x ** 2 + y ** 2) / (2 * two.ends[1]);
  const intercept = tone * Math.sqrt(tone / product);
  return Number.isFinite(intercept) ? { tone, product, intercept } : null;
}

const plus = (a: Complex, b: Complex): Complex => [a[0] + b[0], a[1] + b[1]];
const minus = (a: Complex, b: Complex): Complex => [a[0] - b[0], a[1] - b[1]];
const scaled = (a: Complex, k: number): Complex => [k * a[0], k * a[1]];
const times = (a: Complex, b: Complex): Complex => [
  a[0] * b[0] - a[1] * b[1],
  a[0] * b[1] + a[1] * b[0],
];
