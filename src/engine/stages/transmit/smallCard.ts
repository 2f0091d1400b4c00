import { cardFromSheet } from '../../circuit/amplifier/cardFromSheet.ts';
import type { TransistorCard } from '../../circuit/amplifier/transistorCard.ts';
import type { Transistor } from '../../data/devices.ts';

/**
 * The model card of a transistor, with the current gain that is usual for it; null where its figures
 * contradict each other.
 */
export function smallCard(device: Transistor): TransistorCard | null {
  const known = cards.get(device);
  if (known !== undefined) return known;
  const { hfe, ft, cob, base, small } = device;
  const card = cardFromSheet({
    hfe: hfe[1],
    vbe: small.vbe,
    ft: [ft, ...small.ftAt],
    cob: [cob, small.cobAt],
    cib: small.cib,
    early: small.early,
    base,
  });
  cards.set(device, card);
  return card;
}

/** The same where it is known to be one. */
export function soundCard(device: Transistor): TransistorCard {
  const card = smallCard(device);
  if (!card) throw new Error(`figures of ${device.name} contradict each other`);
  return card;
}

const cards = new WeakMap<Transistor, TransistorCard | null>();
