import { type Block, type Cascade, friis } from '../../circuit/friis.ts';
import { dbOfPowerRatio, powerRatioOfDb } from '../../quantity/decibel.ts';
import { type BlockKey, blocksOf, type FrontForm } from './blocks.ts';
import { thermalNoise } from './noise.ts';
import { S9 } from './sReports.ts';

/** Gains and noise figures of the blocks, dB. Those of a conversion count only in such a rig. */
export interface FrontAsked extends FrontForm {
  readonly network: number;
  readonly frontLoss: number;
  readonly bandLoss: number;
  readonly mixerLoss: number;
  readonly thirdGain: number | null;
  readonly amplifierGain: number;
  readonly amplifierNoise: number;
  readonly filterLoss: number;
  readonly detectorLoss: number;
  readonly preampGain: number;
  readonly preampNoise: number;
  /** Hz */
  readonly noiseBandwidth: number;
}

/** The receiver's blocks from antenna to audio preamplifier, as rows of the chain. */
export function front(asked: FrontAsked) {
  const rows = blocksOf(asked).map((block) => ({ block, ...figuresOf(asked, block) }));
  const blocks: Block[] = rows.map(({ block, gain, noise }) => ({
    gain: powerRatioOfDb(gain),
    noiseFactor: powerRatioOfDb(noise),
    // Behind the filter an amplifier's noise comes in on both sides of the carrier.
    bothSides: block === 'second',
  }));
  const cascade: Cascade = friis(blocks);
  const noiseFigure = dbOfPowerRatio(cascade.noiseFactor);
  let before = 0;
  const chain = rows.map(({ block, gain, noise }, i) => {
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

/** Gain and noise figure of one block, dB; a passive one's noise figure is its loss. */
function figuresOf(asked: FrontAsked, block: BlockKey): { gain: number; noise: number } {
  const loss = (db: number) => ({ gain: -db, noise: db });
  switch (block) {
    case 'network':
      return loss(asked.network);
    case 'front':
      return loss(asked.frontLoss);
    case 'third':
      return { gain: asked.thirdGain ?? 0, noise: asked.amplifierNoise };
    case 'bandPass':
      return loss(asked.bandLoss);
    case 'mixer':
      return loss(asked.mixerLoss);
    case 'filter':
      return loss(asked.filterLoss);
    case 'detector':
      return loss(asked.detectorLoss);
    case 'preamp':
      return { gain: asked.preampGain, noise: asked.preampNoise };
    default:
      return { gain: asked.amplifierGain, noise: asked.amplifierNoise };
  }
}
