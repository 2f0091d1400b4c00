import type { StageWorkings } from '../../fields/workings.ts';
import { constants } from './constants.ts';
import { exposureLimits } from './exposure.ts';
import type { pathFields } from './fields.ts';

const { megahertz, thirty } = constants;
const distance = {
  says: 'The free-space field √(30·EIRP)/r falls to the limit here.',
  source: 'E = √(30 EIRP)/R (closed form)',
  assumes: 'Far field, no ground, the antenna’s strongest direction.',
} as const;

/** Workings of the exposure figures. */
export const exposureWorkings = {
  meanEirp: (look) => ({
    says: 'What is radiated in the antenna’s strongest direction, times the mean over peak while people are near.',
    formula: `P * 10^((${look('antenna.best') === null ? 'G_h' : 'max(G_max, G_h)'} - A_t) / 10) * delta`,
    where: {
      P: look('output.pepAntenna') === null ? 'plan.pep' : 'output.pepAntenna',
      G_h: 'path.gainHere',
      ...(look('antenna.best') === null ? {} : { G_max: 'antenna.best' }),
      A_t: 'path.lineHere',
      delta: 'path.duty',
    },
    source: 'averaging of 47 CFR 1.1310 and ICNIRP 2020',
  }),
  publicLimit: {
    says: 'The limit falls with frequency.',
    formula: 'E_1 / (f_0 / f_ref)',
    where: {
      E_1: { value: 824, unit: 'V/m', says: 'limit at 1 MHz on this line' },
      f_0: 'plan.nominal',
      f_ref: megahertz,
    },
    source: exposureLimits.public.source,
  },
  occupationalLimit: {
    says: 'The limit is flat to 3 MHz and then falls with frequency.',
    formula: 'min(E_max, E_1 / (f_0 / f_ref))',
    where: {
      E_max: { value: 614, unit: 'V/m', says: 'limit below 3 MHz' },
      E_1: { value: 1842, unit: 'V/m', says: 'limit at 1 MHz on this line' },
      f_0: 'plan.nominal',
      f_ref: megahertz,
    },
    source: exposureLimits.occupational.source,
  },
  icnirpLimit: {
    says: 'The limit falls with the 0.7th power of frequency.',
    formula: 'E_1 / (f_0 / f_ref)^0.7',
    where: {
      E_1: { value: 300, unit: 'V/m', says: 'limit at 1 MHz on this line' },
      f_0: 'plan.nominal',
      f_ref: megahertz,
    },
    source: exposureLimits.icnirp.source,
  },
  publicDistance: {
    ...distance,
    formula: 'sqrt(Z_30 * P_m) / E_pub',
    where: { Z_30: thirty, P_m: 'path.meanEirp', E_pub: 'path.publicLimit' },
  },
  occupationalDistance: {
    ...distance,
    formula: 'sqrt(Z_30 * P_m) / E_occ',
    where: { Z_30: thirty, P_m: 'path.meanEirp', E_occ: 'path.occupationalLimit' },
  },
  icnirpDistance: {
    ...distance,
    formula: 'sqrt(Z_30 * P_m) / E_icn',
    where: { Z_30: thirty, P_m: 'path.meanEirp', E_icn: 'path.icnirpLimit' },
  },
  keepAway: {
    says: 'The larger of the two distances for the public; ground can strengthen the field.',
    formula: 'ceil(k_g * max(r_pub, r_icn) / r_step) * r_step',
    where: {
      r_step: { value: 0.1, unit: 'm', says: 'rounded up to the next decimetre' },
      k_g: {
        value: 1.6,
        unit: '1',
        says: 'field enhancement over ground',
        source: 'FCC OET Bulletin 65 (from memory)',
      },
      r_pub: 'path.publicDistance',
      r_icn: 'path.icnirpDistance',
    },
    source: 'FCC OET Bulletin 65 (from memory)',
    assumes: 'A planning figure that does not hold in the near field.',
  },
  nearField: {
    says: 'Stored and radiated field are alike at a wavelength over 2π.',
    formula: 'c / (2 * pi * f_0)',
    where: { c: constants.light, f_0: 'plan.nominal' },
    source: 'closed form for a short dipole',
  },
  exposureAdvice: {
    says: 'Whether the distance can be trusted.',
    rule: 'A distance inside the near field is said to be no clearance.',
    where: { r_keep: 'path.keepAway', r_near: 'path.nearField' },
    source: 'common practice',
  },
} satisfies Partial<StageWorkings<typeof pathFields>>;
