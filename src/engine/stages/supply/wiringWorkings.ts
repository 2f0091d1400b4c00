import { COPPER } from '../../circuit/wireLoss.ts';
import { type Fuse, fuses } from '../../data/fuses.ts';
import { type Lead, leads } from '../../data/leads.ts';
import type { Bound, Look, StageWorkings } from '../../fields/workings.ts';
import type { supplyFields } from './fields.ts';
import { CLOSE } from './wiring.ts';

const sections = 'IEC 60228; ASTM B258';
const bearing = 'flexible leads: VDE 0298-4 and practice in the US, from memory';
const rho: Bound = {
  value: COPPER,
  unit: 'Ω·m',
  says: 'resistivity of copper',
  source: 'IEC 60028',
};

const fuseOf = (look: Look): Fuse =>
  fuses[look('supply.fuseKind') as keyof typeof fuses] ?? fuses.glass;
const leadOf = (look: Look): Lead => leads[look('supply.lead') as keyof typeof leads] ?? leads.mm15;

/** Formula of the verdict on leads, with what they bear. */
function outcome(look: Look, share: string, bears: Bound) {
  const fused = look('supply.fuse') !== null;
  const fuse: Readonly<Record<string, Bound>> = fused ? { I_F: 'supply.fuse', I_z: bears } : {};
  return {
    says: 'Too thin where more is lost than allowed, or where the fuse lets more through than they bear.',
    formula: `s_l > d_V${fused ? ' or I_F > I_z' : ''} ? "fails" : s_l > c * d_V ? "close" : "holds"`,
    where: {
      s_l: share,
      d_V: 'supply.dropAllowed',
      ...fuse,
      c: { value: CLOSE, unit: '1', says: 'warm from this part on' } as const,
    },
    source: bearing,
  };
}

type WiringKey =
  | 'fuseNeed'
  | 'fuse'
  | 'leadDrop'
  | 'leadShare'
  | 'leadOutcome'
  | 'leadWords'
  | `leadRows.${'lead' | 'area' | 'drop' | 'share' | 'bears' | 'outcome'}`;

/** Fuse and leads. */
export const wiringWorkings: Pick<StageWorkings<typeof supplyFields>, WiringKey> = {
  fuseNeed: {
    says: 'Room over what is drawn for long.',
    formula: 'k_F * I_t',
    where: { k_F: 'supply.fuseRoom', I_t: 'supply.tone' },
    source: 'common practice, no source: 1.25 to 1.5',
  },
  fuse: (look) => {
    const { ratings, source } = fuseOf(look);
    const rating = Number(look('supply.fuse'));
    const below = ratings[ratings.indexOf(rating) - 1] ?? 0;
    return {
      says: 'The first step that is enough: the one below it is not.',
      formula: 'I_n >= I_F0 and I_p < I_F0 ? I_n : 0 * I_n',
      where: {
        I_F0: 'supply.fuseNeed',
        I_n: { value: rating, unit: 'A', says: 'this step', source },
        I_p: { value: below, unit: 'A', says: 'the step below', source },
      },
      source,
    };
  },
  leadDrop: (look) => ({
    says: 'There and back.',
    formula: '2 * rho * l_s * I_t / A_w',
    where: {
      rho,
      l_s: 'supply.leadLength',
      I_t: 'supply.tone',
      A_w: { value: leadOf(look).area, unit: 'm²', says: leadOf(look).title, source: sections },
    },
    source: 'closed form: R = ρl/A',
  }),
  leadShare: {
    says: 'Over the supply.',
    formula: 'V_l / V_cc',
    where: { V_l: 'supply.leadDrop', V_cc: 'plan.supply' },
    source: 'definition',
  },
  leadOutcome: (look) =>
    outcome(look, 'supply.leadShare', {
      value: leadOf(look).bears,
      unit: 'A',
      says: 'what these leads bear',
      source: bearing,
    }),
  leadWords: {
    says: 'The thinnest of the list that keeps the drop and bears the fuse.',
    rule: 'All of the list are tried.',
    where: { I_t: 'supply.tone', d_V: 'supply.dropAllowed' },
    source: 'common practice, no source',
  },
  'leadRows.lead': {
    says: 'From thin to thick.',
    rule: 'A fixed list.',
    where: {},
    source: sections,
  },
  'leadRows.area': (look) => ({
    says: 'As the standard has it.',
    formula: 'A',
    where: {
      A: { value: Number(look('row.area')), unit: 'm²', says: 'section', source: sections },
    },
    source: sections,
  }),
  'leadRows.drop': {
    says: 'There and back.',
    formula: '2 * rho * l_s * I_t / A_w',
    where: { rho, l_s: 'supply.leadLength', I_t: 'supply.tone', A_w: 'row.area' },
    source: 'closed form: R = ρl/A',
  },
  'leadRows.share': {
    says: 'Over the supply.',
    formula: 'V_w / V_cc',
    where: { V_w: 'row.drop', V_cc: 'plan.supply' },
    source: 'definition',
  },
  'leadRows.bears': (look) => ({
    says: 'Free in air, before it gets warm.',
    formula: 'I_z0',
    where: {
      I_z0: {
        value: Number(look('row.bears')),
        unit: 'A',
        says: 'for this section',
        source: bearing,
      },
    },
    source: bearing,
  }),
  'leadRows.outcome': (look) => outcome(look, 'row.share', 'row.bears'),
};
