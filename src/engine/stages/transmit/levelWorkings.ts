import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { transmitFields } from './fields.ts';
import { BIAS_ALLOWANCE } from './smallStages.ts';
import { clipFormula, outputFormula, type SmallName, stageSteps } from './stageSteps.ts';

const decibel = 'definition of the decibel, ITU-R V.574';
const hybridPi =
  'hybrid-pi model solved on its two nodes (Gray & Meyer, Analysis and Design of Analog Integrated Circuits, ch. 8)';
const hybridAssumes =
  'Only the size of the current gain counts, not its phase; Cob and the transistor’s own output resistance are left out.';

export const milliwatt = { value: 1e-3, unit: 'W', says: 'one milliwatt' } as const;
export const supplyAllowance = {
  value: BIAS_ALLOWANCE,
  unit: 'V',
  says: 'kept by emitter bias and saturation; common practice, no source',
} as const;

/** Gains behind the modulator's audio side by symbol, in the signal's order, losses with a minus. */
export const onward: readonly (readonly [string, string])[] = [
  ['-L_mod', 'transmit.conversionLoss'],
  ['-L_pad', 'transmit.pad'],
  ['-L_mis', ''],
  ['+G_amp', 'transmit.amplifierGain'],
  ['-L_fil', 'filter.loss'],
  ['+G_amp', 'transmit.amplifierGain'],
  ['+G_drv', 'transmit.driverGain'],
  ['+G_fin', 'transmit.finalGain'],
  ['-L_net', 'transmit.network'],
];

/** What is lost between the pad and the first amplifier, as a step. */
export const mismatch: Readonly<Record<string, Bound>> = {
  R_in: 'transmit.amplifierInput',
  R_mod: 'transmit.modulatorImpedance',
  L_mis: {
    formula: '-10 * log10(1 - ((R_in - R_mod) / (R_in + R_mod))^2)',
    unit: 'dB',
    says: 'lost because pad and amplifier don’t match',
  },
};

/** A sum of the gains from the given one on, with what its symbols stand for. */
export function gainsFrom(first: number): { formula: string; where: Record<string, Bound> } {
  const terms = onward.slice(first);
  const where: Record<string, Bound> = {};
  for (const [term, path] of terms) {
    if (path === '') Object.assign(where, mismatch);
    else where[term.slice(1)] = path;
  }
  const formula = terms.map(([term]) => `${term[0]} ${term.slice(1)}`).join(' ');
  return { formula: formula.replace(/^\+ /, '').replace(/^- /, '-'), where };
}

type LevelKey =
  | 'micGain'
  | 'audioLevel'
  | 'audioVolts'
  | 'netGain'
  | 'over'
  | 'first'
  | 'reserve'
  | 'amplifierGain'
  | 'amplifierInput'
  | 'amplifierOutput'
  | 'amplifierNoise'
  | 'amplifierClip'
  | 'filterSource'
  | 'driverGain'
  | 'driverInput'
  | 'driverClip'
  | 'couplings.place'
  | 'couplings.collector'
  | 'couplings.following'
  | 'couplings.turns'
  | 'carrierSuppression'
  | 'carrierPower'
  | 'carrierVpp'
  | 'balance'
  | 'oppositeWorst';

export const levelWorkings: Pick<StageWorkings<typeof transmitFields>, LevelKey> = {
  micGain: {
    says: 'From the microphone’s voltage up to what the modulator needs.',
    formula: '20 * log10(V_aud / V_mic)',
    where: { V_aud: 'transmit.audioVolts', V_mic: 'transmit.micLevel' },
    source: decibel,
  },
  audioLevel: () => {
    const { formula, where } = gainsFrom(0);
    return {
      says: 'Back from the antenna through every gain and loss to the modulator’s audio side.',
      formula: `L_PEP - (${formula})`,
      where: { L_PEP: 'plan.pepLevel', ...where },
      source: 'sum of decibels',
    };
  },
  audioVolts: {
    says: 'The voltage of that power in the modulator’s impedance.',
    formula: 'sqrt(P_ref * 10^(L_aud / 10) * R_mod)',
    where: {
      P_ref: milliwatt,
      L_aud: 'transmit.audioLevel',
      R_mod: 'transmit.modulatorImpedance',
    },
    source: 'closed form: P = V²/R',
  },
  netGain: () => {
    const { formula, where } = gainsFrom(1);
    return {
      says: 'Every gain and loss from the sideband at the modulator to the antenna.',
      formula,
      where,
      source: 'sum of decibels',
    };
  },
  over: (look) =>
    look('transmit.micFitted') === null
      ? {
          says: 'No gain is given, so the one that just makes full power is used.',
          formula: '0 * A_mic',
          where: { A_mic: 'transmit.micGain' },
          source: 'as typed',
        }
      : {
          says: 'The gain that you have, against the gain that just makes full power.',
          formula: 'A_fit - A_mic',
          where: { A_fit: 'transmit.micFitted', A_mic: 'transmit.micGain' },
          source: 'sum of decibels',
        },
  first: {
    says: 'The row of the levels with the least headroom.',
    rule: 'All rows with a limit are compared; the least headroom flattens first.',
    where: { H_min: 'transmit.reserve' },
    source: 'definition',
  },
  reserve: (look) => {
    const rows = ((look('transmit.chain') as Row[] | null) ?? []).filter(
      (row) => row.headroom !== null && row.point !== 'Final, collector',
    );
    const where: Record<string, Bound> = {};
    rows.forEach((row, i) => {
      where[`H_${i + 1}`] = { value: row.headroom ?? 0, unit: 'dB', says: row.point ?? '' };
    });
    return {
      says: 'The least of the headrooms in the table, the final’s left out.',
      formula: `min(${Object.keys(where).join(', ')})`,
      where,
      source: 'definition',
    };
  },
  amplifierGain: (look) => gainOf(look, 'amplifier'),
  driverGain: (look) => gainOf(look, 'driver'),
  amplifierInput: (look) => inputOf(look, 'amplifier'),
  driverInput: (look) => inputOf(look, 'driver'),
  amplifierOutput: (look) => ({
    says: 'The resistance looking into the collector, driven from the modulator’s impedance.',
    formula: outputFormula('R_s'),
    where: { ...stageSteps(look, 'amplifier'), R_s: 'transmit.modulatorImpedance' },
    source: hybridPi,
    assumes: hybridAssumes,
  }),
  amplifierNoise: (look) => ({
    says: 'The noise of both resistors, the base and both currents, as a share of the source’s own.',
    formula:
      '10 * log10(1 + R_L * ((r_b + R_E) * (1 / r_in - g_m * b)^2 + (1 + b)^2 / R_F + g_B * (((beta + 1) * r_e + beta * R_E) / r_in + g_m * (r_b + R_E) * b)^2 + g_C * (R_E / r_in + (1 - g_m * R_E) * b)^2))',
    where: {
      ...stageSteps(look, 'amplifier'),
      q: { value: 1.602176634e-19, unit: 'C', says: 'elementary charge, exact' },
      k: { value: 1.380649e-23, unit: 'J/K', says: 'Boltzmann’s constant, exact' },
      T_0: { value: 290, unit: 'K', says: 'reference temperature' },
      I_B: { formula: 'I_E / (h_FE + 1)', unit: 'A', says: 'base current' },
      g_B: {
        formula: 'q * I_B / (2 * k * T_0)',
        unit: 'S',
        says: 'shot noise of the base current as a conductance',
      },
      g_C: {
        formula: 'q * (I_E - I_B) / (2 * k * T_0)',
        unit: 'S',
        says: 'shot noise of the collector current as a conductance',
      },
      b: {
        formula: '(1 / R_L + 1 / r_in + 1 / R_F) / (g_m - 1 / R_F)',
        unit: '1',
        says: 'what a current at the collector is worth at the base',
      },
    },
    source: 'hybrid-pi model with thermal and shot noise (Gray & Meyer, ch. 11)',
    assumes: `${hybridAssumes} The source equals the load.`,
  }),
  amplifierClip: (look) => clipOf(look, 'amplifier'),
  driverClip: (look) => clipOf(look, 'driver'),
  filterSource: {
    says: 'The first amplifier’s output resistance through the transformer that makes of the filter its load.',
    formula: 'R_out * R_end / R_L',
    where: {
      R_out: 'transmit.amplifierOutput',
      R_end: 'filter.ends',
      R_L: 'transmit.amplifierLoad',
    },
    source: 'ideal transformer',
  },
  'couplings.place': {
    says: 'The four places where impedances meet.',
    rule: 'In the signal’s order.',
    where: {},
    source: 'definition',
  },
  'couplings.collector': (_, index) =>
    index === 1
      ? same('R_end', 'filter.ends', 'The filter’s end resistance.')
      : index === 3
        ? same('R_L_drv', 'transmit.driverLoad', 'The load that the driver is designed for.')
        : same('R_L', 'transmit.amplifierLoad', 'The load that the amplifier is designed for.'),
  'couplings.following': (_, index) =>
    [
      same('R_end', 'filter.ends', 'The filter’s end resistance.'),
      same('R_in', 'transmit.amplifierInput', 'The second amplifier’s input.'),
      same('R_in_drv', 'transmit.driverInput', 'The driver’s input.'),
      same('R_base', 'transmit.finalInput', 'The final’s base.'),
    ][index] ?? same('R_end', 'filter.ends', ''),
  'couplings.turns': {
    says: 'Impedances go as the square of the turns.',
    formula: 'sqrt(R_1 / R_2)',
    where: { R_1: 'row.collector', R_2: 'row.following' },
    source: 'ideal transformer',
  },
  carrierSuppression: {
    says: 'The filter takes off what the modulator’s null has left.',
    formula: 'A_null + A_fil',
    where: { A_null: 'transmit.null', A_fil: 'carrier.attenuation' },
    source: 'sum of decibels',
    assumes: 'Nothing leaks round filter and modulator.',
  },
  carrierPower: {
    says: 'So many decibels below the peak envelope power.',
    formula: 'P_PEP / 10^(A_car / 10)',
    where: { P_PEP: 'plan.pep', A_car: 'transmit.carrierSuppression' },
    source: decibel,
  },
  carrierVpp: {
    says: 'The same as a voltage across the antenna resistance.',
    formula: 'sqrt(8 * P_PEP * R_ant) / 10^(A_car / 20)',
    where: {
      P_PEP: 'plan.pep',
      R_ant: 'plan.antenna',
      A_car: 'transmit.carrierSuppression',
    },
    source: 'closed form: P = Vpp²/(8R)',
  },
  balance: {
    says: 'The carrier’s drive, less the sideband at the modulator and the null below it.',
    formula: '10 * log10(P_LO / P_ref) - (L_PEP - G_net - A_null)',
    where: {
      P_LO: 'transmit.carrierDrive',
      P_ref: milliwatt,
      L_PEP: 'plan.pepLevel',
      G_net: 'transmit.netGain',
      A_null: 'transmit.null',
    },
    source: 'sum of decibels',
  },
  oppositeWorst: {
    says: 'So many decibels below the peak envelope power, at the voice tone that fares worst.',
    formula: 'P_PEP / 10^(A_opp / 10)',
    where: { P_PEP: 'plan.pep', A_opp: 'carrier.suppressionWorst' },
    source: decibel,
  },
};

interface Row {
  readonly point: string | null;
  readonly headroom: number | null;
}

const same = (symbol: string, path: string, says: string): Working => ({
  says,
  formula: symbol,
  where: { [symbol]: path },
  source: 'as designed',
});

const gainOf = (look: Look, name: SmallName): Working => ({
  says: 'Power in the load over power into the base: the voltage gain squared times input over load.',
  formula: '10 * log10(A_v^2 * R_i / R_L)',
  where: stageSteps(look, name),
  source: hybridPi,
  assumes: hybridAssumes,
});

const inputOf = (look: Look, name: SmallName): Working => ({
  says: 'The base branch, and beside it the feedback resistor made smaller by the gain across it.',
  formula: 'R_i',
  where: stageSteps(look, name),
  source: hybridPi,
  assumes: hybridAssumes,
});

const clipOf = (look: Look, name: SmallName): Working => ({
  says: 'The collector’s peak voltage where the current has swung down to nothing, or the supply is used up, whichever comes first.',
  formula: `10 * log10(${clipFormula()} / P_ref)`,
  where: {
    ...stageSteps(look, name),
    V_cc: 'plan.supply',
    V_b: supplyAllowance,
    P_ref: milliwatt,
  },
  source: 'load line of a class-A stage',
  assumes: 'The collector is fed through a transformer or choke.',
});
