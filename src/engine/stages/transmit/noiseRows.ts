import { NOISE_T0, type NoiseShare } from '../../circuit/nodal/noiseFigure.ts';
import type { RowOf } from '../../fields/kinds.ts';
import type { Bound, Look, Working } from '../../fields/workings.ts';
import type { NoiseFound, smallResults } from './smallFields.ts';

type Row = RowOf<typeof smallResults.amplifierNoises.columns>;

/** What makes noise, by the names in the circuit. */
const words: Readonly<Record<string, string>> = {
  R_U: 'upper base resistor',
  R_D: 'lower base resistor',
  R_E: 'emitter resistor without capacitor',
  R_B: 'emitter resistor with capacitor',
  R_F: 'feedback resistor',
  R_C: 'collector resistor',
  r_b: 'resistance of the base',
  I_B: 'shot noise of the base current',
  I_C: 'shot noise of the collector current',
};

/** A row for each source of noise; the second of a name is the sleeping half's. */
export function noiseRows({ shares }: NoiseFound): Row[] {
  const seen = new Set<string>();
  return shares.map(({ name, share }) => {
    const word = words[name] ?? name;
    const part = seen.has(name) ? `${word}, sleeping half` : word;
    seen.add(name);
    return { part, share };
  });
}

const source =
  'thermal noise 4kT/R and shot noise 2qI (Gray & Meyer, ch. 11), carried to the output by nodal analysis';

const found = (look: Look): NoiseFound | null => look('transmit.noiseFound') as NoiseFound | null;

/** One share: its noise power at the output over that of the source. */
export function shareWorking(look: Look, index: number): Working {
  const { carried, shares } = found(look) ?? { carried: 1, shares: [] };
  const share: NoiseShare | undefined = shares[index];
  const where: Record<string, Bound> = {
    Z_x: {
      value: share?.carried ?? 0,
      unit: 'Ω',
      says: 'voltage at the output for an ampere there, by nodal analysis',
    },
    Z_s: {
      value: carried,
      unit: 'Ω',
      says: 'voltage at the output for an ampere at the source, by nodal analysis',
    },
    R_L: 'transmit.amplifierLoad',
    T_0: { value: NOISE_T0, unit: '°C', says: 'the source’s temperature, by definition' },
  };
  if (share?.ohms != null) {
    return {
      says: 'Its thermal noise against that of the source, each as it reaches the output.',
      formula: 'T_a / T_0 * Z_x^2 / R_x / (Z_s^2 / R_L)',
      where: {
        ...where,
        T_a: 'plan.ambient',
        R_x: { value: share.ohms, unit: 'Ω', says: 'its resistance' },
      },
      source,
    };
  }
  return {
    says: 'The shot noise of the current against the thermal noise of the source, each as it reaches the output.',
    formula: 'q_e * I_x / (2 * k_B * T_0) * Z_x^2 / (Z_s^2 / R_L)',
    where: {
      ...where,
      I_x: {
        value: share?.current ?? 0,
        unit: 'A',
        says: 'direct current, from the operating point',
      },
      k_B: { value: 1.380649e-23, unit: 'J/K', says: 'Boltzmann’s constant, exact' },
      q_e: { value: 1.602176634e-19, unit: 'C', says: 'elementary charge, exact' },
    },
    source,
  };
}

/** The noise figure: one, and all shares. */
export function noiseWorking(look: Look): Working {
  const where: Record<string, Bound> = {};
  const rows = noiseRows(found(look) ?? { carried: 1, shares: [] });
  rows.forEach(({ part, share }, i) => {
    where[`s_${i + 1}`] = { value: share ?? 0, unit: '1', says: `share of: ${part}` };
  });
  return {
    says: 'The source’s own noise and all shares beside it, over the source’s own.',
    formula: `10 * log10(1 + ${Object.keys(where).join(' + ')})`,
    where,
    source: 'definition of the noise figure; shares by nodal analysis',
    assumes: 'The source equals the load and is at 290 K; the resistors are as warm as the air.',
  };
}
