import { type Transistor, type TransistorKey, transistors } from '../../data/devices.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { Unit } from '../../quantity/units.ts';
import type { transmitFields } from './fields.ts';
import type { powerResults } from './powerFields.ts';

const pulse =
  'Fourier series of the clipped cosine (Terman, Radio Engineers’ Handbook, 1943, section 5, from memory)';
const idealPulse =
  'The collector current is the tip of a cosine, and the load shorts the harmonics’ voltage.';

/** Half the conduction angle, and what the pulse’s shape is normalised by. */
const half = {
  theta: 'transmit.conductionAngle',
  h: { formula: 'theta / 2', unit: '1', says: 'half the conduction angle' },
} as const satisfies Record<string, Bound>;

const others = {
  I_drv: 'transmit.driverStanding',
  I_E: 'transmit.amplifierStanding',
  I_mic: 'transmit.micStanding',
  I_fol: 'transmit.followerStanding',
} as const;

const isPair = (look: Look) => look('transmit.finalForm') === 'pushPull';

const gangOf = (look: Look) =>
  look('transmit.finalForm') === 'single' ? 1 : (look('transmit.finalDevices') as number);

/** Those side by side as a symbol, where there are several. */
const gangs = (look: Look): Record<string, Bound> =>
  gangOf(look) === 1 ? {} : { n_g: 'transmit.finalDevices' };

const sagging: Record<string, Bound> = {
  V_cc: 'plan.supply',
  V_sat: 'transmit.saturation',
  R_sup: 'transmit.supplyResistance',
  I_dc: 'transmit.dcCurrent',
  x: {
    formula: '(V_cc - V_sat) / (V_cc - V_sat + R_sup * I_dc)',
    unit: '1',
    says: 'what is left of the swing',
  },
};

const matching = 'closed form: an L network, two resistances made equal at one frequency';
const ends = { R_ant: 'plan.antenna', R_c: 'transmit.collectorLoad' } as const;

/** Whether the antenna has the higher resistance. */
const stepsUp = (look: Look) =>
  (look('plan.antenna') as number) >= (look('transmit.collectorLoad') as number);

const isClassA = (look: Look) => look('transmit.operating') === 'a';

type PowerKey =
  | (keyof typeof powerResults & keyof StageWorkings<typeof transmitFields>)
  | 'cycle.voltage'
  | 'cycle.current';

export const powerWorkings: Pick<StageWorkings<typeof transmitFields>, PowerKey> = {
  collectorPower: {
    says: 'The power wanted at the antenna and what the output network keeps for itself.',
    formula: 'P_PEP * 10^(L_net / 10)',
    where: { P_PEP: 'plan.pep', L_net: 'transmit.network' },
    source: 'definition of the decibel, ITU-R V.574',
  },
  collectorLoad: (look) => ({
    says: isPair(look)
      ? 'From collector to collector there is twice the swing: in push-pull the load is four times that of one transistor.'
      : 'In this resistance the full swing, from the supply down to what the final keeps, makes the power.',
    formula: isPair(look) ? '2 * (V_cc - V_sat)^2 / P_c' : '(V_cc - V_sat)^2 / (2 * P_c)',
    where: { V_cc: 'plan.supply', V_sat: 'transmit.saturation', P_c: 'transmit.collectorPower' },
    source: 'closed form: P = V²/(2R) with V the peak',
  }),
  straightOn: (look) => ({
    says: 'The full swing into the antenna’s own resistance.',
    formula: isPair(look) ? '2 * (V_cc - V_sat)^2 / R_ant' : '(V_cc - V_sat)^2 / (2 * R_ant)',
    where: { V_cc: 'plan.supply', V_sat: 'transmit.saturation', R_ant: 'plan.antenna' },
    source: 'closed form: P = V²/(2R) with V the peak',
  }),
  ratioNeeded: {
    says: 'Impedances go as the square of the turns.',
    formula: 'sqrt(R_ant / R_c)',
    where: { R_ant: 'plan.antenna', R_c: 'transmit.collectorLoad' },
    source: 'ideal transformer',
  },
  ratioWords: {
    says: 'Whole turns near that ratio.',
    rule: 'The smallest whole numbers whose ratio comes within 4 %.',
    where: { n_need: 'transmit.ratioNeeded' },
    source: 'common practice, no source',
  },
  matchQ: (look) => ({
    says: 'The two resistances meet where one of them has this Q.',
    formula: stepsUp(look) ? 'sqrt(R_ant / R_c - 1)' : 'sqrt(R_c / R_ant - 1)',
    where: { ...ends },
    source: matching,
  }),
  matchCoil: (look) => ({
    says: 'Its reactance is Q times the lower resistance.',
    formula: `Q_L * ${stepsUp(look) ? 'R_c' : 'R_ant'} / (2 * pi * f_0)`,
    where: {
      Q_L: 'transmit.matchQ',
      f_0: 'plan.nominal',
      ...(stepsUp(look) ? { R_c: ends.R_c } : { R_ant: ends.R_ant }),
    },
    source: matching,
  }),
  matchCapacitor: (look) => ({
    says: 'The higher resistance is Q times its reactance.',
    formula: `Q_L / (2 * pi * f_0 * ${stepsUp(look) ? 'R_ant' : 'R_c'})`,
    where: {
      Q_L: 'transmit.matchQ',
      f_0: 'plan.nominal',
      ...(stepsUp(look) ? { R_ant: ends.R_ant } : { R_c: ends.R_c }),
    },
    source: matching,
  }),
  'cycle.voltage': {
    says: 'A cosine about the supply.',
    formula: 'V_cc + (V_cc - V_sat) * cos(phi_c)',
    where: { V_cc: 'plan.supply', V_sat: 'transmit.saturation', phi_c: 'point.phase' },
    source: 'tuned load: the voltage is a pure cosine',
    assumes: idealPulse,
  },
  'cycle.current': (look) =>
    isClassA(look)
      ? {
          says: 'The signal swings about the standing current.',
          formula: isPair(look) ? 'I_q / 2 - I_1 * cos(phi_c)' : 'I_q - I_1 * cos(phi_c)',
          where: {
            I_q: 'transmit.quiescent',
            I_1: 'transmit.fundamental',
            phi_c: 'point.phase',
          },
          source: pulse,
        }
      : {
          says: 'The tip of a cosine, its middle where the voltage is lowest.',
          formula: 'I_max * max(0, (-cos(phi_c) - cos(h)) / (1 - cos(h)))',
          where: { ...half, I_max: 'transmit.peakCurrent', phi_c: 'point.phase' },
          source: pulse,
          assumes: idealPulse,
        },
  peakEach: (look) => ({
    says: 'Shared by those side by side.',
    formula: `I_max${gangOf(look) === 1 ? '' : ' / n_g'}`,
    where: { I_max: 'transmit.peakCurrent', ...gangs(look) },
    source: 'Kirchhoff’s current law',
  }),
  mostOverall: {
    says: 'Class B at full swing.',
    formula: 'pi / 4 * (V_cc - V_sat) / V_cc',
    where: { V_cc: 'plan.supply', V_sat: 'transmit.saturation' },
    source: pulse,
  },
  sanity: {
    says: 'What a reading may say.',
    rule: 'The share worked out here; 70 % and 30 % are the marks.',
    where: { eta_ant: 'transmit.overall', eta_most: 'transmit.mostOverall' },
    source: 'class B at full swing gives 67 % at 13.8 V less 2 V; 30 % common practice, no source',
  },
  standingAdvice: {
    says: 'Against the fundamental at full power.',
    rule: 'Three to fifteen hundredths of the fundamental’s peak in each transistor.',
    where: { I_q: 'transmit.quiescent', I_1: 'transmit.fundamental' },
    source: 'common practice, no source',
  },
  sagVoltage: {
    says: 'The current at the crest falls with the swing; what is left of the supply follows.',
    formula: 'V_cc - R_sup * I_dc * x',
    where: { ...sagging },
    source: 'closed form: x = swing over swing and drop',
  },
  sagPower: {
    says: 'Power goes with the square of the swing.',
    formula: 'P_PEP * x^2',
    where: { P_PEP: 'plan.pep', ...sagging },
    source: 'closed form: x = swing over swing and drop',
  },
  fundamental: (look) => ({
    says: isPair(look) ? 'Twice the swing over the load.' : 'The full swing over the load.',
    formula: isPair(look) ? '2 * (V_cc - V_sat) / R_c' : '(V_cc - V_sat) / R_c',
    where: { V_cc: 'plan.supply', V_sat: 'transmit.saturation', R_c: 'transmit.collectorLoad' },
    source: 'Ohm’s law',
  }),
  conductionAngle: (look) => {
    if (look('transmit.biasBy') === 'angle') {
      return {
        says: 'As given.',
        formula: 'theta_0',
        where: { theta_0: 'transmit.angle' },
        source: 'as typed',
      };
    }
    if (isClassA(look)) {
      return {
        says: 'The standing current is at least the peak of the signal, so the final never cuts off.',
        formula: isPair(look) ? 'I_q0 / 2 >= I_1 ? 2 * pi : pi' : 'I_q0 >= I_1 ? 2 * pi : pi',
        where: { I_q0: 'transmit.standing', I_1: 'transmit.fundamental' },
        source: pulse,
      };
    }
    if (look('transmit.standing') === 0) {
      return {
        says: 'Without standing current the final conducts half of each cycle.',
        formula: 'pi + 0 * I_q0 / I_1',
        where: { I_q0: 'transmit.standing', I_1: 'transmit.fundamental' },
        source: pulse,
      };
    }
    return {
      says: 'The angle at which a pulse on top of this standing current has the fundamental that the power asks for.',
      left: '-2 * pi * I_1 * cos(theta / 2) / (theta - sin(theta))',
      right: isPair(look) ? 'I_q0 / 2' : 'I_q0',
      root: 'theta',
      where: {
        theta: 'transmit.conductionAngle',
        I_1: 'transmit.fundamental',
        I_q0: 'transmit.standing',
      },
      source: pulse,
      assumes: idealPulse,
    };
  },
  operating: {
    says: 'All of each cycle is A, more than half AB, half B, less C.',
    formula: 'theta >= 2 * pi ? "a" : theta > pi ? "ab" : theta == pi ? "b" : "c"',
    where: { theta: 'transmit.conductionAngle' },
    source: 'definition',
  },
  quiescent: (look) =>
    look('transmit.biasBy') === 'current'
      ? {
          says: 'As given.',
          formula: 'I_q0',
          where: { I_q0: 'transmit.standing' },
          source: 'as typed',
        }
      : {
          says: 'The standing current that goes with this angle; none from class B on.',
          formula: `theta > pi ? -${isPair(look) ? 4 : 2} * pi * I_1 * cos(theta / 2) / (theta - sin(theta)) : 0 * I_1`,
          where: { theta: 'transmit.conductionAngle', I_1: 'transmit.fundamental' },
          source: pulse,
        },
  peakCurrent: (look) =>
    isClassA(look)
      ? {
          says: 'The signal swings up from the standing current.',
          formula: isPair(look) ? 'I_q / 2 + I_1' : 'I_q + I_1',
          where: { I_q: 'transmit.quiescent', I_1: 'transmit.fundamental' },
          source: pulse,
        }
      : {
          says: 'The tip of a pulse of this angle that has this fundamental.',
          formula: 'I_1 * pi * (1 - cos(h)) / (h - sin(h) * cos(h))',
          where: { ...half, I_1: 'transmit.fundamental' },
          source: pulse,
          assumes: idealPulse,
        },
  dcCurrent: (look) =>
    isClassA(look)
      ? {
          says: 'In class A the mean current is the standing current.',
          formula: 'I_q',
          where: { I_q: 'transmit.quiescent' },
          source: pulse,
        }
      : {
          says: 'The mean of the pulse.',
          formula: `${isPair(look) ? '2 * ' : ''}I_max * (sin(h) - h * cos(h)) / (pi * (1 - cos(h)))`,
          where: { ...half, I_max: 'transmit.peakCurrent' },
          source: pulse,
          assumes: idealPulse,
        },
  twoToneCurrent: {
    says: 'The mean envelope of two equal tones is 2/π of its peak.',
    formula: 'I_q + (I_dc - I_q) * 2 / pi',
    where: { I_q: 'transmit.quiescent', I_dc: 'transmit.dcCurrent' },
    source: 'closed form: mean of |cos|',
    assumes: 'The current rises in a straight line with the envelope.',
  },
  twoToneMean: {
    says: 'Two equal tones: the peak envelope power is twice the mean.',
    formula: 'P_PEP / 2',
    where: { P_PEP: 'plan.pep' },
    source: 'closed form',
  },
  harmonicCurrents: (look, index) => harmonic(look, index),
  efficiency: {
    says: 'Radio power at the collector over what the supply gives.',
    formula: 'P_c / (V_cc * I_dc)',
    where: {
      P_c: 'transmit.collectorPower',
      V_cc: 'plan.supply',
      I_dc: 'transmit.dcCurrent',
    },
    source: 'definition',
  },
  overall: {
    says: 'Radio power at the antenna over what the supply gives the final.',
    formula: 'P_PEP / (V_cc * I_dc)',
    where: { P_PEP: 'plan.pep', V_cc: 'plan.supply', I_dc: 'transmit.dcCurrent' },
    source: 'definition',
  },
  outputImpedance: (look) => ({
    says: 'Signal on the collector gets through Cob to the base and is amplified as if a resistor stood there.',
    formula: `${isPair(look) ? 2 : 1} / (2 * pi * f_T * C_ob${gangOf(look) === 1 ? '' : ' * n_g'})`,
    where: {
      ...gangs(look),
      f_T: 'transmit.transition',
      C_ob: constant(sheet(look).cob, 'F', 'collector to base capacitance', look),
    },
    source:
      'hybrid-pi model with the base driven from a high impedance: gm·Cob/(Cpi + Cob), and gm/Cpi = 2π·fT',
    assumes: 'The final is in its active region, without emitter resistor.',
  }),
  currentGainAsked: {
    says: 'Power gain is the square of the current gain times the ratio of the resistances.',
    formula: 'sqrt(10^(G_fin / 10) * R_base / R_c)',
    where: {
      G_fin: 'transmit.finalGain',
      R_base: 'transmit.finalInput',
      R_c: 'transmit.collectorLoad',
    },
    source: 'closed form: P = I²R at both ends',
  },
  currentGainThere: (look) => ({
    says: 'The current gain falls with frequency until it is one at fT.',
    formula: 'h_FE / sqrt(1 + (h_FE * f_0 / f_T)^2)',
    where: {
      h_FE: constant(sheet(look).hfe[1], '1', 'current gain for direct current', look),
      f_0: 'plan.nominal',
      f_T: 'transmit.transition',
    },
    source: 'hybrid-pi model',
  }),
  supplyPeak: (look) => ({
    says: 'The final at full power, and what stands in the other stages.',
    formula: `I_dc + I_drv + ${amplifiersOf(look)} * I_E + I_mic + I_fol`,
    where: { I_dc: 'transmit.dcCurrent', ...others },
    source: 'Kirchhoff’s current law',
  }),
  supplySpeech: (look) => ({
    says: 'The final’s mean on speech, and what stands in the other stages.',
    formula: `I_q + (I_dc - I_q) * sqrt(pi * d_sp) / 2 + I_drv + ${amplifiersOf(look)} * I_E + I_mic + I_fol`,
    where: {
      I_q: 'transmit.quiescent',
      I_dc: 'transmit.dcCurrent',
      d_sp: 'transmit.speechMean',
      ...others,
    },
    source: 'Kirchhoff’s current law; mean of a Rayleigh-distributed envelope',
    assumes: 'The current rises in a straight line with the envelope.',
  }),
  limitVce: fromSheet('ownVce', 'V_ceo_own', (d) => d.vceo, 'V'),
  limitIc: fromSheet('ownIc', 'I_c_own', (d) => d.ic, 'A'),
  limitJunction: (look) => sheetOnly(look, (d) => d.junction, '°C'),
  transition: fromSheet('ownFt', 'f_T_own', (d) => d.ft, 'Hz'),
  toCase: fromSheet('ownToCase', 'R_jc_own', (d) => d.toCase ?? 0, 'K/W'),
  toAmbient: fromSheet('ownToAmbient', 'R_ja_own', (d) => d.toAmbient, 'K/W'),
};

/** The final's row of the data sheets. */
function sheet(look: Look): Transistor {
  return transistors[look('transmit.finalDevice') as TransistorKey] ?? transistors.d139;
}

function constant(value: number, unit: Unit, says: string, look: Look): Bound {
  return { value, unit, says, source: sheet(look).source };
}

function sheetOnly(look: Look, figure: (row: Transistor) => number, unit: Unit): Working {
  return {
    says: `From the data sheet of the ${sheet(look).name}.`,
    formula: 'x_sheet',
    where: { x_sheet: constant(figure(sheet(look)), unit, 'figure of the data sheet', look) },
    source: sheet(look).source,
  };
}

/** The user's own figure, or the data sheet's. */
function fromSheet(
  own: string,
  symbol: string,
  figure: (row: Transistor) => number,
  unit: Unit,
): (look: Look) => Working {
  const path = `transmit.${own}`;
  return (look) =>
    look(path) === null
      ? sheetOnly(look, figure, unit)
      : {
          says: 'As given.',
          formula: symbol,
          where: { [symbol]: path },
          source: 'as typed',
        };
}

/** One harmonic of the collector current. */
function harmonic(look: Look, index: number): Working {
  const same = (formula: string, where: Record<string, Bound>, says: string): Working => ({
    says,
    formula,
    where,
    source: pulse,
    assumes: idealPulse,
  });
  if (index === 0) return same('I_dc', { I_dc: 'transmit.dcCurrent' }, 'The mean of the pulse.');
  if (index === 1) {
    return same('I_1', { I_1: 'transmit.fundamental' }, 'The fundamental makes the power.');
  }
  if (isClassA(look)) {
    return same('0 * I_1', { I_1: 'transmit.fundamental' }, 'In class A nothing is cut off.');
  }
  const cancels = isPair(look) && index % 2 === 0;
  return same(
    `${cancels ? '10^(-A_bal / 20) * ' : ''}I_max * (2 * (sin(n * h) * cos(h) - n * cos(n * h) * sin(h))) / (n * (n * n - 1) * (pi * (1 - cos(h))))`,
    {
      ...(cancels ? { A_bal: 'transmit.evenBalance' } : {}),
      ...half,
      n: 'index',
      I_max: 'transmit.peakCurrent',
    },
    cancels
      ? `What the two sides leave of harmonic number ${index} of the pulse.`
      : `Harmonic number ${index} of the pulse.`,
  );
}

/** How many two-way amplifiers there are. */
const amplifiersOf = (look: Look): number => (look('transmit.thirdGain') === null ? 2 : 3);
