import type { Look, StageWorkings, Working } from '../../fields/workings.ts';
import { constants } from './constants.ts';
import { E_HEIGHT, E_NIGHT } from './eLayer.ts';
import type { pathFields } from './fields.ts';
import { declinations, type Season } from './sun.ts';
import { typicalCriticals } from './typicalCritical.ts';

const geometry = 'closed form: straight rays, spherical Earth, mirror at the virtual height';
const absorptionSource = 'CCIR Report 252-2 (second-hand)';
const { earth } = constants;

/** Workings of the way by the F2 layer. */
export const skyWorkings = {
  mirror: (look) =>
    look('path.layer') === 'e'
      ? {
          says: 'The E layer’s.',
          formula: 'h_E',
          where: {
            h_E: {
              value: E_HEIGHT,
              unit: 'm',
              says: 'height of the E layer',
              source: 'ITU-R P.533',
            },
          },
          source: 'ITU-R P.533',
        }
      : {
          says: 'As given.',
          formula: 'h_v',
          where: { h_v: 'path.layerHeight' },
          source: 'as typed',
        },
  hopCount: (look) =>
    look('path.hops') === null
      ? {
          says: 'As few hops as the lowest useful elevation allows.',
          formula: 'max(1, ceil(D / d_max))',
          where: { D: 'path.distance', d_max: 'path.usableHop' },
          source: geometry,
        }
      : { says: 'As given.', formula: 'n', where: { n: 'path.hops' }, source: 'as typed' },
  hopDistance: {
    says: 'Equal hops.',
    formula: 'D / n',
    where: { D: 'path.distance', n: 'path.hopCount' },
    source: geometry,
  },
  longestHop: {
    says: 'A ray along the horizon touches the layer where the Earth’s curve allows it.',
    formula: '2 * R_E * acos(R_E / (R_E + h_v))',
    where: { R_E: earth, h_v: 'path.mirror' },
    source: geometry,
  },
  usableHop: {
    says: 'The ray at the lowest useful elevation: the angle at the Earth’s centre is what elevation and incidence leave of a right angle.',
    formula: '2 * R_E * (pi / 2 - beta_min - i_v)',
    where: {
      R_E: earth,
      h_v: 'path.mirror',
      beta_min: 'path.lowest',
      i_v: {
        formula: 'asin(R_E * cos(beta_min) / (R_E + h_v))',
        unit: '°',
        says: 'angle of incidence at the layer',
      },
    },
    source: geometry,
  },
  elevation: {
    says: 'The middle of the hop stands over the horizon by this angle.',
    formula: 'atan(((R_E + h_v) * cos(theta) - R_E) / ((R_E + h_v) * sin(theta)))',
    where: {
      R_E: earth,
      h_v: 'path.mirror',
      d: 'path.hopDistance',
      theta: { formula: 'd / (2 * R_E)', unit: '°', says: 'half the angle at the Earth’s centre' },
    },
    source: geometry,
  },
  secant: {
    says: 'By the law of sines the ray meets the layer at sin i = R cos β / (R + h).',
    formula: '1 / sqrt(1 - (R_E * cos(beta) / (R_E + h_v))^2)',
    where: { R_E: earth, h_v: 'path.mirror', beta: 'path.elevation' },
    source: geometry,
  },
  zenith: (look) => ({
    says: 'Where the sun stands at this latitude, season and hour.',
    formula: 'acos(max(-1, min(1, sin(phi) * sin(delta) + cos(phi) * cos(delta) * cos(H))))',
    where: {
      phi: 'path.latitude',
      delta: {
        value: declinations[look('path.season') as Season],
        unit: '°',
        says: 'declination of the sun in mid-season',
      },
      t: 'path.hour',
      t_noon: constants.noon,
      t_day: constants.day,
      H: { formula: '(t - t_noon) / t_day * 2 * pi', unit: '°', says: 'hour angle' },
    },
    source: 'closed form of spherical trigonometry',
  }),
  dayShare: {
    says: 'Half at sunrise and sunset, rising and falling in a straight line with the sun’s height.',
    formula: 'min(1, max(0, 0.5 + 2.5 * cos(chi)))',
    where: { chi: 'path.zenith' },
    source: 'common practice, no source',
    assumes: 'Only for the typical critical frequency.',
  },
  critical,
  muf: {
    says: 'At a slant the layer returns sec i times what it returns straight down.',
    formula: 'f_c * M',
    where: { f_c: 'path.critical', M: 'path.secant' },
    source: 'secant law (Martyn’s theorem)',
    assumes: 'A thin layer at the virtual height.',
  },
  mufShare: {
    says: 'How near the limit the frequency lies.',
    formula: 'f_0 / f_MUF',
    where: { f_0: 'plan.nominal', f_MUF: 'path.muf' },
    source: 'definition',
  },
  opening: {
    says: 'Below 85 % of the highest frequency returned the path is open on nine days in ten.',
    formula: 'u <= u_work ? "holds" : (u <= 1 ? "close" : "fails")',
    where: {
      u: 'path.mufShare',
      u_work: { value: 0.85, unit: '%', says: 'optimum working frequency over MUF' },
    },
    source: 'CCIR, from memory',
  },
  skip: (look) =>
    look('path.skip') === 0
      ? {
          says: 'The frequency lies below the critical one: even the ray straight up comes back.',
          formula: 'f_0 <= f_c ? d_up : d_none',
          where: {
            f_0: 'plan.nominal',
            f_c: 'path.critical',
            d_up: { value: 0, unit: 'm', says: 'no skip' },
            d_none: { value: 1, unit: 'm', says: 'not reached' },
          },
          source: 'secant law',
        }
      : {
          says: 'The steepest ray that still comes back has sec i = f over the critical frequency.',
          formula: '2 * R_E * (pi / 2 - beta_s - i_s)',
          where: {
            R_E: earth,
            h_v: 'path.mirror',
            f_0: 'plan.nominal',
            f_c: 'path.critical',
            i_s: {
              formula: 'asin(sqrt(1 - (f_c / f_0)^2))',
              unit: '°',
              says: 'its angle of incidence at the layer',
            },
            beta_s: {
              formula: 'acos(sin(i_s) * (R_E + h_v) / R_E)',
              unit: '°',
              says: 'its elevation',
            },
          },
          source: 'secant law turned round',
        },
  index: {
    says: 'Ionisation of the D region by sunspot number and height of the sun.',
    formula: '(1 + 0.0037 * R_12) * max(0, cos(0.881 * chi))^1.3',
    where: { R_12: 'path.sunspots', chi: 'path.zenith' },
    source: absorptionSource,
    assumes: 'Nothing at night, no winter anomaly.',
  },
  absorption: {
    says: 'Loss in the D region on the way up and down, for each hop.',
    formula: 'n * 677.2 * I * M_D / (((f_0 + f_H) / f_ref)^1.98 + 10.2)',
    where: {
      n: 'path.hopCount',
      I: 'path.index',
      f_0: 'plan.nominal',
      f_H: 'path.gyro',
      f_ref: constants.megahertz,
      R_E: earth,
      h_D: constants.absorbing,
      beta: 'path.elevation',
      M_D: {
        formula: '1 / sqrt(1 - (R_E * cos(beta) / (R_E + h_D))^2)',
        unit: '1',
        says: 'sec i at that height',
      },
    },
    source: absorptionSource,
    assumes: 'The slant is taken at 100 km.',
  },
  groundLoss: {
    says: 'The ray touches down once less than there are hops.',
    formula: 'A_touch * (n - 1)',
    where: { A_touch: constants.touchdown, n: 'path.hopCount' },
    source: 'ITU-R P.533 (second-hand)',
  },
} satisfies Partial<StageWorkings<typeof pathFields>>;

function critical(look: Look): Working {
  if (look('path.layer') === 'e') {
    return {
      says: 'The E layer follows the sun closely; a little is left at night.',
      formula: 'max(f_n, f_1 * ((180 + 1.44 * R_12) * max(0, cos(chi)))^0.25)',
      where: {
        f_n: { value: E_NIGHT, unit: 'Hz', says: 'left at night' },
        f_1: { value: 0.9e6, unit: 'Hz', says: 'scale of the formula' },
        R_12: 'path.sunspots',
        chi: 'path.zenith',
      },
      source: 'CCIR’s simple form, from memory',
    };
  }
  if (look('path.foF2') !== null) {
    return { says: 'As given.', formula: 'f_F2', where: { f_F2: 'path.foF2' }, source: 'as typed' };
  }
  const season = look('path.season') as Season;
  const { day, night } = typicalCriticals[season];
  const row = (value: number, says: string) =>
    ({ value, unit: 'Hz', says: `typical ${says}`, source: 'from memory' }) as const;
  return {
    says: 'A typical value: in a straight line over the sunspot number, and from night to day.',
    formula: 'f_n + (f_d - f_n) * w',
    where: {
      R_12: 'path.sunspots',
      w: 'path.dayShare',
      N_0: row(night[0], 'at night with no sunspots'),
      N_100: row(night[1], 'at night with R12 = 100'),
      D_0: row(day[0], 'by day with no sunspots'),
      D_100: row(day[1], 'by day with R12 = 100'),
      f_n: { formula: 'N_0 + (N_100 - N_0) * R_12 / 100', unit: 'Hz', says: 'at night' },
      f_d: { formula: 'D_0 + (D_100 - D_0) * R_12 / 100', unit: 'Hz', says: 'by day' },
    },
    source: 'mid-latitude monthly medians, from memory; no source',
    assumes: 'Days differ by a quarter and more. Today’s ionosonde reading is far better.',
  };
}
