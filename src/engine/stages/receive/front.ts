import { type Block, type Cascade, friis } from '../../circuit/friis.ts';
import { dbOfPowerRatio, powerRatioOfDb } from '../../quantity/decibel.ts';
import { thermalNoise } from './noise.ts';
import { S9 } from './sReports.ts';

/** Gains and noise figures of the blocks, dB. */
export interface FrontAsked {
  readonly network: number;
  readonly frontLoss: number;
  readonly amplifierGain: number;
  readonly amplifierNoise: number;
  readonly filterLoss: number;
  readonly detectorLoss: number;
  readonly preampGain: number;
  readonly preampNoise: number;
  /** Hz */
  readonly noiseBandwidth: number;
}

/** Place of the amplifier behind the filter, whose noise comes in on both sides of the carrier. */
export const BOTH_SIDES = 4;

/** The receiver's blocks from antenna to audio preamplifier, as rows of the chain. */
export function front(asked: FrontAsked) {
  const loss = (db: number) => [-db, db] as const;
  const amplifier = [asked.amplifierGain, asked.amplifierNoise] as const;
  const rows: [string, number, number][] = [
    ['Output network', ...loss(asked.network)],
    ['Changeover and preselector', ...loss(asked.frontLoss)],
    ['First amplifier', ...amplifier],
    ['Crystal filter', ...loss(asked.filterLoss)],
    ['Second amplifier', ...amplifier],
    ['Product detector', ...loss(asked.detectorLoss)],
    ['Audio preamplifier', asked.preampGain, asked.preampNoise],
  ];
  const blocks: Block[] = rows.map(([, gain, noise], i) => ({
    gain: powerRatioOfDb(gain),
    noiseFactor: powerRatioOfDb(noise),
    bothSides: i === BOTH_SIDES,
  }));
  const cascade: Cascade = friis(blocks);
  const noiseFigure = dbOfPowerRatio(cascade.noiseFactor);
  let before = 0;
  const chain = rows.map(([block, gain, noise], i) => {
    const row = {
      block,
      gain,
      noise,
      before,
      share: (cascade.added[i] ?? 0) / cascade.noiseFactor,
      level: S9 + before + gain,
    };
    before += gain;
    return row;
  });
  const floor = thermalNoise(asked.noiseBandwidth) + noiseFigure;
  return { chain, noiseFigure, floor, frontGain: before - asked.preampGain };
}
