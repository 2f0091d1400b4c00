import { minimumLossPad } from '../../circuit/matching/minimumLossPad.ts';
import { turnsRatio } from '../../circuit/turnsRatio.ts';
import { format } from '../../quantity/format.ts';
import type { Side } from './sides.ts';

/** Mismatch that is not worth a part, and ratios up to which a resistor is cheap. */
const ALIKE = 1.1;
const CHEAP = 1.6;
/** Ratio of resistances beyond which a transformer's stray inductance asks for care. */
const STEEP = 25;

/** Which way suits one side, in words, and what part the higher side has in it. */
export function adviceFor({ r, x, wound, wants }: Side, unlike: string): string {
  const ohms = (value: number) => format(value, 'Ω', 3);
  const ratio = Math.max(wound, wants) / Math.min(wound, wants);
  const said: string[] = [];
  if (Math.abs(x) > 0.2 * r) {
    const part = x > 0 ? 'capacitor' : 'coil';
    said.push(`Tune out its ${ohms(Math.abs(x))} of reactance first, with a ${part} in series.`);
  }
  if (ratio < ALIKE) {
    said.push(`${ohms(wound)} is within a tenth of ${ohms(wants)}: straight on.`);
    return said.join(' ');
  }
  const higher = wants > wound ? 'filter' : unlike;
  const loss = format(10 * Math.log10(ratio), 'dB', 3);
  const part =
    wants > wound
      ? `${ohms(wants - wound)} in series`
      : `${ohms((wound * wants) / (wound - wants))} across`;
  if (ratio <= CHEAP) {
    said.push(
      `${part} does it for ${loss}, and steadies an amplifier that is not sure to be what it says. A transformer would lose nothing.`,
    );
  } else {
    const { primary, secondary } = turnsRatio(wants / wound, false);
    const pad = minimumLossPad(wound, wants);
    const steep = ratio > STEEP;
    said.push(
      steep
        ? `From ${ohms(wound)} to ${ohms(wants)} is steep: an L match of one coil and one capacitor, trimmed on the bench.`
        : `A transformer of ${primary} : ${secondary} turns: broad, nothing to tune. An L match saves the core and wants trimming.`,
      `A resistor would cost ${loss}, a pad ${format(pad?.loss ?? 0, 'dB', 3)}.`,
    );
  }
  said.push(`The ${higher} is the higher side: an L match has its arm across that.`);
  return said.join(' ');
}
