import type { Unit } from '../quantity/units.ts';
import { hearsGalaxy, type NoiseClassKey, noiseClasses } from './noiseClasses.ts';

/** Noise from outside as a formula of the frequency `f_0`, with the storms as `F_at` where there are any. */
export interface NoiseFormula {
  readonly says: string;
  readonly formula: string;
  readonly where: Readonly<
    Record<string, { readonly value: number; readonly unit: Unit; readonly says: string }>
  >;
  readonly source: string;
}

const line = (c: string, d: string) => `${c} - ${d} * log10(f_0 / f_M)`;

/**
 * The formula by which the noise from outside comes about at a place.
 *
 * @param storms whether thunderstorm noise is given
 * @param frequency Hz: the galaxy is heard from some frequency on
 */
export function noiseFormula(
  place: NoiseClassKey,
  storms: boolean,
  frequency: number,
): NoiseFormula {
  const { c, d, name, source } = noiseClasses[place] ?? noiseClasses.residential;
  const galaxy = hearsGalaxy(place, frequency);
  const own = line('c_F', 'd_F');
  const terms = [
    `10^((${own}) / 10)`,
    ...(galaxy ? [`10^((${line('c_G', 'd_G')}) / 10)`] : []),
    ...(storms ? ['10^(F_at / 10)'] : []),
  ];
  const beside = [...(galaxy ? ['the galaxy'] : []), ...(storms ? ['thunderstorms'] : [])];
  const { c: cG, d: dG } = noiseClasses.galactic;
  return {
    says: `A straight line against the logarithm of the frequency, one for each kind of place${
      beside.length === 0 ? '' : `; the noise of ${beside.join(' and ')} adds as a power`
    }.`,
    formula: terms.length === 1 ? own : `10 * log10(${terms.join(' + ')})`,
    where: {
      c_F: { value: c, unit: 'dB', says: `at 1 MHz: ${name}` },
      d_F: { value: d, unit: 'dB', says: 'fall for each tenfold frequency' },
      f_M: { value: 1e6, unit: 'Hz', says: 'one megahertz' },
      ...(galaxy
        ? {
            c_G: { value: cG, unit: 'dB', says: 'the galaxy, at 1 MHz' },
            d_G: { value: dG, unit: 'dB', says: 'its fall for each tenfold frequency' },
          }
        : {}),
    },
    source,
  };
}
