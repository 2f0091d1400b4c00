import { cardFromSheet } from '../../circuit/amplifier/cardFromSheet.ts';
import type { TransistorCard } from '../../circuit/amplifier/transistorCard.ts';
import { type TransistorKey, transistors } from '../../data/devices.ts';

/** The model card of a transistor on the list, with the current gain that is usual for it. */
export function smallCard(key: TransistorKey): TransistorCard {
  const known = cards.get(key);
  if (known) return known;
  const { hfe, ft, cob, base, small } = transistors[key];
  const card = cardFromSheet({
    hfe: hfe[1],
    vbe: small.vbe,
    ft: [ft, ...small.ftAt],
    cob: [cob, small.cobAt],
    cib: small.cib,
    early: small.early,
    base,
  });
  if (!card) throw new Error(`figures of ${key} contradict each other`);
  cards.set(key, card);
  return card;
}

const cards = new Map<TransistorKey, TransistorCard>();
