import { type AudioChipKey, audioChips } from '../../data/devices.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { type BudgetRow, type State, states } from './budget.ts';
import type { supplyFields } from './fields.ts';

type Where = Readonly<Record<string, Bound>>;

interface Source {
  readonly in: readonly State[];
  readonly says: string;
  readonly formula: string;
  readonly where: Where;
  readonly source: string;
}

const kirchhoff = 'Kirchhoff’s current law';
const nothing: Bound = { value: 0, unit: 'A', says: 'not fed' };
const receive: readonly State[] = ['receiving', 'listening'];
const transmit: readonly State[] = ['silent', 'speech', 'tone'];

const plain = (when: readonly State[], path: string): Source => ({
  in: when,
  says: 'As this stage draws it.',
  formula: 'I_x',
  where: { I_x: path },
  source: kirchhoff,
});

const chipIdle = (look: Look): Bound => {
  const chip = audioChips[look('receive.chip') as AudioChipKey] ?? audioChips.a386;
  return { value: chip.idle, unit: 'A', says: 'audio chip at rest', source: chip.source };
};

const finals = { I_q: 'transmit.quiescent', I_dc: 'transmit.dcCurrent' } as const;

/** Where each stage's current comes from, and in which states it is fed. */
const sources: Readonly<Record<string, readonly ((look: Look) => Source)[]>> = {
  'Carrier oscillator': [() => plain(states, 'supply.oscillator')],
  'Conversion oscillator': [() => plain(states, 'supply.conversion')],
  'Two-way amplifiers': [
    () => ({
      in: states,
      says: 'Both are at work on receive and on transmit.',
      formula: '2 * I_E',
      where: { I_E: 'transmit.amplifierStanding' },
      source: kirchhoff,
    }),
  ],
  'Audio preamplifier': [() => plain(receive, 'supply.preamp')],
  'Audio chip': [
    (look) => ({
      in: ['receiving'],
      says: 'At rest.',
      formula: 'I_c',
      where: { I_c: chipIdle(look) },
      source: 'maker’s public data sheet',
    }),
    (look) => ({
      in: ['listening'],
      says: 'A class-B stage draws a πth of the speaker’s peak current on top.',
      formula: 'I_c + sqrt(2 * min(P_ls, P_af) / R_sp) / pi',
      where: {
        I_c: chipIdle(look),
        P_ls: 'receive.listening',
        P_af: 'receive.speakerMost',
        R_sp: 'receive.speaker',
      },
      source: 'closed form: mean of half a sine',
    }),
  ],
  'Microphone amplifier': [() => plain(transmit, 'transmit.micStanding')],
  Follower: [() => plain(transmit, 'transmit.followerStanding')],
  'Third amplifier': [() => plain(transmit, 'transmit.amplifierStanding')],
  Driver: [() => plain(transmit, 'transmit.driverStanding')],
  Final: [
    () => ({ ...plain(['silent'], 'transmit.quiescent'), says: 'Standing current.' }),
    () => ({
      in: ['speech'],
      says: 'The current rises with the envelope; √(πd)/2 of its peak is the envelope’s mean.',
      formula: 'I_q + (I_dc - I_q) * sqrt(pi * d_sp) / 2',
      where: { ...finals, d_sp: 'transmit.speechMean' },
      source: 'closed form: mean of a Rayleigh-distributed envelope',
    }),
    () => ({ ...plain(['tone'], 'transmit.dcCurrent'), says: 'Mean of the current pulses.' }),
  ],
  Relays: [() => plain(transmit, 'supply.relay')],
  'Everything else': [() => plain(states, 'supply.extras')],
};

const rowsOf = (look: Look): readonly BudgetRow[] =>
  (look('supply.budget') as readonly BudgetRow[] | null) ?? [];

const cell =
  (state: State) =>
  (look: Look, index: number): Working => {
    const stage = rowsOf(look)[index]?.stage ?? '';
    const fed = (sources[stage] ?? []).map((of) => of(look)).find((s) => s.in.includes(state));
    return (
      fed ?? {
        says: 'This stage has no supply in this state.',
        formula: 'I_none',
        where: { I_none: nothing },
        source: kirchhoff,
      }
    );
  };

/** The sum of a column. */
const total =
  (state: State) =>
  (look: Look): Working => {
    const fed = rowsOf(look).filter((row) => row[state] > 0);
    const where: Record<string, Bound> = { I_0: nothing };
    fed.forEach((row, i) => {
      where[`I_${i + 1}`] = { value: row[state], unit: 'A', says: row.stage };
    });
    if (fed.length > 0) delete where.I_0;
    return {
      says: 'All stages together, as the table has them.',
      formula: Object.keys(where).join(' + '),
      where,
      source: kirchhoff,
    };
  };

/** The stage that takes most in the state of a row. */
function mostOf(look: Look, index: number): BudgetRow | undefined {
  const state = states[index] ?? 'tone';
  return rowsOf(look).reduce<BudgetRow | undefined>(
    (best, row) => (best === undefined || row[state] > best[state] ? row : best),
    undefined,
  );
}

type BudgetKey =
  | `budget.${'stage' | State}`
  | `states.${'state' | 'current' | 'power' | 'most' | 'share'}`
  | State
  | 'power'
  | 'mean'
  | 'limit';

/** Currents by stage and by state. */
export const budgetWorkings: Pick<StageWorkings<typeof supplyFields>, BudgetKey> = {
  'budget.stage': {
    says: 'In the order of the signal.',
    rule: 'Every stage that the supply feeds.',
    where: {},
    source: kirchhoff,
  },
  'budget.receiving': cell('receiving'),
  'budget.listening': cell('listening'),
  'budget.silent': cell('silent'),
  'budget.speech': cell('speech'),
  'budget.tone': cell('tone'),
  'states.state': {
    says: 'In the order of rising current.',
    rule: 'A fixed list.',
    where: {},
    source: 'common practice, no source',
  },
  'states.current': (_, index) => ({
    says: 'All stages together.',
    formula: 'I_x',
    where: { I_x: `supply.${states[index] ?? 'tone'}` },
    source: kirchhoff,
  }),
  'states.power': {
    says: 'Volts times amperes.',
    formula: 'I_all * V_cc',
    where: { I_all: 'row.current', V_cc: 'plan.supply' },
    source: 'definition',
  },
  'states.most': {
    says: 'The largest of the column.',
    rule: 'The stage with the largest current in this state.',
    where: { I_all: 'row.current' },
    source: kirchhoff,
  },
  'states.share': (look, index) => {
    const most = mostOf(look, index);
    return {
      says: 'The largest of the column over its sum.',
      formula: 'I_x / I_all',
      where: {
        I_x: {
          value: most?.[states[index] ?? 'tone'] ?? 0,
          unit: 'A',
          says: most?.stage ?? 'the largest',
        },
        I_all: 'row.current',
      },
      source: 'definition',
    };
  },
  receiving: total('receiving'),
  listening: total('listening'),
  silent: total('silent'),
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
    formula: '(1 - d_tx) * I_ls + d_tx * I_sp',
    where: { d_tx: 'supply.talking', I_ls: 'supply.listening', I_sp: 'supply.speech' },
    source: 'mean',
  },
  limit: {
    says: 'Twice what the receiver draws when nothing is wrong.',
    formula: '2 * I_rx',
    where: { I_rx: 'supply.receiving' },
    source: 'common practice, no source',
  },
};
