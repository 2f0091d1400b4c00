import { batteries, RATED_HOURS } from '../../data/batteries.ts';
import { COPPER, leads } from '../../data/leads.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { supplyFields } from './fields.ts';
import { ROOM } from './work.ts';

type State = 'listening' | 'quiet' | 'speech' | 'tone';
type Where = Record<string, Bound>;

interface Row {
  readonly stage: string;
  readonly listening: number;
  readonly quiet: number;
  readonly speech: number;
  readonly tone: number;
}

const kirchhoff = 'Kirchhoff’s current law';
const practice = 'common practice, no source';
const nothing: Bound = { value: 0, unit: 'A', says: 'not fed' };

const rowsOf = (look: Look): readonly Row[] => (look('supply.budget') as readonly Row[]) ?? [];

/** Where each stage's current comes from: always, on receive, or on transmit. */
const sources: Readonly<
  Record<string, { when: 'always' | 'receive' | 'transmit'; formula: string; where: Where }>
> = {
  'Carrier oscillator': one('always', 'receive.oscillatorCurrent'),
  'Conversion oscillator': one('always', 'supply.conversion'),
  'Two-way amplifiers': {
    when: 'always',
    formula: '2 * I_x',
    where: { I_x: 'transmit.amplifierStanding' },
  },
  'Audio preamplifier': one('receive', 'receive.preampCurrent'),
  'Audio chip': {
    when: 'receive',
    formula: 'I_l - (2 * I_a + I_osc + I_pre)',
    where: {
      I_l: 'receive.currentListening',
      I_a: 'transmit.amplifierStanding',
      I_osc: 'receive.oscillatorCurrent',
      I_pre: 'receive.preampCurrent',
    },
  },
  'Microphone amplifier': one('transmit', 'transmit.micStanding'),
  Follower: one('transmit', 'transmit.followerStanding'),
  Driver: one('transmit', 'transmit.driverStanding'),
  Relays: one('transmit', 'supply.relay'),
  'Everything else': one('always', 'supply.extras'),
};

function one(when: 'always' | 'receive' | 'transmit', path: string) {
  return { when, formula: 'I_x', where: { I_x: path } };
}

/** The final's own current by state. */
function finalIn(state: State): { formula: string; where: Where } {
  if (state === 'listening') return { formula: 'I_none', where: { I_none: nothing } };
  if (state === 'quiet') return { formula: 'I_q', where: { I_q: 'transmit.quiescent' } };
  if (state === 'tone') return { formula: 'I_dc', where: { I_dc: 'transmit.dcCurrent' } };
  return {
    formula: 'I_s - (I_mic + I_fol + 2 * I_a + I_drv)',
    where: {
      I_s: 'transmit.supplySpeech',
      I_mic: 'transmit.micStanding',
      I_fol: 'transmit.followerStanding',
      I_a: 'transmit.amplifierStanding',
      I_drv: 'transmit.driverStanding',
    },
  };
}

const cell =
  (state: State) =>
  (look: Look, index: number): Working => {
    const stage = rowsOf(look)[index]?.stage ?? '';
    if (stage === 'Final') {
      return {
        says: 'As the Final leaf has it.',
        ...finalIn(state),
        source: kirchhoff,
      };
    }
    const from = sources[stage];
    const fed =
      from !== undefined &&
      (from.when === 'always' || (from.when === 'receive') === (state === 'listening'));
    return fed && from
      ? {
          says: 'As this stage draws it.',
          formula: from.formula,
          where: from.where,
          source: kirchhoff,
        }
      : {
          says: 'This stage has no supply in this state.',
          formula: 'I_none',
          where: { I_none: nothing },
          source: kirchhoff,
        };
  };

/** The sum of a column, its rows as constants that lead on to the table. */
const total =
  (state: State) =>
  (look: Look): Working => {
    const rows = rowsOf(look);
    const where: Where = {};
    rows.forEach((row, i) => {
      where[`I_${i + 1}`] = { value: row[state], unit: 'A', says: row.stage };
    });
    return {
      says: 'All stages together.',
      formula: rows.map((_, i) => `I_${i + 1}`).join(' + '),
      where,
      source: kirchhoff,
    };
  };

const batteryOf = (look: Look) => batteries[look('supply.battery') as keyof typeof batteries];
const leadOf = (look: Look) => leads[look('supply.lead') as keyof typeof leads];

export const supplyWorkings: StageWorkings<typeof supplyFields> = {
  'budget.stage': {
    says: 'In the order of the signal.',
    rule: 'Every stage that the supply feeds.',
    where: {},
    source: practice,
  },
  'budget.listening': cell('listening'),
  'budget.quiet': cell('quiet'),
  'budget.speech': cell('speech'),
  'budget.tone': cell('tone'),
  listening: total('listening'),
  quiet: total('quiet'),
  speech: total('speech'),
  tone: total('tone'),
  power: {
    says: 'Volts times amperes.',
    formula: 'I_t * V_cc',
    where: { I_t: 'supply.tone', V_cc: 'plan.supply' },
    source: 'definition',
  },
  mean: {
    says: 'Weighted with the time.',
    formula: '(1 - d_tx) * I_rx + d_tx * I_sp',
    where: { d_tx: 'supply.talking', I_rx: 'supply.listening', I_sp: 'supply.speech' },
    source: 'mean',
  },
  hours: (look) => ({
    says: 'The usable share of what Peukert leaves of the capacity.',
    formula: 's_u * T_r * (C_bat / (I_m * T_r))^k',
    where: {
      s_u: {
        value: batteryOf(look).usable,
        unit: '1',
        says: 'share that may be used',
        source: practice,
      },
      T_r: { value: RATED_HOURS * 3600, unit: 'h', says: 'hours that the capacity is printed for' },
      C_bat: 'supply.capacity',
      I_m: 'supply.mean',
      k: {
        value: batteryOf(look).peukert,
        unit: '1',
        says: 'Peukert’s exponent',
        source: practice,
      },
    },
    source: 'Peukert, Elektrotechnische Zeitschrift 20, 1897',
    assumes: 'A new battery at 20 °C.',
  }),
  endVoltage: (look) => ({
    says: 'A share of the supply by the kind of battery.',
    formula: 'r_e * V_cc',
    where: {
      r_e: { value: batteryOf(look).end, unit: '1', says: 'end over nominal', source: practice },
      V_cc: 'plan.supply',
    },
    source: practice,
  }),
  endPower: {
    says: 'Into the same load the power goes with the square of the swing.',
    formula: 'P_PEP * ((V_end - V_sat) / (V_cc - V_sat))^2',
    where: {
      P_PEP: 'plan.pep',
      V_end: 'supply.endVoltage',
      V_sat: 'transmit.saturation',
      V_cc: 'plan.supply',
    },
    source: 'P = (Vcc − Vsat)²/2R',
  },
  fuse: (look) => ({
    says: 'The next rating with a quarter of room.',
    formula: 'I_n',
    where: {
      I_n: {
        value: look('supply.fuse') as number,
        unit: 'A',
        says: `first rating that is at least ${ROOM} times the steady current`,
        source: 'IEC 60127; ISO 8820-3',
      },
    },
    source: 'IEC 60127; ISO 8820-3; the room is common practice',
  }),
  limit: {
    says: 'Twice what the receiver draws when nothing is wrong.',
    formula: '2 * (I_r + I_ext)',
    where: { I_r: 'receive.current', I_ext: 'supply.extras' },
    source: practice,
  },
  leadDrop: (look) => ({
    says: 'There and back.',
    formula: '2 * rho * l_s * I_t / A_w',
    where: {
      rho: { value: COPPER, unit: 'Ω·m', says: 'resistivity of copper', source: 'IEC 60028' },
      l_s: 'supply.leadLength',
      I_t: 'supply.tone',
      A_w: { value: leadOf(look).area, unit: 'm²', says: leadOf(look).title },
    },
    source: 'IEC 60028; ASTM B258 for AWG',
  }),
  leadShare: {
    says: 'Over the supply.',
    formula: 'V_l / V_cc',
    where: { V_l: 'supply.leadDrop', V_cc: 'plan.supply' },
    source: 'definition',
  },
  leadOutcome: (look) => {
    const fused = look('supply.fuse') !== null;
    return {
      says: 'Too thin where the drop is over what is allowed, or the fuse over what the lead bears.',
      formula: `s_l > d_V${fused ? ' or I_F > I_z' : ''} ? "fails" : s_l > 0.8 * d_V ? "close" : "holds"`,
      where: {
        s_l: 'supply.leadShare',
        d_V: 'supply.dropAllowed',
        ...(fused
          ? {
              I_F: 'supply.fuse',
              I_z: { value: leadOf(look).carries, unit: 'A', says: 'what the lead bears' } as const,
            }
          : {}),
      },
      source: 'flexible leads: VDE 0298 and US practice, from memory',
    };
  },
  leadWords: {
    says: 'The thinnest of the list that keeps the drop and bears the fuse.',
    rule: 'All of the list are tried.',
    where: { I_t: 'supply.tone', d_V: 'supply.dropAllowed' },
    source: practice,
  },
};
