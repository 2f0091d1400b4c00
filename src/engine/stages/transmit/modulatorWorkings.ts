import { MODULATOR_VT } from '../../circuit/modulator/diodeSwitch.ts';
import { type SwitchDiodeKey, switchDiodes } from '../../data/switchDiodes.ts';
import type { Bound, Look, StageWorkings } from '../../fields/workings.ts';
import type { transmitFields } from './fields.ts';
import { milliwatt } from './levelWorkings.ts';
import { CARRIER_SOURCE } from './modulator.ts';
import type { modulatorResults } from './modulatorFields.ts';

const fourier = 'Fourier series of a square wave with gaps; closed form';
const tips = 'Fourier coefficients of the clipped cosine; Norton’s theorem';
const alike = 'Halves that are nearly alike, audio far below the carrier, no charge stored.';

export const modulatorWorkings: Pick<
  StageWorkings<typeof transmitFields>,
  keyof typeof modulatorResults
> = {
  modulatorKnee: (look) => {
    const nothing = look('transmit.modulatorKnee') === 0;
    return {
      says: 'The windings hold no direct voltage: the mean of the rectified carrier lowers the diode’s own knee.',
      formula: nothing
        ? '0 * V_D0'
        : 'min(V_D0, 2 * c_u / (b_u + sqrt(b_u^2 + 2 * rho * c_u / (pi * E_LO))))',
      where: {
        ...branchSteps(look),
        ...(nothing
          ? {}
          : {
              c_u: {
                formula: 'V_D0 - rho * E_LO / pi',
                unit: 'V',
                says: 'the diode’s knee less the bias by a carrier without gaps',
              },
              b_u: { formula: '1 - rho / 2', unit: '1', says: 'what the gaps take off that bias' },
            }),
      },
      source: fourier,
    };
  },
  modulatorOn: (look) => ({
    says: 'The slope of the diode’s law at the mean current while it conducts, and its series resistance.',
    formula: 'n_D * V_T / I_D + R_D',
    where: {
      ...branchSteps(look),
      ...angleSteps,
      n_D: {
        value: diode(look).emission,
        unit: '1',
        says: 'its emission coefficient',
        source: diode(look).source,
      },
      R_D: {
        value: diode(look).bulk,
        unit: 'Ω',
        says: 'its series resistance',
        source: diode(look).source,
      },
      V_T: { value: MODULATOR_VT, unit: 'V', says: 'thermal voltage kT/q at 300 K' },
      I_D: {
        formula: '(2 * E_LO * cos(delta) / theta_D - U_on) / R_br',
        unit: 'A',
        says: 'mean current while it conducts',
      },
    },
    source: fourier,
  }),
  modulatorIdeal: (look) =>
    inTurns(look)
      ? {
          says: 'The audio times a square wave of plus and minus one, whose fundamental is 4/π: half of that in each sideband.',
          formula: '20 * log10(pi / 2)',
          where: {},
          source: fourier,
        }
      : {
          says: 'The audio times a square wave of one and nothing, whose fundamental is 2/π: half of that in each sideband.',
          formula: '20 * log10(pi)',
          where: {},
          source: fourier,
        },
  modulatorLoss: (look) =>
    look('transmit.conversionLoss') !== null
      ? {
          says: 'As measured.',
          formula: 'L_mod0',
          where: { L_mod0: 'transmit.conversionLoss' },
          source: 'as typed',
        }
      : {
          says: 'The perfect switch, the angle for which it waits, the diode between source and load, the transformer.',
          formula: `L_ideal - 20 * log10(cos(delta)) + 20 * log10(1 + r_D / (${inTurns(look) ? 2 : 4} * R_mod)) + L_win`,
          where: {
            L_ideal: 'transmit.modulatorIdeal',
            P_LO: 'transmit.carrierDrive',
            ...emf,
            U_on: 'transmit.modulatorKnee',
            delta: angleSteps.delta,
            r_D: 'transmit.modulatorOn',
            R_mod: 'transmit.modulatorImpedance',
            L_win: 'transmit.modulatorWinding',
          },
          source: fourier,
          assumes:
            'Equal resistances before and behind; carrier and audio find short circuits where they are not wanted.',
        },
  modulatorMargin: {
    says: 'The carrier’s power over the audio’s at full power.',
    formula: '10 * log10(P_LO / P_ref) - L_aud',
    where: { P_LO: 'transmit.carrierDrive', P_ref: milliwatt, L_aud: 'transmit.audioLevel' },
    source: 'definition of the decibel, ITU-R V.574',
  },
  nullInPhase: (look) => {
    const beyond = Number(look('transmit.nullReach')) < Number(look('transmit.nullMismatch'));
    const left = beyond ? (['I_dif - I_max', 'what the trimmer cannot take out'] as const) : null;
    const where: Record<string, Bound> = {
      ...leakSteps(look),
      phi_null: 'transmit.nullSetting',
      n_null: 'transmit.nullTurns',
      s_null: {
        formula: 'min(1, phi_null / (2 * pi * n_null))',
        unit: '1',
        says: 'distance from the null as a share of the track',
      },
      I_st: { formula: '2 * s_null * I_max', unit: 'A', says: 'what the trimmer’s step leaves' },
    };
    if (left) {
      where.dV_D = 'transmit.nullMismatch';
      where.I_dif = {
        formula: '2 * cos(delta) / pi * dV_D / R_dif',
        unit: 'A',
        says: 'what the diodes’ difference makes',
      };
      where.I_bey = { formula: left[0], unit: 'A', says: left[1] };
    }
    return {
      says: left
        ? 'The larger of the trimmer’s step and what it cannot reach, into what lies at the output.'
        : 'The trimmer takes out what the diodes differ by, down to its step.',
      formula: left ? 'max(I_st, I_bey) * R_on' : 'I_st * R_on',
      where,
      source: tips,
      assumes: alike,
    };
  },
  nullQuadrature: (look) => ({
    says: 'The current through the difference of the capacitances, into the output with and without a diode across it.',
    formula: `2 * pi * f_c * dC_null * E_LO * (R_out + (R_on - R_out) * ${inTurns(look) ? 2 : 1} * gamma_D)`,
    where: {
      ...leakSteps(look),
      dC_null: 'transmit.nullCapacitance',
      f_c: look('carrier.frequency') ? 'carrier.frequency' : 'plan.nominal',
    },
    source: tips,
    assumes: alike,
  }),
  nullReach: (look) => ({
    says: 'The difference of the diodes that makes as much as the whole track takes out.',
    formula: 'I_max * pi * R_dif / (2 * cos(delta))',
    where: leakSteps(look),
    source: tips,
    assumes: alike,
  }),
  modulatorBalance: (look) => ({
    says: 'The carrier’s power over that of both parts that are left, which stand at a right angle.',
    formula: '10 * log10(P_LO / ((U_ph^2 + U_qu^2) / (2 * R_out)))',
    where: {
      P_LO: 'transmit.carrierDrive',
      U_ph: 'transmit.nullInPhase',
      U_qu: 'transmit.nullQuadrature',
      R_mod: 'transmit.modulatorImpedance',
      R_out: output(look),
    },
    source: 'definition of the decibel, ITU-R V.574',
    assumes: alike,
  }),
  modulatorNull: (look) =>
    look('transmit.null') !== null
      ? {
          says: 'As measured.',
          formula: 'A_null0',
          where: { A_null0: 'transmit.null' },
          source: 'as typed',
        }
      : {
          says: 'The sideband’s level at the modulator less that of the carrier which is left there.',
          formula: 'L_PEP - G_net - (10 * log10(P_LO / P_ref) - A_parts)',
          where: {
            L_PEP: 'plan.pepLevel',
            G_net: 'transmit.netGain',
            P_LO: 'transmit.carrierDrive',
            P_ref: milliwatt,
            A_parts: 'transmit.modulatorBalance',
          },
          source: 'sum of decibels',
        },
};

const inTurns = (look: Look): boolean => look('transmit.modulatorAction') === 'turns';

const diode = (look: Look) =>
  switchDiodes[(look('transmit.modulatorDiode') as SwitchDiodeKey | null) ?? 'n4148'];

const emf = {
  R_50: { value: CARRIER_SOURCE, unit: 'Ω', says: 'the carrier’s source' },
  E_LO: {
    formula: 'sqrt(8 * R_50 * P_LO)',
    unit: 'V',
    says: 'peak voltage behind the carrier’s source',
  },
} as const satisfies Record<string, Bound>;

const output = (look: Look): Bound => ({
  formula: inTurns(look) ? 'R_mod / 4' : 'R_mod',
  unit: 'Ω',
  says: inTurns(look) ? 'the output as half a winding sees it' : 'the output',
});

/** What limits the carrier's current in a branch. */
const branchSteps = (look: Look): Record<string, Bound> => ({
  P_LO: 'transmit.carrierDrive',
  ...emf,
  V_D0: {
    value: diode(look).knee,
    unit: 'V',
    says: 'the diode’s own knee',
    source: diode(look).source,
  },
  R_mod: 'transmit.modulatorImpedance',
  R_null: 'transmit.nullTrimmer',
  R_w: inTurns(look)
    ? { formula: 'R_mod / 4', unit: 'Ω', says: 'output, as half a winding sees it' }
    : { formula: '2 * R_50', unit: 'Ω', says: 'the carrier’s source, loaded by two branches' },
  R_br: {
    formula: inTurns(look) ? 'R_w + R_50 + R_null / 2' : 'R_w + R_null / 2',
    unit: 'Ω',
    says: 'all that limits the carrier’s current in a branch',
  },
  rho: {
    formula: inTurns(look) ? '2 * R_w / R_br' : 'R_w / R_br',
    unit: '1',
    says: 'share of it across the windings',
  },
});

const angleSteps = {
  U_on: 'transmit.modulatorKnee',
  delta: { formula: 'asin(U_on / E_LO)', unit: '1', says: 'angle before a diode conducts' },
  theta_D: { formula: 'pi - 2 * delta', unit: '1', says: 'angle for which it conducts' },
} as const satisfies Record<string, Bound>;

/** From the switched diodes to what a difference between them makes. */
const leakSteps = (look: Look): Record<string, Bound> => {
  const turns = inTurns(look);
  return {
    ...branchSteps(look),
    ...angleSteps,
    r_D: 'transmit.modulatorOn',
    gamma_D: {
      formula: '(theta_D - sin(theta_D)) / (2 * pi)',
      unit: '1',
      says: 'fundamental of the tip',
    },
    R_dif: {
      formula: turns ? 'R_50 + R_null / 2 + r_D' : 'R_null / 2 + r_D',
      unit: 'Ω',
      says: 'what a difference between the branches meets',
    },
    I_max: {
      formula: 'E_LO / (R_br + r_D) * gamma_D * R_null / R_dif',
      unit: 'A',
      says: 'what the whole track takes out',
    },
    R_out: output(look),
    R_on: {
      formula: turns ? '1 / (1 / R_dif + 1 / R_out)' : '1 / (2 / R_dif + 1 / R_out)',
      unit: 'Ω',
      says: 'output with conducting diodes across it',
    },
  };
};
