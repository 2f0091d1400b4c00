import { type ResultType, Simulation } from 'eecircuit-engine';

/** A complex voltage or current, one entry a frequency. */
export interface Phasors {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

export interface AcSweep {
  /** First frequency, Hz. */
  readonly from: number;
  /** Last frequency, Hz. Equal to `from` for one point. */
  readonly to: number;
  /** 1, or 3 and more: the simulator makes one point of two. */
  readonly points: number;
}

export interface AcRun {
  /** The frequencies that were really used, Hz: compare there, not at rounded ones. */
  readonly frequency: Float64Array;
  /** Voltage of a node to ground, V. */
  node(name: string): Phasors;
  /** Current into the positive end of a voltage source or inductor, A. */
  current(name: string): Phasors;
  /** Level of a node voltage, dB over 1 V. */
  level(node: string): Float64Array;
}

export interface RealRun {
  /** `time`, `v(node)`, `i(source)` …, in SI units. */
  vector(name: string): Float64Array;
}

/**
 * Runs a linear AC sweep of a netlist in ngspice.
 *
 * @param elements lines of the netlist, without title, options, analysis and `.end`
 * @param sweep frequencies in Hz, evenly spaced
 *
 * The sparse solver that ngspice takes by default loses digits at the sharp resonances of a
 * crystal (some 1e-6 dB have been seen); with KLU the error is near 1e-8 dB. An AC run starts with
 * an operating point, so every node needs a path for direct current: see `bleeders`.
 */
export async function simulateAc(elements: string, sweep: AcSweep): Promise<AcRun> {
  if (sweep.points === 2) throw new Error('two points: the simulator would make one of it');
  const analysis = `.ac lin ${sweep.points} ${value(sweep.from)} ${value(sweep.to)}`;
  return acRun(await run(elements, analysis));
}

/**
 * Third-order products of two tones by Volterra series; the sources carry `distof1 … distof2 …`.
 *
 * @param options what goes behind `.options`
 * @return the last of the simulator's answers: the product 2f1 − f2, peak values
 */
export async function simulateProduct(
  elements: string,
  frequency: number,
  otherOverThis: number,
  options: string,
): Promise<AcRun> {
  const at = value(frequency);
  return acRun(await run(elements, `.disto lin 1 ${at} ${at} ${value(otherOverThis)}`, options));
}

/**
 * Runs a whole netlist in ngspice as it is, title, analysis and all.
 *
 * @param netlist with one linear AC sweep
 */
export async function simulateNetlist(netlist: string): Promise<AcRun> {
  return acRun(await inTurn(() => runWhole(netlist, netlist.split('\n')[0] ?? '')));
}

function acRun(raw: ResultType): AcRun {
  if (raw.dataType !== 'complex') throw new Error('expected complex results');
  const vectors = new Map(raw.data.map((vector) => [vector.name.toLowerCase(), vector.values]));
  const phasors = (name: string): Phasors => {
    const values = vectors.get(name.toLowerCase());
    if (!values) throw new Error(`no ${name} among ${[...vectors.keys()].join(' ')}`);
    return {
      re: Float64Array.from(values, (z) => z.real),
      im: Float64Array.from(values, (z) => z.img),
    };
  };
  return {
    frequency: phasors('frequency').re,
    node: (name) => phasors(`v(${name})`),
    current: (name) => phasors(`i(${name})`),
    level(node) {
      const { re, im } = phasors(`v(${node})`);
      return re.map((x, i) => 20 * Math.log10(Math.hypot(x, im[i] ?? 0)));
    },
  };
}

/**
 * Runs an analysis with real results, such as `.op` or `.tran 1n 10u`.
 *
 * @param elements lines of the netlist, models included
 * @param analysis the analysis line
 * @param options what goes behind `.options`
 */
export async function simulateReal(
  elements: string,
  analysis: string,
  options = 'reltol=1e-9 abstol=1e-15 vntol=1e-9',
): Promise<RealRun> {
  const raw = await run(elements, analysis, options);
  if (raw.dataType !== 'real') throw new Error('expected real results');
  const vectors = new Map(raw.data.map((vector) => [vector.name.toLowerCase(), vector.values]));
  return {
    vector(name) {
      const values = vectors.get(name.toLowerCase());
      if (!values) throw new Error(`no ${name} among ${[...vectors.keys()].join(' ')}`);
      return Float64Array.from(values);
    },
  };
}

/**
 * Resistors to ground for nodes that only capacitors hold.
 *
 * 1 PΩ is enough for the operating point. The customary 1 GΩ isn't harmless here: across 1.4 MΩ of
 * a crystal's motional capacitor it looks like 1.8 kΩ in series, and across 10 kΩ it costs 1e-4 dB.
 */
export function bleeders(nodes: readonly string[], ohms = 1e15): string {
  return nodes.map((node) => `rbleed_${node} ${node} 0 ${value(ohms)}`).join('\n');
}

/** A number as the netlist reads it, all digits kept. */
export function value(x: number): string {
  if (!Number.isFinite(x)) throw new Error(`not a value for a netlist: ${x}`);
  return x.toExponential(16);
}

const engine = new Simulation();
let before: Promise<unknown> = Promise.resolve();
let runs = 0;

/** One after the other: the engine holds one circuit at a time. */
function run(elements: string, analysis: string, options = ''): Promise<ResultType> {
  return inTurn(() => runAlone(elements, analysis, options));
}

function inTurn(what: () => Promise<ResultType>): Promise<ResultType> {
  const turn = before.then(what);
  before = turn.catch(() => undefined);
  return turn;
}

async function runAlone(elements: string, analysis: string, options: string): Promise<ResultType> {
  runs += 1;
  const title = `run number ${runs}`;
  // Noise and distortion are not to be had with KLU.
  const solver = /^\.(noise|disto)/.test(analysis) ? 'sparse' : 'klu';
  return runWhole(
    [title, elements.trim(), `.options ${solver} ${options}`, analysis, '.end', ''].join('\n'),
    title,
  );
}

async function runWhole(netlist: string, title: string): Promise<ResultType> {
  await engine.start();
  engine.setNetList(netlist);
  const result = await Promise.race([engine.runSim(), afterSeconds(60)]);
  const complaint = () => engine.getError().join('\n') || engine.getInfo().slice(-2000);
  if (!result) throw new Error(`the simulator gave no answer\n${complaint()}`);
  // A netlist that failed leaves the results of the one before it in the engine's file.
  if (!result.header.includes(title.toLowerCase())) {
    throw new Error(`the simulator refused the netlist\n${netlist}\n${complaint()}`);
  }
  return result;
}

function afterSeconds(seconds: number): Promise<null> {
  return new Promise((resolve) => {
    setTimeout(() => resolve(null), seconds * 1000).unref();
  });
}
