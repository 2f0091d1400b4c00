import type { GummelPoon } from './gummelPoon.ts';

/**
 * Transistors side by side as one of so many times the area: currents and charges grow, resistances
 * fall. Each keeps an emitter resistor and lead of its own, so those fall likewise.
 *
 * @param count how many alike, equally warm
 *
 * Source: area factor of circuit simulators; Antognetti & Massobrio, Semiconductor Device Modeling
 * with SPICE, ch. 2 (from memory).
 */
export function ganged<C extends Omit<GummelPoon, 'temperature'>>(card: C, count: number): C {
  return {
    ...card,
    is: card.is * count,
    ise: card.ise * count,
    isc: card.isc * count,
    ikf: card.ikf * count,
    ikr: card.ikr * count,
    itf: card.itf * count,
    rb: card.rb / count,
    re: card.re / count,
    rc: card.rc / count,
    cje: card.cje * count,
    cjc: card.cjc * count,
  };
}
