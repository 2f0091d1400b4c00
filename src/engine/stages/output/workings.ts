import { TURNS_TOLERANCE } from '../../circuit/turnsRatio.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { chainFormula, rowAfter, transimpedanceFormula } from './chainFormula.ts';
import { elementWorkings } from './elementWorkings.ts';
import type { outputFields } from './fields.ts';
import { harmonicWorkings, outcome, withFrequency } from './harmonicWorkings.ts';
import { stopWorkings } from './stopWorkings.ts';
import { woundWorkings } from './woundWorkings.ts';

const chains = 'chain matrices of the network, any text on two-ports';

export const outputWorkings: StageWorkings<typeof outputFields> = {
  transformerPrimary: (look) => turns(look, 'primary'),
  transformerSecondary: (look) => turns(look, 'secondary'),
  transformerRatio: (look) =>
    look('output.transformerPrimary') === null
      ? {
          says: 'Impedances go as the square of the turns.',
          formula: 'sqrt(R_e / R_c)',
          where: { R_e: 'output.filterEnd', R_c: 'transmit.collectorLoad' },
          source: 'closed form of the ideal transformer',
        }
      : {
          says: 'The whole turns over each other.',
          formula: 'N_s / N_p',
          where: { N_s: 'output.transformerSecondary', N_p: 'output.transformerPrimary' },
          source: 'closed form of the ideal transformer',
        },
  cutoff: {
    says: 'So far above the operating frequency.',
    formula: 'r_c * f_0',
    where: { r_c: 'output.cutoffRatio', f_0: 'plan.nominal' },
    source: 'common practice, no source',
  },
  filterEnd: (look) =>
    look('output.lowpass') === 'chebyshev' && (look('output.order') as number) % 2 === 0
      ? {
          says: 'A Chebyshev filter of an even number of elements steps the antenna up.',
          formula: 'R_ant / tanh(-log(tanh(A_r * log(10) / 40)) / 4)^2',
          where: { R_ant: 'plan.antenna', A_r: 'output.ripple' },
          source: 'Matthaei, Young, Jones, Microwave Filters, 1964, eq. 4.05-2',
        }
      : {
          says: 'Both ends of the filter are alike.',
          formula: 'R_ant',
          where: { R_ant: 'plan.antenna' },
          source: 'the filter’s design',
        },
  inputResistance: (look) => input(look, 're'),
  inputReactance: (look) => input(look, 'im'),
  returnLoss: {
    says: 'How much of a wave from the wanted load would be thrown back.',
    formula: 'min(100, -20 * log10(sqrt((R_in - R_c)^2 + X_in^2) / sqrt((R_in + R_c)^2 + X_in^2)))',
    where: {
      R_in: 'output.inputResistance',
      X_in: 'output.inputReactance',
      R_c: 'transmit.collectorLoad',
    },
    source: 'definition of the reflection coefficient',
    assumes: 'More than 100 dB is shown as 100 dB.',
  },
  drive: {
    says: 'The collector’s swing is used up at the load wanted; into a higher one less current does it.',
    formula: 'min(1, R_c / sqrt(R_in^2 + X_in^2))',
    where: {
      R_c: 'transmit.collectorLoad',
      R_in: 'output.inputResistance',
      X_in: 'output.inputReactance',
    },
    source: 'Ohm’s law at the collector',
  },
  transimpedance: (look) => ({
    says: 'One volt at the antenna is followed back through the parts to the current that makes it.',
    ...transimpedanceFormula(look, 'f_0'),
    source: chains,
  }),
  loss: (look) => {
    const chain = chainFormula(look, 'f_0');
    if (chain.branches.length === 0) {
      return {
        says: 'There is no part that could lose anything.',
        formula: '10 * log10(R_ant / R_ant)',
        where: { R_ant: 'plan.antenna' },
        source: chains,
      };
    }
    const ratio = chain.ratio === '1' ? '' : `${chain.ratio} * `;
    return {
      says: 'Power into the network over power into the antenna.',
      formula: `10 * log10(R_in / R_ant * abs(${ratio}${rowAfter(chain, 0, 'current')})^2)`,
      where: { R_in: 'output.inputResistance', ...chain.where },
      source: chains,
    };
  },
  pepAntenna: {
    says: 'Half the squared current into the load that the collector sees, less what the network keeps.',
    formula: '(s_d * I_1)^2 * R_in / 2 / 10^(A_net / 10)',
    where: {
      s_d: 'output.drive',
      I_1: 'transmit.fundamental',
      R_in: 'output.inputResistance',
      A_net: 'output.loss',
    },
    source: 'Joule’s law',
  },
  lost: {
    says: 'What goes in less what comes out.',
    formula: 'P_ant * (10^(A_net / 10) - 1)',
    where: { P_ant: 'output.pepAntenna', A_net: 'output.loss' },
    source: 'conservation of energy',
  },
  partCount: (look) => {
    const rows = (look('output.elements') ?? []) as readonly { readonly made: string | null }[];
    return {
      says: 'Rows of the table of parts, one more for each pair, and the transformer.',
      formula: 'N_r + N_2 + N_t',
      where: {
        N_r: { value: rows.length, unit: '1', says: 'rows of the table of parts' },
        N_2: {
          value: rows.filter(({ made }) => made !== null).length,
          unit: '1',
          says: 'pairs among them',
        },
        N_t: {
          value: look('output.match') === 'transformer' ? 1 : 0,
          unit: '1',
          says: 'transformer',
        },
      },
      source: 'counting',
    };
  },
  worstMargin: (look) => {
    const rows = margins(look);
    const where: Record<string, Bound> = {};
    for (const { order, margin } of rows) {
      where[`M_${order}`] = { value: margin, unit: 'dB', says: `margin of harmonic ${order}` };
    }
    return {
      says: 'The least of all margins.',
      formula: `min(${Object.keys(where).join(', ')})`,
      where,
      source: 'the table of harmonics',
    };
  },
  worstOrder: (look) => {
    const rows = margins(look);
    const where: Record<string, Bound> = { M_min: 'output.worstMargin' };
    for (const { order, margin } of rows) {
      where[`M_${order}`] = { value: margin, unit: 'dB', says: `margin of harmonic ${order}` };
    }
    const steps = rows.map(({ order }) => `M_${order} == M_min ? ${order} : `).join('');
    return {
      says: 'The harmonic whose margin is the least.',
      formula: `${steps}0`,
      where,
      source: 'the table of harmonics',
    };
  },
  verdict: (look) =>
    look('output.worstMargin') === null
      ? {
          says: 'The pulse has no harmonic at all.',
          rule: 'Without a harmonic the rule is kept.',
          where: {},
          source: 'the table of harmonics',
        }
      : outcome({ M_min: 'output.worstMargin' }, 'M_min'),
  rule: {
    says: 'The rule set chosen on the Plan, with where it was read.',
    rule: 'Looked up in the table of rule sets.',
    where: { rules: 'plan.rules' },
    source: 'the rule set’s own text',
    assumes: 'A planning figure: the text in force and a measurement decide.',
  },
  'response.level': (look) => {
    if (chainFormula(look, 'f').branches.length === 0) {
      return {
        says: 'Nothing in the way: every frequency passes alike.',
        formula: '20 * log10(Z_T / Z_T)',
        where: { Z_T: 'output.transimpedance' },
        source: chains,
      };
    }
    const { formula, where } = withFrequency(transimpedanceFormula(look, 'f'), 'point.frequency');
    return {
      says: 'Transimpedance here over that at the operating frequency.',
      formula: `20 * log10(${formula} / Z_T)`,
      where: { ...where, Z_T: 'output.transimpedance' },
      source: chains,
    };
  },
  ...stopWorkings,
  ...elementWorkings,
  ...woundWorkings,
  ...harmonicWorkings,
};

function margins(look: Look): { order: number; margin: number }[] {
  const rows = look('output.harmonics') as readonly {
    readonly order: number;
    readonly margin: number | null;
  }[];
  return rows.flatMap(({ order, margin }) => (margin === null ? [] : [{ order, margin }]));
}

function input(look: Look, part: 're' | 'im'): Working {
  const chain = chainFormula(look, 'f_0');
  const scale = chain.ratio === '1' ? 'R_ant' : `R_ant / ${chain.ratio}^2`;
  const over = `${rowAfter(chain, 0, 'voltage')} / ${rowAfter(chain, 0, 'current')}`;
  return {
    says: 'Voltage over current at the network’s input, for the antenna at its output.',
    formula: `${scale} * ${part}(${over})`,
    where: chain.where,
    source: chains,
  };
}

/** Whole turns: the smaller winding grows from one turn until the ratio is near enough. */
function turns(look: Look, side: 'primary' | 'secondary'): Working {
  const primary = look('output.transformerPrimary') as number;
  const secondary = look('output.transformerSecondary') as number;
  const few = Math.min(primary, secondary);
  const stepUp = (look('output.filterEnd') as number) >= (look('transmit.collectorLoad') as number);
  const tries = Array.from({ length: few - 1 }, (_, k) => k + 1)
    .map((n) => `abs(round(${n} * n_x) / (${n} * n_x) - 1) <= t_n ? ${n} : `)
    .join('');
  const wantsFew = (side === 'primary') === stepUp;
  return {
    says: `The smaller winding grows from one turn until whole turns meet the ratio within ${100 * TURNS_TOLERANCE} %.`,
    formula: wantsFew ? `${tries}${few}` : `round(n_x * (${tries}${few}))`,
    where: {
      R_e: 'output.filterEnd',
      R_c: 'transmit.collectorLoad',
      n_x: {
        formula: stepUp ? 'sqrt(R_e / R_c)' : 'sqrt(R_c / R_e)',
        unit: '1',
        says: 'exact ratio, larger over smaller',
      },
      t_n: { value: TURNS_TOLERANCE, unit: '1', says: 'how far whole turns may be off' },
    },
    source: 'closed form of the ideal transformer',
  };
}
