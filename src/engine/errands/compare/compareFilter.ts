import { couplings } from '../../circuit/couplings.ts';
import { envelopeStep } from '../../circuit/envelopeStep.ts';
import { stepFigures } from '../../circuit/stepFigures.ts';
import type { CarrierSeen } from '../../stages/carrier/seen.ts';
import type { Variant } from '../../stages/compare/variants.ts';
import type { FilterSeen } from '../../stages/filter/seen.ts';
import type { Compared } from './compareAnswer.ts';
import { designVariant } from './designVariant.ts';

type Parts = readonly { readonly fitted: number | null; readonly parts: string | null }[];

/**
 * Designs one filter as the Filter sheet does, puts the carrier on it as the Carrier sheet does,
 * and gathers what is worth comparing.
 *
 * @param filter what the Filter sheet sees of the present rig
 * @param carrier what the Carrier sheet sees of it
 */
export function compareFilter(
  variant: Variant,
  filter: FilterSeen,
  carrier: CarrierSeen,
): Compared {
  const { results, says, heard } = designVariant(variant, filter, carrier);
  const { ladder, loss, low3, high3, response, width3, centre } = results;
  if (!ladder || !response || loss === null || low3 === null || high3 === null) {
    return { variant, says, found: null };
  }
  const step = envelopeStep(ladder, centre ?? (low3 + high3) / 2, width3 ?? high3 - low3);
  const read = stepFigures(step);
  const parts: Parts = [...(results.couplings ?? []), ...(results.meshes ?? [])];
  const fitted = parts.filter((one) => (one.fitted ?? 0) > 0);
  const audio = heard?.audio ?? null;
  return {
    variant,
    says,
    found: {
      response: {
        frequency: response.frequency,
        gain: response.gain.map((gain) => gain + loss),
        delay: response.delay,
      },
      step,
      voice: audio && {
        tone: audio.tone,
        wanted: below(audio.wanted, loss),
        opposite: below(audio.opposite, loss),
      },
      figures: {
        width3,
        width6: results.width6,
        width60: results.width60,
        shape: results.shape,
        loss,
        ripple: results.rippleFound,
        delayVariation: results.delayVariation,
        ends: results.ends,
        rise: read.rise,
        overshoot: read.overshoot,
        settled: read.settled,
        carrier: heard?.frequency ?? null,
        carrierDown: heard?.attenuation ?? null,
        audioLow6: heard?.audioLow6 ?? null,
        audioHigh6: heard?.audioHigh6 ?? null,
        suppression300: heard?.suppression300 ?? null,
        suppression1k: heard?.suppression1k ?? null,
        suppressionWorst: heard?.suppressionWorst ?? null,
        crystals: crystalsOf(variant),
        capacitors: fitted.reduce(
          (sum, { parts: said }) => sum + (said ?? '').split('+').length,
          0,
        ),
        values: new Set(fitted.flatMap(({ parts: said }) => (said ?? '').split(' + '))).size,
      },
    },
  };
}

/** Crystals to buy: some families have two side by side. */
const crystalsOf = ({ family, crystals, ripple }: Variant): number =>
  couplings(family, crystals, ripple).parallel?.reduce((sum, one) => sum + one, 0) ?? crystals;

const below = (gain: Float64Array, loss: number) => gain.map((one) => one + loss);
