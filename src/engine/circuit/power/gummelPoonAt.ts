import { type GummelPoon, VOLT_PER_KELVIN } from './gummelPoon.ts';

/** A model card: the parameters at 27 °C, and how they go with temperature. */
export interface GummelPoonCard extends Omit<GummelPoon, 'temperature'> {
  /** Temperature exponent of the saturation current, 1. */
  readonly xti: number;
  /** Energy gap of the saturation current, eV. */
  readonly eg: number;
  /** Temperature exponent of the current gains, 1. */
  readonly xtb: number;
}

/** Temperature for which cards are meant, K. */
const CARD_TEMPERATURE = 300.15;

/**
 * The transistor at a temperature of its junction.
 *
 * @param temperature K; the equations are meant for 220 … 450 K
 *
 * Source: temperature equations of SPICE; Antognetti & Massobrio, Semiconductor Device Modeling
 * with SPICE, ch. 2 (from memory).
 */
export function gummelPoonAt(card: GummelPoonCard, temperature: number): GummelPoon {
  const ratio = temperature / CARD_TEMPERATURE;
  const vt = VOLT_PER_KELVIN * temperature;
  const grows = (ratio - 1) * (card.eg / vt) + card.xti * Math.log(ratio);
  const gain = ratio ** card.xtb;
  const e = junction(card.cje, card.vje, card.mje, temperature);
  const c = junction(card.cjc, card.vjc, card.mjc, temperature);
  return {
    ...card,
    temperature,
    is: card.is * Math.exp(grows),
    bf: card.bf * gain,
    br: card.br * gain,
    ise: (card.ise * Math.exp(grows / card.ne)) / gain,
    isc: (card.isc * Math.exp(grows / card.nc)) / gain,
    cje: e.c,
    vje: e.v,
    cjc: c.c,
    vjc: c.v,
  };
}

/** Built-in voltage and capacitance of a junction at a temperature. */
function junction(cj: number, vj: number, m: number, temperature: number) {
  const gap = (t: number) => 1.16 - (7.02e-4 * t * t) / (t + 1108);
  const vt = VOLT_PER_KELVIN * temperature;
  const ratio = temperature / CARD_TEMPERATURE;
  const drift = -3 * vt * Math.log(ratio) + gap(temperature) - 1.1150877 * ratio;
  const v = ratio * vj + drift;
  const c = cj * (1 + m * (4e-4 * (temperature - CARD_TEMPERATURE) - (v - vj) / vj));
  return { v, c };
}
