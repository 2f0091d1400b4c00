import type { GummelPoonCard } from '../../circuit/power/gummelPoonAt.ts';
import { transistors } from '../../data/devices.ts';
import {
  type TransistorModelKey,
  transistorModels,
  unsaidOfCards,
} from '../../data/transistorModels.ts';
import { type CardKey, cardParameters } from './cardParameters.ts';
import { type ReadCard, readCard } from './readCard.ts';

export type Whence = 'device' | 'fT' | 'own' | 'unsaid';

/** The model card that the exact answer takes, and where each figure is from. */
export interface ChosenCard {
  readonly card: GummelPoonCard;
  readonly whence: (key: CardKey) => Whence;
  readonly read: ReadCard | null;
}

/**
 * Card of the chosen transistor, with parameters of the user's own in place of its figures; or a
 * whole card of the user's own. A transition frequency of the user's own stretches the transit time,
 * unless the own card has one.
 *
 * @param transition Hz
 */
export function cardOf(
  device: TransistorModelKey,
  transition: number,
  pasted: string | null,
): ChosenCard {
  const { name: _, source: __, ...base } = transistorModels[device];
  const read = pasted === null ? null : readCard(pasted);
  const { ft } = transistors[device];
  const stretched = transition !== ft;
  const whole = read?.whole && Object.keys(read.values).length > 0;
  const card: GummelPoonCard = whole
    ? { ...unsaidOfCards, ...read.values }
    : { ...base, tf: (base.tf * ft) / transition, ...read?.values };
  return {
    card,
    read,
    whence: (key) => {
      if (read?.values[key] !== undefined) return 'own';
      if (whole) return 'unsaid';
      return key === 'tf' && stretched ? 'fT' : 'device';
    },
  };
}

/** All parameters, in the order in which cards have them. */
export const cardKeys = Object.keys(cardParameters) as readonly CardKey[];
