import type { FigureName } from '../../engine/errands/yield/buildFigures.ts';
import type { Kind } from '../../engine/errands/yield/factors.ts';
import type { CriterionName } from '../../engine/errands/yield/mask.ts';
import type { Group } from '../../engine/errands/yield/trials.ts';
import type { Unit } from '../../engine/quantity/units.ts';

/** A figure of a build, and how it is written. */
export interface FigureWord {
  readonly label: string;
  readonly unit: Unit;
  readonly digits: number;
}

export const figureWords: Readonly<Record<FigureName, FigureWord>> = {
  width: { label: 'Width at −3 dB', unit: 'Hz', digits: 4 },
  ripple: { label: 'Ripple', unit: 'dB', digits: 4 },
  loss: { label: 'Loss', unit: 'dB', digits: 4 },
  carrier: { label: 'Carrier below the passband', unit: 'dB', digits: 3 },
  opposite: { label: 'Other sideband, worst tone', unit: 'dB', digits: 3 },
};

export const criterionWords: Readonly<Record<CriterionName, string>> = {
  widthLeast: 'Too narrow',
  widthMost: 'Too wide',
  ripple: 'Too much ripple',
  loss: 'Too much loss',
  carrier: 'Carrier not far enough down',
  opposite: 'Other sideband not far enough down',
};

export const groupWords: Readonly<Record<Group, string>> = {
  capacitors: 'Capacitors',
  frequency: 'Frequencies of the crystals',
  lm: 'Lm of the crystals',
  rm: 'Rm (Q) of the crystals',
  c0: 'C0 of the crystals',
  ends: 'End resistances',
};

/** What a part is called: its kind, and its place counted from the source. */
export function partWord(kind: Kind, position: number): string {
  const place = position + 1;
  if (kind === 'coupling') return `Coupling capacitor ${place}`;
  if (kind === 'series') return `Aligning capacitor ${place}`;
  if (kind === 'ends') return position === 0 ? 'End at the source' : 'End at the load';
  const of = { frequency: 'frequency', lm: 'Lm', rm: 'Rm', c0: 'C0' } as const;
  return `Crystal ${place}, ${of[kind]}`;
}
