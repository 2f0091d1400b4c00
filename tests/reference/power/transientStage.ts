import type { OutputLadder } from '../../../src/engine/circuit/outputLadder.ts';
import type { GummelPoonCard } from '../../../src/engine/circuit/power/gummelPoonAt.ts';
import { simulateReal, value } from '../simulator.ts';

/** A power stage of parts that a netlist can hold. */
export interface BuiltStage {
  readonly card: GummelPoonCard;
  readonly frequency: number;
  readonly supply: number;
  readonly feed: { readonly l: number; readonly r: number };
  readonly emitter: { readonly r: number; readonly l: number };
  /** Bias resistor straight to the base. */
  readonly bias: { readonly voltage: number; readonly resistance: number };
  readonly shunt: number;
  /** Driver: resistor, coil and coupling capacitor in series. */
  readonly driver: { readonly r: number; readonly l: number; readonly c: number };
  /** Without losses. */
  readonly ladder: OutputLadder;
  /** °C. */
  readonly temperature: number;
}

/** Peak coefficients Re, Im for each harmonic from 0, of a cosine drive. */
export type Spectra = Readonly<Record<'antenna' | 'collector' | 'base', Float64Array>> & {
  readonly supplyCurrent: number;
  readonly collectorPeak: number;
  /** Difference between the last period and the one before, over the fundamental at the antenna. */
  readonly unrest: number;
};

/** Last period of a transient run of the circuit simulator. */
export async function transientStage(
  built: BuiltStage,
  drive: number,
  periods: number,
  harmonics: number,
  steps = 400,
): Promise<Spectra> {
  // A sine, so that the run starts from rest.
  const period = 1 / built.frequency;
  const run = await simulateReal(
    netlist(built, `vdrv d 0 dc 0 sin(0 ${value(drive)} ${value(built.frequency)})`),
    `.tran ${value(period / 200)} ${value(periods * period)} ${value((periods - 2.1) * period)} ${value(period / steps)}`,
    `reltol=1e-6 abstol=1e-12 vntol=1e-9 chgtol=1e-17 method=trap temp=${built.temperature}`,
  );
  const time = run.vector('time');
  const end = periods * period;
  const spectrum = (name: string, back = 0) =>
    fourier(time, run.vector(name), end - (back + 1) * period, period, harmonics);
  const antenna = spectrum('v(out)');
  const before = spectrum('v(out)', 1);
  const fundamental = Math.hypot(antenna[2] ?? 0, antenna[3] ?? 0);
  return {
    antenna,
    collector: spectrum('v(c)'),
    base: spectrum('v(b)'),
    supplyCurrent: -(spectrum('i(vcc)')[0] ?? 0),
    collectorPeak: run.vector('v(c)').reduce((most, v) => Math.max(most, v), 0),
    unrest: Math.max(...antenna.map((v, i) => Math.abs(v - (before[i] ?? 0)))) / fundamental,
  };
}

/** The stage as a netlist; the driver's open voltage, by sources from ground, stands at node d. */
export function netlist(b: BuiltStage, driver: string): string {
  const lines = [
    driver,
    `rdrv d d1 ${value(b.driver.r)}`,
    `ldrv d1 d2 ${value(b.driver.l)}`,
    `cdrv d2 b ${value(b.driver.c)}`,
    `vbias vb 0 ${value(b.bias.voltage)}`,
    `rbias vb b ${value(b.bias.resistance)}`,
    `rshunt b 0 ${value(b.shunt)}`,
    'q1 c b e final',
    `remit e e1 ${value(b.emitter.r)}`,
    `lemit e1 0 ${value(b.emitter.l)}`,
    `vcc vcc 0 ${value(b.supply)}`,
    `rfeed vcc f ${value(b.feed.r)}`,
    `lfeed f c ${value(b.feed.l)}`,
    `.model final npn(${modelCard(b.card)})`,
  ];
  return [...lines, ...ladderLines(b.ladder, 'c', '0')].join('\n');
}

/** A ladder between two nodes; a copy of the voltage at its load stands at node out. */
export function ladderLines({ branches, load }: OutputLadder, from: string, to: string): string[] {
  const lines: string[] = [];
  let node = from;
  branches.forEach(({ place, l, c }, i) => {
    const next = place === 'series' ? `n${i}` : to;
    if (l > 0) lines.push(`ll${i} ${node} ${next} ${value(l)}`);
    if (c > 0) lines.push(`cl${i} ${node} ${next} ${value(c)}`);
    if (place === 'series') node = next;
  });
  return [...lines, `rload ${node} ${to} ${value(load)}`, `eout out 0 ${node} ${to} 1`];
}

/** Parameters of a card as the simulator reads them. */
export function modelCard(card: GummelPoonCard): string {
  return Object.entries(card)
    .filter(
      ([key, number]) => typeof number === 'number' && Number.isFinite(number) && key !== 'itf',
    )
    .concat(card.itf > 0 ? [['itf', card.itf]] : [])
    .map(([key, number]) => `${key}=${value(Number(number))}`)
    .join(' ');
}

/** Fourier integrals over one period of straight lines between uneven samples. */
export function fourier(
  time: Float64Array,
  wave: Float64Array,
  from: number,
  period: number,
  harmonics: number,
  lowest = 0,
): Float64Array {
  const out = new Float64Array(2 * (harmonics + 1));
  const points: [number, number][] = [];
  for (let i = 0; i + 1 < time.length; i += 1) {
    const [a, b] = [time[i] ?? 0, time[i + 1] ?? 0];
    const [u, v] = [wave[i] ?? 0, wave[i + 1] ?? 0];
    const at = (t: number): [number, number] => [t, u + ((v - u) * (t - a)) / (b - a)];
    if (a <= from && b > from) points.push(at(from));
    else if (a > from && a < from + period) points.push([a, u]);
    if (a < from + period && b >= from + period * (1 - 1e-12)) points.push(at(from + period));
  }
  for (let k = lowest; k <= harmonics; k += 1) {
    const w = (2 * Math.PI * k) / period;
    let re = 0;
    let im = 0;
    for (let i = 0; i + 1 < points.length; i += 1) {
      const [a, u] = points[i] ?? [0, 0];
      const [b, v] = points[i + 1] ?? [0, 0];
      // Two-point Gauss on each piece.
      for (const side of [-1, 1]) {
        const t = (a + b) / 2 + (side * (b - a)) / (2 * Math.sqrt(3));
        const y = u + ((v - u) * (t - a)) / (b - a);
        re += (y * Math.cos(w * t) * (b - a)) / 2;
        im -= (y * Math.sin(w * t) * (b - a)) / 2;
      }
    }
    const scale = (k === 0 ? 1 : 2) / period;
    // The drive is a sine here, a quarter late: each harmonic is turned k quarters on.
    const [c, s] = [[1, 0, -1, 0][k % 4] ?? 0, [0, 1, 0, -1][k % 4] ?? 0];
    out[2 * k] = scale * (re * c - im * s);
    out[2 * k + 1] = scale * (re * s + im * c);
  }
  return out;
}
