import type { TransistorCard } from '../../src/engine/circuit/amplifier/transistorCard.ts';
import { value } from './simulator.ts';

const plain = { vje: 0.75, vjc: 0.75, fc: 0.5, ne: 1.3, ise: 0, ikf: Number.POSITIVE_INFINITY };

/** Made-up cards of usual size: what is compared is the mathematics, not a transistor. */
export const cards: Readonly<Record<'switching' | 'audio' | 'full', TransistorCard>> = {
  switching: {
    ...plain,
    is: 14e-15,
    bf: 150,
    vaf: 75,
    rb: 15,
    tf: 410e-12,
    cje: 22e-12,
    mje: 0.377,
    cjc: 7.3e-12,
    mjc: 0.34,
  },
  audio: {
    ...plain,
    is: 20e-15,
    bf: 290,
    vaf: 60,
    rb: 80,
    tf: 500e-12,
    cje: 11e-12,
    mje: 0.33,
    cjc: 5e-12,
    mjc: 0.33,
  },
  /** With knee and leakage. */
  full: {
    ...plain,
    is: 14e-15,
    bf: 256,
    vaf: 74,
    ikf: 0.28,
    ise: 14e-15,
    ne: 1.307,
    rb: 10,
    tf: 410e-12,
    cje: 22e-12,
    mje: 0.377,
    cjc: 7.3e-12,
    mjc: 0.34,
  },
};

/** The card as the simulator's model line, with the temperature rules of `SILICON`. */
export function modelLine(name: string, c: TransistorCard): string {
  const parameters: Record<string, number> = {
    is: c.is,
    bf: c.bf,
    vaf: c.vaf,
    rb: c.rb,
    tf: c.tf,
    cje: c.cje,
    vje: c.vje,
    mje: c.mje,
    cjc: c.cjc,
    vjc: c.vjc,
    mjc: c.mjc,
    fc: c.fc,
    xti: 3,
    eg: 1.11,
    xtb: 1.5,
  };
  if (c.ikf < Number.POSITIVE_INFINITY) parameters.ikf = c.ikf;
  if (c.ise > 0) Object.assign(parameters, { ise: c.ise, ne: c.ne });
  const text = Object.entries(parameters).map(([key, x]) => `${key}=${value(x)}`);
  return `.model ${name} npn(${text.join(' ')})`;
}
