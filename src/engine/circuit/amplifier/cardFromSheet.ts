import { depletion, SILICON, type TransistorCard, VOLT_PER_KELVIN } from './transistorCard.ts';

/** What data sheets say of a small-signal transistor. */
export interface SheetFigures {
  /** Current gain for direct current, 1. */
  readonly hfe: number;
  /** Base–emitter voltage V at a collector current A, at 25 °C or so. */
  readonly vbe: readonly [volts: number, amperes: number];
  /** Transition frequency Hz, at a collector current A and a collector–emitter voltage V. */
  readonly ft: readonly [hertz: number, amperes: number, volts: number];
  /** Collector–base capacitance F, at a reverse voltage V. */
  readonly cob: readonly [farads: number, volts: number];
  /** Emitter–base capacitance F, at a reverse voltage V. */
  readonly cib: readonly [farads: number, volts: number];
  /** Early voltage, V; Infinity for none. */
  readonly early: number;
  /** Resistance of the base, Ω. */
  readonly base: number;
}

/** Built-in voltage and grading of the junctions, as model cards usually have them. */
const BUILT_IN = 0.75;
const GRADING = 0.33;
const SHARE = 0.5;

/**
 * A transistor's card from its data sheet: IS from one base–emitter voltage, the capacitances at
 * 0 V from those under reverse voltage, the transit time from what fT leaves beside them:
 * 1/(2π·fT) = TF + (Cje + Cjc)/gm.
 *
 * Knee and leakage are left out: hFE holds at the current it is given for.
 *
 * @return null where the capacitances alone would already keep fT lower than the sheet has it
 */
export function cardFromSheet(sheet: SheetFigures): TransistorCard | null {
  const { hfe, vbe, ft, cob, cib, early, base } = sheet;
  const vt = VOLT_PER_KELVIN * SILICON.tnom;
  const is = vbe[1] * Math.exp(-vbe[0] / vt);
  const cjc = cob[0] * (1 + cob[1] / BUILT_IN) ** GRADING;
  const cje = cib[0] * (1 + cib[1] / BUILT_IN) ** GRADING;
  const forward = vt * Math.log(ft[1] / is);
  const held =
    depletion(cje, BUILT_IN, GRADING, SHARE, forward) +
    depletion(cjc, BUILT_IN, GRADING, SHARE, forward - ft[2]);
  const tf = 1 / (2 * Math.PI * ft[0]) - (held * vt) / ft[1];
  if (!(tf > 0)) return null;
  return {
    is,
    bf: hfe,
    vaf: early,
    ikf: Number.POSITIVE_INFINITY,
    ise: 0,
    ne: 1.5,
    rb: base,
    tf,
    cje,
    vje: BUILT_IN,
    mje: GRADING,
    cjc,
    vjc: BUILT_IN,
    mjc: GRADING,
    fc: SHARE,
  };
}
