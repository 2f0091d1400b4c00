import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { isBehindFilter, type Place } from './chainPlaces.ts';
import { MODULATOR_MARGIN } from './chainRows.ts';
import type { transmitFields } from './fields.ts';
import { gainAt, gainsFrom, milliwatt, placesSeen, volumeUp } from './levelWorkings.ts';
import { portSteps } from './portSteps.ts';

type ChainKey = Extract<keyof StageWorkings<typeof transmitFields>, `chain.${string}`>;

export const chainWorkings: Pick<StageWorkings<typeof transmitFields>, ChainKey> = {
  'chain.point': {
    says: 'The places of the chain in the signal’s order.',
    rule: 'A fixed list.',
    where: {},
    source: 'definition',
  },
  'chain.level': {
    says: 'The level at the antenna, less all gain from here on.',
    formula: 'L_PEP + D_over - G_on',
    where: { L_PEP: 'plan.pepLevel', D_over: 'transmit.over', G_on: 'row.toAntenna' },
    source: 'sum of decibels',
    assumes: 'Nothing flattens on the way: see the headroom.',
  },
  'chain.vpp': {
    says: 'A sine of power P in R swings √2 times its rms value each way.',
    formula: 'sqrt(8 * P_ref * 10^(L_row / 10) * R_load)',
    where: { P_ref: milliwatt, L_row: 'row.level', R_load: 'row.load' },
    source: 'closed form: P = Vpp²/(8R)',
  },
  'chain.vrms': {
    says: 'The rms voltage of that power in this load.',
    formula: 'sqrt(P_ref * 10^(L_row / 10) * R_load)',
    where: { P_ref: milliwatt, L_row: 'row.level', R_load: 'row.load' },
    source: 'closed form: P = V²/R',
  },
  'chain.load': (look, index) => {
    const [symbol, path] = loads[placeAt(look, index)];
    return {
      says: 'What the signal meets here.',
      formula: symbol,
      where: { [symbol]: path },
      source: 'as designed',
    };
  },
  'chain.source': (look, index) => sourceOf(placeAt(look, index)),
  'chain.gain': (look, index) => gainOf(look, index),
  'chain.toAntenna': (look, index) => onwardOf(look, index),
  'chain.clip': (look, index) => clipOf(placeAt(look, index)),
  'chain.headroom': {
    says: 'From the level here to the level at which it begins to flatten.',
    formula: 'L_clip - L_row',
    where: { L_clip: 'row.clip', L_row: 'row.level' },
    source: 'sum of decibels',
  },
  'chain.forward': (look, index) => forwardOf(look, index),
  'chain.forwardVpp': {
    says: 'A sine of power P in R swings √2 times its rms value each way.',
    formula: 'sqrt(8 * P_ref * 10^(L_fwd / 10) * R_load)',
    where: { P_ref: milliwatt, L_fwd: 'row.forward', R_load: 'row.load' },
    source: 'closed form: P = Vpp²/(8R)',
  },
  'chain.carrier': (look, index) => {
    const behind = isBehindFilter(placeAt(look, index));
    return {
      says: behind
        ? 'Below the sideband by the null, and by the filter’s skirt.'
        : 'Below the sideband by the null.',
      formula: behind ? 'L_row - A_null - A_fil' : 'L_row - A_null',
      where: {
        L_row: 'row.level',
        A_null: 'transmit.modulatorNull',
        ...(behind ? { A_fil: 'carrier.attenuation' } : {}),
      },
      source: 'sum of decibels',
      assumes: 'Nothing leaks round filter and modulator.',
    };
  },
  'chain.opposite': (look, index) =>
    oppositeOf(placeAt(look, index), 'A_1k', 'carrier.suppression1k'),
  'chain.oppositeWorst': (look, index) =>
    oppositeOf(placeAt(look, index), 'A_opp', 'carrier.suppressionWorst'),
  'chain.limit': {
    says: 'What runs out first at this point.',
    rule: 'Of current and voltage the one that gives the lower power; for the modulator its carrier, for the filter what crystals bear.',
    where: {},
    source: 'common practice, no source',
  },
};

/** Which place a row of the table is. */
const placeAt = (look: Look, index: number): Place => placesSeen(look)[index] ?? 'mic';

function oppositeOf(place: Place, symbol: string, path: string): Working {
  const behind = isBehindFilter(place);
  return {
    says: behind
      ? 'What the filter leaves of it beside the wanted one.'
      : 'A modulator makes both alike.',
    formula: behind ? `L_row - ${symbol}` : 'L_row',
    where: { L_row: 'row.level', ...(behind ? { [symbol]: path } : {}) },
    source: 'sum of decibels',
  };
}

interface ChainRow {
  readonly gain: number | null;
  readonly clip: number | null;
  readonly forward: number | null;
}

/** What the row before gives, through the gain between; never more than the limit here. */
function forwardOf(look: Look, index: number): Working {
  const rows = look('transmit.chain') as readonly ChainRow[];
  const source = 'sum of decibels';
  if (index === 0) {
    return {
      says: 'What the microphone gives.',
      formula: 'L_row',
      where: { L_row: 'row.level' },
      source,
    };
  }
  const last = rows[index - 1];
  const up = placeAt(look, index) === 'audio';
  const sum = up ? 'L_bef + G_bef + D_up' : 'L_bef + G_bef';
  const limited = (rows[index]?.clip ?? null) !== null;
  return {
    says: limited
      ? 'The level as built of the row before and the gain between, but no more than the limit here.'
      : 'The level as built of the row before and the gain between.',
    formula: limited ? `min(${sum}, L_clip)` : sum,
    where: {
      L_bef: { value: last?.forward ?? 0, unit: 'dBm', says: 'level as built, row before' },
      G_bef: { value: last?.gain ?? 0, unit: 'dB', says: 'gain to the next row, row before' },
      ...(up ? volumeUp(look) : {}),
      ...(limited ? { L_clip: 'row.clip' } : {}),
    },
    source,
    assumes: 'A stage gives all it is asked for up to its limit, and then no more.',
  };
}

const loads: Readonly<Record<Place, readonly [string, string]>> = {
  mic: ['R_mic', 'transmit.micLoad'],
  micOut: ['R_in_fol', 'transmit.followerInput'],
  audio: ['R_mod', 'transmit.modulatorImpedance'],
  modulator: ['R_mod', 'transmit.modulatorImpedance'],
  firstIn: ['R_in', 'transmit.amplifierInput'],
  firstOut: ['R_L', 'transmit.amplifierLoad'],
  filterIn: ['R_end', 'filter.ends'],
  filterOut: ['R_end_L', 'filter.endsLoad'],
  secondIn: ['R_in', 'transmit.amplifierInput'],
  secondOut: ['R_L', 'transmit.amplifierLoad'],
  mixerIn: ['R_e', 'front.end'],
  mixerOut: ['R_e', 'front.end'],
  frontOut: ['R_e', 'front.end'],
  thirdIn: ['R_in3', 'transmit.thirdInput'],
  thirdOut: ['R_L', 'transmit.amplifierLoad'],
  driverIn: ['R_in_drv', 'transmit.driverInput'],
  driverOut: ['R_L_drv', 'transmit.driverLoad'],
  base: ['R_base', 'transmit.finalInput'],
  collector: ['R_c', 'transmit.collectorLoad'],
  antenna: ['R_ant', 'plan.antenna'],
};

/** The microphone amplifier's power gain: its voltage gain, and the change of resistance. */
const micPower: Readonly<Record<string, Bound>> = {
  R_mic: 'transmit.micLoad',
  R_mod: 'transmit.modulatorImpedance',
  A_mic: 'transmit.micGain',
  D_over: 'transmit.over',
  A_use: { formula: 'A_mic + D_over', unit: 'dB', says: 'microphone gain in use' },
};

/** That of the first transistor into the follower. */
const micFirst = (look: Look): Record<string, Bound> => ({
  R_mic: 'transmit.micLoad',
  R_in_fol: 'transmit.followerInput',
  ...portSteps(look, 'mic', 0, ['in', 'out']),
  G_1: {
    formula: '10 * log10((x_out^2 + y_out^2) / (x_in^2 + y_in^2) * R_mic / R_in_fol)',
    unit: 'dB',
    says: 'power gain of the first transistor',
  },
});

const MIC_POWER = 'A_use + 10 * log10(R_mic / R_mod)';

function gainOf(look: Look, index: number): Working {
  const source = 'sum of decibels';
  if (index === 0) {
    return {
      says: 'Voltage gain of the first transistor, and as a power gain also the ratio of the two resistances.',
      formula: 'G_1',
      where: micFirst(look),
      source: 'nodal analysis of the hybrid-pi model at 1 kHz',
    };
  }
  if (index === 1) {
    return {
      says: 'The whole amplifier’s gain in use less that of its first transistor: volume control and follower.',
      formula: `${MIC_POWER} - G_1`,
      where: { ...micPower, ...micFirst(look) },
      source,
    };
  }
  const { formula, where } = gainAt(placeAt(look, index));
  return {
    says:
      formula === '0'
        ? 'A transformer changes volts and amperes, not the power.'
        : 'What lies between this row and the next.',
    formula,
    where,
    source,
  };
}

function onwardOf(look: Look, index: number): Working {
  const says = 'All gains and losses from here to the antenna.';
  const source = 'sum of decibels';
  const place = placeAt(look, index);
  if (index > 1) return { says, ...gainsFrom(look, place), source };
  const { formula, where } = gainsFrom(look, 'audio');
  return {
    says,
    formula: `${MIC_POWER}${index === 1 ? ' - G_1' : ''} + (${formula})`,
    where: { ...where, ...micPower, ...(index === 1 ? micFirst(look) : {}) },
    source,
  };
}

function clipOf(place: Place): Working {
  const forms: Readonly<Partial<Record<Place, readonly [string, string, Record<string, Bound>]>>> =
    {
      micOut: [
        'The most that the first transistor can give.',
        'L_mic',
        { L_mic: 'transmit.micClip' },
      ],
      audio: ['The most that the follower can give.', 'L_fol', { L_fol: 'transmit.followerClip' }],
      modulator: [
        'Audio some decibels below its carrier begins to switch the diodes itself.',
        '10 * log10(P_LO / P_ref) - D_mod - L_mod',
        {
          P_LO: 'transmit.carrierDrive',
          P_ref: milliwatt,
          D_mod: { value: MODULATOR_MARGIN, unit: 'dB', says: 'common practice, no source' },
          L_mod: 'transmit.modulatorLoss',
        },
      ],
      firstOut: [
        'The most that the amplifier can give.',
        'L_amp',
        { L_amp: 'transmit.amplifierClip' },
      ],
      filterIn: [
        'The power that the crystals bear.',
        '10 * log10(P_xtal / P_ref)',
        { P_xtal: 'transmit.filterDrive', P_ref: milliwatt },
      ],
      secondOut: [
        'The most that the amplifier can give.',
        'L_amp',
        { L_amp: 'transmit.amplifierClip' },
      ],
      mixerIn: [
        'Signal some decibels below the oscillator begins to switch the diodes itself.',
        'L_o - D_mod',
        {
          L_o: 'convert.oscillatorLevel',
          D_mod: { value: MODULATOR_MARGIN, unit: 'dB', says: 'common practice, no source' },
        },
      ],
      thirdOut: [
        'The most that the amplifier can give.',
        'L_third',
        { L_third: 'transmit.thirdClip' },
      ],
      driverOut: ['The most that the driver can give.', 'L_drv', { L_drv: 'transmit.driverClip' }],
      collector: [
        'The collector uses the whole supply at full power: that is how its load is chosen.',
        'L_PEP + L_net',
        { L_PEP: 'plan.pepLevel', L_net: 'transmit.network' },
      ],
    };
  const [says, formula, where] = forms[place] ?? ['', '0', {}];
  return { says, formula, where, source: 'load line; common practice, no source' };
}

function sourceOf(place: Place): Working {
  const source = 'nodal analysis of the hybrid-pi model';
  const plain = (symbol: string, path: string, says: string): Working => ({
    says,
    formula: symbol,
    where: { [symbol]: path },
    source,
  });
  switch (place) {
    case 'micOut':
      return plain('R_s_fol', 'transmit.followerSource', 'The first transistor’s output.');
    case 'audio':
      return plain('R_out_fol', 'transmit.followerOutput', 'The follower’s output.');
    case 'modulator':
    case 'firstIn':
      return plain(
        'R_mod',
        'transmit.modulatorImpedance',
        'The modulator, and the pad made for it.',
      );
    case 'firstOut':
      return plain('R_out', 'transmit.amplifierOutput', 'The first amplifier’s output.');
    case 'filterIn':
      return plain('R_fs', 'transmit.filterSource', 'The first amplifier through its transformer.');
    case 'filterOut':
      return plain('R_end_L', 'filter.endsLoad', 'The filter, designed for this resistance.');
    case 'secondIn':
      return plain(
        'R_in',
        'transmit.amplifierInput',
        'The filter through its transformer, which is wound to match.',
      );
    case 'secondOut':
      return plain(
        'R_out2',
        'transmit.secondOutput',
        'The second amplifier’s output, driven from its matching source.',
      );
    case 'mixerIn':
      return {
        says: 'The second amplifier’s output through the transformer that makes of the mixer its load.',
        formula: 'R_out2 * R_e / R_L',
        where: {
          R_out2: 'transmit.secondOutput',
          R_e: 'front.end',
          R_L: 'transmit.amplifierLoad',
        },
        source: 'ideal transformer',
      };
    case 'mixerOut':
    case 'frontOut':
      return plain('R_e', 'front.end', 'Mixer and band-pass are made for this resistance.');
    case 'thirdIn':
      return plain(
        'R_in3',
        'transmit.thirdInput',
        'The band-pass through its transformer, which is wound to match.',
      );
    case 'thirdOut':
      return plain('R_out3', 'transmit.thirdOutput', 'The third amplifier’s output.');
    case 'driverIn':
      return plain('R_s_drv', 'transmit.driverSource', 'What stands before it, transformed.');
    case 'driverOut':
      return {
        says: 'The driver’s output, seen from the collector’s side of its transformer.',
        formula: 'R_out_drv * R_L_drv / R_base',
        where: {
          R_out_drv: 'transmit.driverOutput',
          R_L_drv: 'transmit.driverLoad',
          R_base: 'transmit.finalInput',
        },
        source,
      };
    case 'base':
      return plain('R_out_drv', 'transmit.driverOutput', 'The driver through its transformer.');
    default:
      return plain('R_o', 'transmit.outputImpedance', 'The final’s own output resistance.');
  }
}
