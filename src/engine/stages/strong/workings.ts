import { BLOCKS_BELOW } from '../../circuit/cubic.ts';
import { nearestBroadcast } from '../../data/broadcastBands.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { strongFields } from './fields.ts';
import type { StrongSeen } from './seen.ts';
import { bandOf, MOST_TAKEN, networkOf, type Selective, takenBeyond } from './selectivity.ts';
import { ENOUGH } from './verdict.ts';
import { OPEN_BOARD, OVER_DRIVE } from './work.ts';

const cubic = 'Taylor series to the third power, any text on receivers';
const sum = 'sum of decibels';
const milliwatt = { value: 1e-3, unit: 'W', says: 'one milliwatt' } as const;
const noise: Record<string, Bound> = {
  L_floor: 'receive.floor',
  L_bh: 'receive.bandHere',
  L_N: {
    formula: '10 * log10(10^(L_floor / 10) + 10^(L_bh / 10))',
    unit: 'dBm',
    says: 'noise of band and receiver',
  },
};

interface Row {
  readonly block: string;
  readonly referred: number;
}

const rowsOf = (look: Look): readonly Row[] => (look('strong.blocks') as readonly Row[]) ?? [];

/** Intercepts at the antenna together: reciprocals of powers add. */
function togetherOf(look: Look, inside: boolean): Working {
  const rows = rowsOf(look);
  const last = inside ? rows.length : rows.findIndex(({ block }) => block === 'filter') + 1;
  const where: Record<string, Bound> = {};
  rows.slice(0, last).forEach(({ block, referred }, i) => {
    where[`IP_${i + 1}`] = {
      value: referred,
      unit: 'dBm',
      says: `intercept at the antenna, from the table of blocks: ${block}`,
    };
  });
  return {
    says: 'The products of all blocks add up as voltages, in step.',
    formula: `-10 * log10(${Object.keys(where)
      .map((name) => `10^(-${name} / 10)`)
      .join(' + ')})`,
    where,
    source: cubic,
    assumes: 'All products arrive in step: the worst case.',
  };
}

/** Input intercept of a block. */
function ownOf(look: Look): Working {
  const block = look('row.block');
  switch (block) {
    case 'mixer':
      return look('strong.mixerIntercept') === null
        ? overDrive('L_o', 'convert.oscillatorLevel', 'Over its oscillator by so much.')
        : typed('strong.mixerIntercept');
    case 'detector':
      return look('strong.detectorIntercept') === null
        ? {
            says: 'Over its carrier by so much.',
            formula: '10 * log10(P_LO / P_ref) + d_over',
            where: { P_LO: 'transmit.carrierDrive', P_ref: milliwatt, d_over },
            source: 'common practice, no source',
          }
        : typed('strong.detectorIntercept');
    case 'filter':
      return typed('strong.filterIntercept');
    default:
      return {
        says: 'The amplifier’s intercept at its output, less its gain.',
        formula: 'IP_amp - G_row',
        where: {
          IP_amp: 'transmit.amplifierIntercept',
          G_row: block === 'third' ? 'transmit.thirdGain' : 'transmit.amplifierGain',
        },
        source: cubic,
      };
  }
}

const d_over = { value: OVER_DRIVE, unit: 'dB', says: 'usual for diodes' } as const;

const overDrive = (symbol: string, path: string, says: string): Working => ({
  says,
  formula: `${symbol} + d_over`,
  where: { [symbol]: path, d_over },
  source: 'common practice, no source',
});

const typed = (path: string): Working => ({
  says: 'As typed.',
  formula: 'x_t',
  where: { x_t: path },
  source: 'as typed',
});

/** Gain before a block, from the receiver's chain. */
function beforeOf(look: Look): Bound {
  const chain = (look('receive.chain') as readonly { block: string; before: number }[]) ?? [];
  const row = chain.find(({ block }) => block === look('row.block'));
  return {
    value: row?.before ?? 0,
    unit: 'dB',
    says: 'gain before this block, from the chain of Receive',
  };
}

/** Output network or band-pass, as the stage has them. */
function ladderOf(look: Look, which: 'network' | 'bandPass'): Selective | null {
  return which === 'network'
    ? networkOf({
        throughNetwork: look('receive.throughNetwork') as StrongSeen['throughNetwork'],
        ladder: look('output.ladder') as StrongSeen['ladder'],
        collectorSide: look('output.inputResistance') as number | null,
      })
    : bandOf({
        scheme: look('plan.scheme') as StrongSeen['scheme'],
        bandPass: look('front.network') as StrongSeen['bandPass'],
      });
}

/** What output network or band-pass take off a frequency beyond the signal's own loss. */
function takenAt(look: Look, which: 'network' | 'bandPass', frequency: number): Bound {
  return {
    value: takenBeyond(ladderOf(look, which), frequency, look('plan.nominal') as number),
    unit: 'dB',
    says:
      which === 'network'
        ? 'what the output network takes off, by its ladder as built'
        : 'what the band-pass takes off, by its ladder as built',
  };
}

/** The same as a working of its own: the ladder's transimpedance at both frequencies. */
function takenWorking(look: Look, which: 'network' | 'bandPass'): Working {
  const ladder = ladderOf(look, which);
  if (!ladder) {
    return {
      says: which === 'network' ? 'The signal does not come through it.' : 'There is none.',
      formula: 'A_none',
      where: { A_none: { value: 0, unit: 'dB', says: 'nothing taken off' } },
      source: 'definition',
    };
  }
  const at = (frequency: unknown, says: string): Bound => ({
    value: ladder.through(frequency as number),
    unit: 'Ω',
    says: `transimpedance of the ladder as built, ${says}`,
  });
  return {
    says: 'How much less comes through than at the operating frequency.',
    formula: 'min(A_most, 20 * log10(Z_0 / Z_w))',
    where: {
      Z_0: at(look('plan.nominal'), 'at the operating frequency'),
      Z_w: at(look('row.frequency'), 'at this one'),
      A_most: { value: MOST_TAKEN, unit: 'dB', says: 'beyond this, wires let more past' },
    },
    source: 'chain of the ladder’s parts; passive networks pass as much both ways',
  };
}

/** Balance and stopband on the ways past the filter. */
function lastOf(look: Look): Working {
  switch (look('row.way')) {
    case 'rectified':
      return {
        says: 'The filter far off, and the detector’s balance.',
        formula: 'A_far + A_am',
        where: { A_far: 'strong.stopbandUsed', A_am: 'strong.balance' },
        source: sum,
      };
    case 'image':
      return {
        says: 'The mixer treats image and signal alike.',
        formula: 'A_none',
        where: { A_none: { value: 0, unit: 'dB', says: 'nothing taken off' } },
        source: 'arithmetic of a mixer',
      };
    default:
      return {
        says: 'The mixer’s balance, less what the wanted signal loses there.',
        formula: 'A_bs - A_mix',
        where: { A_bs: 'convert.signalIsolation', A_mix: 'convert.mixerLoss' },
        source: sum,
      };
  }
}

const outcome = (formula: string, path: string): Working => ({
  says: 'Ten decibels in hand hold, none at all fails.',
  rule: formula,
  where: { M: path, M_enough: { value: ENOUGH, unit: 'dB', says: 'enough in hand' } },
  source: 'common practice, no source',
});

export const strongWorkings: StageWorkings<typeof strongFields> = {
  verdict: {
    says: 'The worst of product, blocking and the ways past the filter.',
    rule: 'No harm with 10 dB in hand, just borne down to 0 dB.',
    where: { M_3: 'strong.productOver', M_block: 'strong.blockMargin' },
    source: 'common practice, no source',
  },
  worst: {
    says: 'What has least in hand.',
    rule: 'Product of two stations, blocking, each way past the filter.',
    where: { M_3: 'strong.productOver', M_block: 'strong.blockMargin' },
    source: 'definition',
  },
  interceptOutside: (look) => togetherOf(look, false),
  interceptInside: (look) => togetherOf(look, true),
  free: {
    says: 'Two thirds of the way from the noise to the intercept.',
    formula: '2 / 3 * (IP_out - L_floor)',
    where: { IP_out: 'strong.interceptOutside', L_floor: 'receive.floor' },
    source: cubic,
  },
  freeBand: {
    says: 'Two thirds of the way from all the noise to the intercept.',
    formula: '2 / 3 * (IP_out - L_N)',
    where: { IP_out: 'strong.interceptOutside', ...noise },
    source: cubic,
  },
  harmless: {
    says: 'Where three times the tone less twice the intercept is the noise.',
    formula: '(2 * IP_out + L_N) / 3',
    where: { IP_out: 'strong.interceptOutside', ...noise },
    source: cubic,
  },
  product: {
    says: 'It grows three decibels for each one of the stations.',
    formula: '3 * L_pair - 2 * IP_out',
    where: { L_pair: 'strong.pair', IP_out: 'strong.interceptOutside' },
    source: cubic,
  },
  productOver: {
    says: 'The product less all the noise.',
    formula: 'L_3 - L_N',
    where: { L_3: 'strong.product', ...noise },
    source: sum,
  },
  productSpared: (look) => {
    const spare: Bound =
      look('receive.attenuator') === null
        ? { value: 0, unit: 'dB', says: 'no attenuator: there is none to spare' }
        : 'receive.attenuator';
    return {
      says: 'Stations and band noise come in weaker, the receiver’s own noise does not.',
      formula:
        '3 * (L_pair - L_spare) - 2 * IP_out - 10 * log10(10^(L_floor / 10) + 10^((L_bh - L_spare) / 10))',
      where: {
        L_pair: 'strong.pair',
        L_spare: spare,
        IP_out: 'strong.interceptOutside',
        L_floor: 'receive.floor',
        L_bh: 'receive.bandHere',
      },
      source: cubic,
    };
  },
  'blocks.block': {
    says: 'The blocks of the receiver that distort.',
    rule: 'Amplifiers, mixer, crystal filter and detector.',
    where: {},
    source: 'definition',
  },
  'blocks.own': ownOf,
  'blocks.before': (look) => ({
    says: 'All gains and losses from the antenna to this block.',
    formula: 'G_c',
    where: { G_c: beforeOf(look) },
    source: sum,
  }),
  'blocks.referred': {
    says: 'What is amplified before it distorts earlier.',
    formula: 'IP_row - G_b',
    where: { IP_row: 'row.own', G_b: 'row.before' },
    source: sum,
  },
  'blocks.share': {
    says: 'Its part of the product’s voltage.',
    formula: '10^((IP_in - IP_a) / 10)',
    where: { IP_in: 'strong.interceptInside', IP_a: 'row.referred' },
    source: cubic,
  },
  broadcaster: (look) =>
    look('strong.frequency') === null
      ? {
          says: 'The nearest place in a broadcasting band that is not the own channel.',
          formula: 'f_near',
          where: {
            f_near: {
              value: nearestBroadcast(look('plan.nominal') as number).place,
              unit: 'Hz',
              says: `in the ${nearestBroadcast(look('plan.nominal') as number).name} band`,
              source: 'ITU Radio Regulations, Article 5 (from memory)',
            },
          },
          source: 'ITU Radio Regulations, Article 5 (from memory)',
        }
      : typed('strong.frequency'),
  'blocked.block': {
    says: 'The blocks before the crystal filter that distort.',
    rule: 'Behind the filter the broadcaster is gone.',
    where: {},
    source: 'definition',
  },
  'blocked.taken': (look) => ({
    says: 'Output network, and the band-pass if it lies before the block.',
    formula: look('row.block') === 'third' ? 'A_n' : 'A_n + A_b',
    where: {
      A_n: takenAt(look, 'network', look('strong.broadcaster') as number),
      ...(look('row.block') === 'third'
        ? {}
        : { A_b: takenAt(look, 'bandPass', look('strong.broadcaster') as number) }),
    },
    source: 'chain of the ladders’ parts',
  }),
  'blocked.level': (look) => ({
    says: 'At the antenna, with the gain up to here, less what is taken off.',
    formula: 'L_bc + G_c - A_bef',
    where: { L_bc: 'strong.level', G_c: beforeOf(look), A_bef: 'row.taken' },
    source: sum,
  }),
  'blocked.limit': (look) => {
    const own = rowsOf(look).find(({ block }) => block === look('row.block')) as
      | (Row & { own: number })
      | undefined;
    return {
      says: 'A strong signal takes a decibel off a weak one so far below the intercept.',
      formula: 'IP_row - d_b',
      where: {
        IP_row: {
          value: own?.own ?? 0,
          unit: 'dBm',
          says: 'input intercept, from the table of blocks',
        },
        d_b: { value: BLOCKS_BELOW, unit: 'dB', says: '−10 log((1 − 10^(−1/20))/2)' },
      },
      source: cubic,
    };
  },
  'blocked.margin': {
    says: 'What is left to the limit.',
    formula: 'L_block - L_there',
    where: { L_block: 'row.limit', L_there: 'row.level' },
    source: sum,
  },
  'blocked.outcome': outcome('Holds from M_enough on, fails below zero.', 'row.margin'),
  blockMargin: (look) => {
    const where: Record<string, Bound> = {};
    (look('strong.blocked') as readonly { margin: number }[]).forEach(({ margin }, i) => {
      where[`M_${i + 1}`] = { value: margin, unit: 'dB', says: 'margin, from the table' };
    });
    const names = Object.keys(where);
    return {
      says: 'The least of them.',
      formula: names.length === 1 ? 'M_1' : `min(${names.join(', ')})`,
      where,
      source: 'definition',
    };
  },
  broadcasterMost: {
    says: 'Its strength, raised by the margin.',
    formula: 'L_bc + M_block',
    where: { L_bc: 'strong.level', M_block: 'strong.blockMargin' },
    source: sum,
  },
  stopbandUsed: (look) => {
    if (look('strong.stopband') !== null) return typed('strong.stopband');
    return look('filter.floor') === null
      ? {
          says: 'Nothing is known of leakage: as open boards have it.',
          formula: 'A_open',
          where: { A_open: { value: OPEN_BOARD, unit: 'dB', says: 'usual on an open board' } },
          source: 'common practice, no source',
        }
      : {
          says: 'The floor of the stopband that Filter found.',
          formula: 'A_floor',
          where: { A_floor: 'filter.floor' },
          source: 'definition',
        };
  },
  'ways.way': {
    says: 'How a station can be heard where it is not.',
    rule: 'By rectification in every receiver; on image and intermediate frequency where there is conversion.',
    where: {},
    source: 'arithmetic of a mixer',
  },
  'ways.frequency': (look) => {
    const from = { image: 'convert.image', intermediate: 'plan.filterFrequency' } as const;
    const way = look('row.way') as 'rectified' | 'image' | 'intermediate';
    return {
      says: 'Where such a station would have to be.',
      formula: 'f_x',
      where: { f_x: way === 'rectified' ? 'strong.broadcaster' : from[way] },
      source: 'arithmetic of a mixer',
    };
  },
  'ways.network': (look) => takenWorking(look, 'network'),
  'ways.bandPass': (look) => takenWorking(look, 'bandPass'),
  'ways.last': lastOf,
  'ways.heard': {
    says: 'Its strength, less all that is taken off.',
    formula: 'L_bc - A_wn - A_wb - A_wl',
    where: {
      L_bc: 'strong.level',
      A_wn: 'row.network',
      A_wb: 'row.bandPass',
      A_wl: 'row.last',
    },
    source: sum,
  },
  'ways.over': {
    says: 'Against all the noise.',
    formula: 'L_w - L_N',
    where: { L_w: 'row.heard', ...noise },
    source: sum,
  },
  'ways.outcome': outcome(
    'Holds where it lies M_enough below the noise, fails above it.',
    'row.over',
  ),
};
