import { format } from '../../quantity/format.ts';

/**
 * How far a clearance worked from the far field can be trusted, in words.
 *
 * @param keepAway worked clearance, m
 * @param nearField reach of the near field, λ/2π, m
 */
export function exposureAdvice(keepAway: number, nearField: number): string {
  const away = format(keepAway, 'm', 2);
  const near = format(nearField, 'm', 2);
  return keepAway < nearField
    ? `${away} lies within the near field (${near}), where this formula does not hold: the field close to the wire can be far stronger. Put every part of the antenna out of reach, never transmit with anyone touching it (RF burns), and use published near-field tables or a measurement if people come nearer than ${near}.`
    : `Nobody nearer than ${away} while transmitting. A planning figure: the rules in force and a measurement decide. Never touch the antenna while transmitting: RF burns.`;
}
