import { COPPER } from '../../circuit/wireLoss.ts';
import { leads } from '../../data/leads.ts';
import type { Problem } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { SupplySeen } from './seen.ts';

/** Over the planned supply by so much, a full battery is worth a word. */
const TOO_FULL = 1.15;

/** A loss that a listener notices, dB. */
const NOTICED = -3;

/** What leads, fuse or battery can't do, and what would help. */
export function supplyCautions(
  seen: SupplySeen,
  found: {
    readonly leadShare: number | null;
    readonly leadDrop: number | null;
    readonly leadWords: string;
    readonly fuse: number | null;
    readonly fuseNeed: number;
    readonly hours: number;
    readonly endVoltage: number;
    readonly endPower: number;
    readonly endLoss: number | null;
    readonly fullVoltage: number;
    readonly strung: number;
  },
): Problem[] {
  const out: Problem[] = [];
  const warn = (key: string, says: string, help: string) =>
    out.push({ field: `supply.${key}`, weight: 'warns', says, try: help });
  const lead = leads[seen.lead];
  const volts = (v: number) => format(v, 'V', 3);

  // Leads against drop, fuse, and what Final reckons with.
  if (found.leadShare !== null && found.leadDrop !== null && found.leadShare > seen.dropAllowed) {
    warn(
      'lead',
      `The leads lose ${format(found.leadDrop, 'V', 2)} of ${volts(seen.supplyVoltage)} at full power.`,
      found.leadWords,
    );
  }
  if (found.fuse !== null && found.fuse > lead.bears) {
    warn(
      'lead',
      `A fuse of ${format(found.fuse, 'A', 2)} lets more through than leads of ${lead.title} bear.`,
      'Leads must outlast the fuse: thicker ones.',
    );
  }
  const both = (2 * COPPER * seen.leadLength) / lead.area;
  if (both > seen.resistance) {
    warn(
      'leadLength',
      `These leads alone have ${format(both, 'Ω', 2)}; Final reckons with ${format(seen.resistance, 'Ω', 2)} for battery, fuse and leads together.`,
      'Shorter or thicker leads, or the true resistance on Final.',
    );
  }
  if (found.fuse === null) {
    warn(
      'fuseKind',
      `${format(found.fuseNeed, 'A', 3)} is more than fuses of this kind are made for.`,
      'Blade fuses go further; or check the final’s current.',
    );
  }
  // The battery against the time and the rig.
  if (found.hours < 3600) {
    warn(
      'capacity',
      'The battery is down within the hour.',
      'A larger one, or less time on transmit.',
    );
  }
  if (found.fullVoltage > TOO_FULL * seen.supplyVoltage) {
    warn(
      'cells',
      `${found.strung} full cells give ${volts(found.fullVoltage)}; the rig is planned for ${volts(seen.supplyVoltage)}.`,
      'Fewer cells, or check what final and audio chip bear at that voltage.',
    );
  }
  if (found.endLoss === null || found.endLoss < NOTICED) {
    warn(
      'cells',
      found.endLoss === null
        ? `At ${volts(found.endVoltage)} nothing is left over for the final.`
        : `Down to ${volts(found.endVoltage)} the final gives ${format(found.endPower, 'W', 2)} of ${format(seen.pep, 'W', 3)} before it clips.`,
      'Another cell, a battery whose volts hold, or a plan for a lower supply.',
    );
  }
  return out;
}
