import { bracketedRoot } from '../bracketedRoot.ts';
import { type TransistorCard, VOLT_PER_KELVIN } from './transistorCard.ts';

/**
 * The resistors that set a transistor's direct current. Three well-known circuits are in it:
 * voltage divider and emitter resistor (`from: 'supply'`, a `lower` resistor), one resistor from
 * collector to base (`from: 'collector'`, no `lower`), and that with a second one from base to
 * ground (`from: 'collector'`, a `lower` resistor).
 */
export interface BiasResistors {
  /** Supply, V. */
  readonly supply: number;
  /** Where the upper base resistor begins. */
  readonly from: 'supply' | 'collector';
  /** Upper base resistor, Ω. */
  readonly upper: number;
  /** Base to ground, Ω; Infinity for none. */
  readonly lower: number;
  /** Emitter to ground for direct current, Ω, 0 … */
  readonly emitter: number;
  /** Supply to collector for direct current, Ω, 0 … */
  readonly collector: number;
}

/** A transistor at rest. V and A. */
export interface BiasPoint {
  /** Voltage across the inner base–emitter junction: the root that was found. */
  readonly vbe: number;
  readonly baseCurrent: number;
  readonly collectorCurrent: number;
  /** Of the base terminal, emitter and collector to ground. */
  readonly base: number;
  readonly emitter: number;
  readonly collector: number;
  /** Voltage from the inner base to the collector, negative in use. */
  readonly vbc: number;
  /** Collector to emitter. */
  readonly vce: number;
  /** All that the stage draws. */
  readonly drawn: number;
  /** The collector has less than `SATURATION` left: the figures are then not to be trusted. */
  readonly saturated: boolean;
}

/** Collector–emitter voltage below which the reverse junction can no longer be left out, V. */
export const SATURATION = 0.2;

/**
 * Direct currents and voltages of a transistor in its resistors: the base–emitter voltage at which
 * the currents at the base add up to nothing. Exponential junction, Early effect, knee and leakage;
 * the base–collector junction is left out, so that it holds down to saturation.
 *
 * @param card at the junction's temperature
 * @param temperature of the junction, K
 * @param measured emitter current, A, where it is known: it then counts instead of the base resistors
 */
export function biasPoint(
  r: BiasResistors,
  card: TransistorCard,
  temperature: number,
  measured: number | null = null,
): BiasPoint {
  const vt = VOLT_PER_KELVIN * temperature;
  const most = vt * Math.log(1 + MOST / card.is);
  const left = (v: number) => {
    const at = atVoltage(r, card, vt, v);
    return measured === null ? at.left : measured - at.ic - at.ib;
  };
  const vbe = bracketedRoot(left, 0, most, 1e-15);
  const { ib, ic, base, emitter, collector, vbc, inUpper } = atVoltage(r, card, vt, vbe);
  return {
    vbe,
    baseCurrent: ib,
    collectorCurrent: ic,
    base,
    emitter,
    collector,
    vbc,
    vce: collector - emitter,
    drawn: ic + inUpper,
    saturated: collector - emitter < SATURATION,
  };
}

/** A base current that no resistor here lets through, A: the end of the search. */
const MOST = 1e3;

/**
 * All voltages and currents if the inner base–emitter voltage were v, and what is left over of the
 * currents at the base: falls steadily with v. The Early effect makes the collector current depend
 * on the collector's voltage and that on the current: both lines, so they are solved outright.
 */
function atVoltage(r: BiasResistors, card: TransistorCard, vt: number, v: number) {
  const forward = card.is * Math.expm1(v / vt);
  const ib = forward / card.bf + card.ise * Math.expm1(v / (card.ne * vt));
  const knee = (1 + Math.sqrt(1 + (4 * forward) / card.ikf)) / 2;
  const transport = forward / knee;
  const byCollector = r.from === 'collector';
  // Base voltage and upper resistor's current without collector current, and what each ampere adds.
  const base0 = v + r.emitter * ib + card.rb * ib;
  const baseSlope = r.emitter;
  const upper0 = byCollector ? base0 / r.lower + ib : 0;
  const upperSlope = byCollector ? baseSlope / r.lower : 0;
  const vcb0 = r.supply - r.collector * upper0 - base0 + card.rb * ib;
  const vcbSlope = r.collector * (1 + upperSlope) + baseSlope;
  const ic = (transport * (1 + vcb0 / card.vaf)) / (1 + (transport * vcbSlope) / card.vaf);
  const base = base0 + baseSlope * ic;
  const inUpper = byCollector ? upper0 + upperSlope * ic : (r.supply - base) / r.upper;
  const collector = r.supply - r.collector * (ic + (byCollector ? inUpper : 0));
  const top = byCollector ? collector : r.supply;
  return {
    ib,
    ic,
    base,
    emitter: r.emitter * (ic + ib),
    collector,
    vbc: base - card.rb * ib - collector,
    inUpper,
    left: (top - base) / r.upper - base / r.lower - ib,
  };
}
