/** One arm of the ladder at one frequency, in plain numbers: impedance or admittance by R_1. */
export interface Branch {
  readonly place: 'series' | 'shunt';
  readonly value: string;
  /** Its derivative by the logarithm of the frequency. */
  readonly slope: string;
}

/** Voltages and currents for one ampere in the load, as plain numbers by one ohm. */
export interface TerminalFormulas {
  /** Voltage at the filter's input times `divisor`. */
  readonly voltage: string;
  /** Current into it times `divisor`. */
  readonly current: string;
  /** Voltage of the source times `divisor`. */
  readonly drive: string;
  /** 1 where nothing leaks past the filter. */
  readonly divisor: string;
  /** Derivatives of `drive` and `divisor` by the logarithm of the frequency. */
  readonly driveSlope: string;
  readonly divisorSlope: string;
}

/**
 * What stands at the ends of a ladder: the product of its chain matrices between its impedances.
 *
 * With an admittance y from input to output and the chain matrix A, B, C, D of the ladder,
 * AD − BC = 1, the input voltage is (B + (A + yB)·Zl)/(1 + yB) and the input current
 * (D + yB + (C + y(A + D − 2))·Zl)/(1 + yB).
 *
 * @param leak admittance past the filter by one siemens; null where there is none
 */
export function terminalFormulas(
  branches: readonly Branch[],
  source: string,
  load: string,
  leak: string | null,
): TerminalFormulas {
  const plain = (row: string, column: string) =>
    `sum(${[`[${row}]`, ...branches.map(matrixOf), `[${column}]`].join(' * ')})`;
  const slope = (row: string, column: string) =>
    `sum(${[`[${row}, 0, 0]`, ...branches.map(withSlope), `[0; 0; ${column}]`].join(' * ')})`;
  const [zs, zl] = [`${source} / R_1`, `${load} / R_1`];
  const whole = {
    voltage: plain('1, 0', `${zl}; 1`),
    current: plain('0, 1', `${zl}; 1`),
    drive: plain(`1, ${zs}`, `${zl}; 1`),
    driveSlope: slope(`1, ${zs}`, `${zl}; 1`),
  };
  if (leak === null) return { ...whole, divisor: '1', divisorSlope: '0' };
  const b = plain('1, 0', '0; 1');
  const bBoth = `(${b} + ${slope('1, 0', '0; 1')})`;
  const trace = `(${plain('1, 0', '1; 0')} + ${plain('0, 1', '0; 1')} - 2)`;
  const traceBoth = `(${trace} + ${slope('1, 0', '1; 0')} + ${slope('0, 1', '0; 1')})`;
  const ends = (b0: string, t: string) =>
    `${leak} * (${b0} * (${source} + ${load}) / R_1 + ${source} * ${load} / R_1^2 * ${t})`;
  return {
    voltage: `(${whole.voltage} + ${leak} * ${b} * ${zl})`,
    current: `(${whole.current} + ${leak} * (${b} + ${zl} * ${trace}))`,
    drive: `(${whole.drive} + ${ends(b, trace)})`,
    divisor: `(1 + ${leak} * ${b})`,
    driveSlope: `(${whole.driveSlope} + ${ends(bBoth, traceBoth)})`,
    divisorSlope: `(${leak} * ${bBoth})`,
  };
}

/** Chain matrix of an arm. */
const matrixOf = ({ place, value }: Branch): string =>
  place === 'series' ? `[1, ${value}; 0, 1]` : `[1, 0; ${value}, 1]`;

/** Chain matrix M and its derivative M′ as one: [M, M′; 0, M]. */
const withSlope = ({ place, value, slope }: Branch): string =>
  place === 'series'
    ? `[1, ${value}, 0, ${slope}; 0, 1, 0, 0; 0, 0, 1, ${value}; 0, 0, 0, 1]`
    : `[1, 0, 0, 0; ${value}, 1, ${slope}, 0; 0, 0, 1, 0; 0, 0, ${value}, 1]`;
