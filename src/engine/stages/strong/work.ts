import { BLOCKS_BELOW, harmlessTone, thirdProduct } from '../../circuit/cubic.ts';
import { nearestBroadcast } from '../../data/broadcastBands.ts';
import { noResults, type Work } from '../../fields/stage.ts';
import { dbOfPowerRatio, powerRatioOfDb } from '../../quantity/decibel.ts';
import { dbmOfWatts } from '../../quantity/power.ts';
import { advice } from './advice.ts';
import { strongFields } from './fields.ts';
import type { StrongSeen } from './seen.ts';
import { bandOf, networkOf, takenBeyond } from './selectivity.ts';
import { outcomeOf, verdictOf } from './verdict.ts';

type Results = Work<typeof strongFields>['results'];
type Chain = NonNullable<StrongSeen['chain']>;

/** Intercept over oscillator or carrier where none is typed, dB. Common practice, no source. */
export const OVER_DRIVE = 6;

/** Far attenuation of a filter on an open board, dB. Common practice, no source. */
export const OPEN_BOARD = 70;

/** What strong stations do to the receiver. */
export function workStrong(seen: StrongSeen): Work<typeof strongFields> {
  const { chain, floor, bandNoise, amplifierIntercept } = seen;
  if (chain === null || floor === null || bandNoise === null || amplifierIntercept === null) {
    return { results: noResults(strongFields), problems: [] };
  }
  const noise = dbOfPowerRatio(powerRatioOfDb(floor) + powerRatioOfDb(bandNoise));
  const blocks = interceptsOf(seen, chain, amplifierIntercept);
  const last = blocks.findIndex(({ block }) => block === 'filter');
  const interceptOutside = together(blocks.slice(0, last + 1));
  const interceptInside = together(blocks);
  const product = thirdProduct(seen.pair, interceptOutside);
  const spared = seen.attenuator ?? 0;
  const noiseSpared = dbOfPowerRatio(powerRatioOfDb(floor) + powerRatioOfDb(bandNoise - spared));
  const broadcaster = seen.frequency ?? nearestBroadcast(seen.nominal).place;
  const taken = takenOf(seen);
  const blocked = blockedBy(seen, blocks.slice(0, last), taken(broadcaster));
  const blockMargin = Math.min(...blocked.map(({ margin }) => margin));
  const stopbandUsed = seen.stopband ?? seen.filterFloor ?? OPEN_BOARD;
  const ways = waysIn(seen, broadcaster, stopbandUsed, noise, taken);
  const results: Results = {
    ...noResults(strongFields),
    interceptOutside,
    interceptInside,
    free: (2 / 3) * (interceptOutside - floor),
    freeBand: (2 / 3) * (interceptOutside - noise),
    harmless: harmlessTone(interceptOutside, noise),
    product,
    productOver: product - noise,
    productSpared: thirdProduct(seen.pair - spared, interceptOutside) - noiseSpared,
    blocks: blocks.map((row) => ({
      ...row,
      share: powerRatioOfDb(interceptInside - row.referred),
    })),
    broadcaster,
    blocked,
    blockMargin,
    broadcasterMost: seen.level + blockMargin,
    stopbandUsed,
    ways,
  };
  const { verdict, worst } = verdictOf(results);
  return {
    results: { ...results, verdict, worst },
    problems: advice(seen, results),
    origins: {
      broadcaster: seen.frequency === null ? 'typical' : 'typed',
      stopbandUsed:
        seen.stopband !== null ? 'typed' : seen.filterFloor !== null ? 'worked' : 'typical',
    },
  };
}

/** Blocks that bend, each with its input intercept there and at the antenna, dBm. */
function interceptsOf(seen: StrongSeen, chain: Chain, amplifier: number) {
  const own = ({ block, gain }: Chain[number]): number | null => {
    switch (block) {
      case 'third':
      case 'first':
      case 'second':
        return amplifier - (gain ?? 0);
      case 'mixer':
        return seen.mixerIntercept ?? seen.oscillatorLevel + OVER_DRIVE;
      case 'filter':
        return seen.filterIntercept;
      case 'detector':
        return seen.detectorIntercept ?? dbmOfWatts(seen.carrierDrive) + OVER_DRIVE;
      default:
        return null;
    }
  };
  return chain.flatMap((row) => {
    const intercept = own(row);
    if (intercept === null) return [];
    const before = row.before ?? 0;
    return [{ block: row.block, own: intercept, before, referred: intercept - before }];
  });
}

/** Products in step: the reciprocals of the powers add. */
const together = (blocks: readonly { readonly referred: number }[]): number =>
  -dbOfPowerRatio(blocks.reduce((sum, { referred }) => sum + powerRatioOfDb(-referred), 0));

interface Taken {
  readonly network: number;
  readonly bandPass: number;
}

/** What output network and band-pass take off a frequency beyond the signal's loss, dB. */
function takenOf(seen: StrongSeen): (frequency: number) => Taken {
  const { nominal } = seen;
  const network = networkOf(seen);
  const band = bandOf(seen);
  return (frequency) => ({
    network: takenBeyond(network, frequency, nominal),
    bandPass: takenBeyond(band, frequency, nominal),
  });
}

function blockedBy(
  seen: StrongSeen,
  blocks: ReturnType<typeof interceptsOf>,
  { network, bandPass }: Taken,
) {
  return blocks.map(({ block, own, before }) => {
    const taken = network + (block === 'third' ? 0 : bandPass);
    const level = seen.level + before - taken;
    const limit = own - BLOCKS_BELOW;
    const margin = limit - level;
    return { block, taken, level, limit, margin, outcome: outcomeOf(margin) };
  });
}

/** How a station of the broadcaster's strength comes in beside the filter. */
function waysIn(
  seen: StrongSeen,
  broadcaster: number,
  stopband: number,
  noise: number,
  taken: (frequency: number) => Taken,
): NonNullable<Results['ways']> {
  const row = (
    way: 'rectified' | 'image' | 'intermediate',
    frequency: number,
    last: number,
  ): NonNullable<Results['ways']>[number] => {
    const { network, bandPass } = taken(frequency);
    const heard = seen.level - network - bandPass - last;
    const over = heard - noise;
    return { way, frequency, network, bandPass, last, heard, over, outcome: outcomeOf(-over) };
  };
  const rows = [row('rectified', broadcaster, stopband + seen.balance)];
  if (seen.scheme !== 'conversion') return rows;
  if (seen.image !== null) rows.push(row('image', seen.image, 0));
  if (seen.filterFrequency !== null) {
    rows.push(row('intermediate', seen.filterFrequency, seen.signalIsolation - seen.mixerLoss));
  }
  return rows;
}
