import { bleeders, simulateAc, value } from './simulator.ts';

/** A crystal as the simulator gets it. H, F, Ω. */
export interface Plate {
  readonly fs: number;
  readonly lm: number;
  readonly rm: number;
  readonly c0: number;
}

export const plate = (fs: number, lm: number, rm: number, c0: number): Plate => ({
  fs,
  lm,
  rm,
  c0,
});

export const cmOf = ({ fs, lm }: Plate) => 1 / ((2 * Math.PI * fs) ** 2 * lm);

/** Rm, Lm, Cm in this order, beside C0 and what else lies across. */
const crystal = (x: Plate, a: string, b: string, beside = 0) =>
  [
    `rm ${a} m1 ${value(x.rm)}`,
    `lm m1 m2 ${value(x.lm)}`,
    `cm m2 ${b} ${value(cmOf(x))}`,
    `ch ${a} ${b} ${value(x.c0 + beside)}`,
  ].join('\n');

/** Level behind a fixture against a short circuit, dB, over a span around fs. */
async function sweep(
  x: Plate,
  end: number,
  beside: number,
  from: number,
  to: number,
  points = 401,
) {
  const run = await simulateAc(
    `v1 e 0 dc 0 ac 1
     rs e in ${value(end)}
     ${crystal(x, 'in', 'out', beside)}
     rl out 0 ${value(end)}
     ${bleeders(['in'])}`,
    { from, to, points },
  );
  // A short circuit leaves half of the voltage.
  return { f: run.frequency, dB: run.level('out').map((v) => v + 20 * Math.log10(2)) };
}

/** Peak, loss and width (so many dB down) as a sweep in the simulator shows them. */
export async function fixtureReadings(x: Plate, end: number, beside = 0, drop = 3) {
  const half = (2 * end + x.rm) / (4 * Math.PI * x.lm);
  const { f, dB } = await sweep(x, end, beside, x.fs - 2.2 * half, x.fs + 2.2 * half, 801);
  const at = (i: number) => dB[i] ?? Number.NaN;
  let top = 0;
  for (let i = 1; i < dB.length; i += 1) if (at(i) > at(top)) top = i;
  const step = (f[1] ?? 0) - (f[0] ?? 0);
  // Vertex of the parabola through the three highest points.
  const bend = at(top - 1) - 2 * at(top) + at(top + 1);
  const t = (at(top - 1) - at(top + 1)) / (2 * bend);
  const peak = (f[top] ?? 0) + t * step;
  const best = at(top) - (bend * t * t) / 2;
  const crossing = (direction: 1 | -1) => {
    let i = top;
    while (at(i + direction) > best - drop) i += direction;
    const [y0, y1] = [at(i), at(i + direction)];
    return (f[i] ?? 0) + (direction * step * (y0 - (best - drop))) / (y0 - y1);
  };
  return { peak, loss: -best, width: crossing(1) - crossing(-1) };
}

/** Frequency of the dip above fs, Hz. */
export async function dipReading(x: Plate, end: number, beside = 0) {
  const fp = x.fs * Math.sqrt(1 + cmOf(x) / (x.c0 + beside));
  const { f, dB } = await sweep(x, end, beside, fp - 40, fp + 40, 401);
  let low = 0;
  for (let i = 1; i < dB.length; i += 1) if ((dB[i] ?? 0) < (dB[low] ?? 0)) low = i;
  return f[low] ?? Number.NaN;
}

/** Frequency at which crystal, series capacitor (if any) and oscillator resonate, Hz. */
export async function oscillatorReading(x: Plate, own: number, series: number | null, across = 0) {
  const reactance = async (from: number, to: number) => {
    const run = await simulateAc(
      `v1 e 0 dc 0 ac 1
       ${crystal(x, 'e', series === null ? 'b' : 'k')}
       ${series === null ? '' : `cs k b ${value(series)}`}
       cl b g ${value(own + across)}
       vg g 0 dc 0
       ${bleeders(series === null ? ['b'] : ['b', 'k'])}`,
      { from, to, points: 201 },
    );
    const { re, im } = run.current('vg');
    return { f: run.frequency, x: re.map((r, i) => -(im[i] ?? 0) / (r * r + (im[i] ?? 0) ** 2)) };
  };
  let [from, to] = [x.fs - 5, x.fs * (1 + cmOf(x) / (2 * x.c0)) - 5];
  for (let pass = 0; pass < 3; pass += 1) {
    const seen = await reactance(from, to);
    // The lowest frequency at which the loop turns inductive.
    const i = seen.x.findIndex((y, k) => k > 0 && (seen.x[k - 1] ?? 0) < 0 && y >= 0);
    [from, to] = [seen.f[i - 1] ?? Number.NaN, seen.f[i] ?? Number.NaN];
    if (pass === 2) {
      const [y0, y1] = [seen.x[i - 1] ?? 0, seen.x[i] ?? 0];
      return from + ((to - from) * y0) / (y0 - y1);
    }
  }
  return Number.NaN;
}
