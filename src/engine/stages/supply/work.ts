import { batteries, RATED_HOURS } from '../../data/batteries.ts';
import { fuseFor } from '../../data/fuses.ts';
import { COPPER, leads } from '../../data/leads.ts';
import type { Outcome } from '../../fields/kinds.ts';
import { noResults, type Problem, type Work } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import { supplyFields } from './fields.ts';
import type { SupplySeen } from './seen.ts';

/** Room of the fuse over the steady current. */
export const ROOM = 1.25;

const HOUR = 3600;

/** Currents by stage and state, the battery's hours, fuse and leads. */
export function workSupply(seen: SupplySeen): Work<typeof supplyFields> {
  const { mic, follower, amplifier, driver, quiescent, peak, supplySpeech } = seen;
  const { receiving, receivingLoud } = seen;
  if (
    mic === null ||
    follower === null ||
    amplifier === null ||
    driver === null ||
    quiescent === null ||
    peak === null ||
    supplySpeech === null ||
    receiving === null ||
    receivingLoud === null
  ) {
    return { results: noResults(supplyFields), problems: [] };
  }
  const finalSpeech = supplySpeech - (mic + follower + 2 * amplifier + driver);
  const chip = receiving - (2 * amplifier + seen.oscillator + seen.preamp);
  const always = (stage: string, i: number) => row(stage, i, i, i, i);
  const budget = [
    always('Carrier oscillator', seen.oscillator),
    ...(seen.scheme === 'conversion' ? [always('Conversion oscillator', seen.conversion)] : []),
    row('Two-way amplifiers', 2 * amplifier, 2 * amplifier, 2 * amplifier, 2 * amplifier),
    row('Audio preamplifier', seen.preamp, 0, 0, 0),
    row('Audio chip', chip + receivingLoud - receiving, 0, 0, 0),
    sent('Microphone amplifier', mic),
    sent('Follower', follower),
    sent('Driver', driver),
    row('Final', 0, quiescent, finalSpeech, peak),
    sent('Relays', seen.relay),
    always('Everything else', seen.extras),
  ];
  const sum = (key: 'listening' | 'quiet' | 'speech' | 'tone') =>
    budget.reduce((total, one) => total + one[key], 0);
  const listening = sum('listening');
  const speech = sum('speech');
  const tone = sum('tone');
  const mean = (1 - seen.talking) * listening + seen.talking * speech;
  const { usable, peukert, end } = batteries[seen.battery];
  const endVoltage = end * seen.supplyVoltage;
  const fuse = fuseFor(tone, ROOM);
  const lead = leads[seen.lead];
  const leadDrop = (2 * COPPER * seen.leadLength * tone) / lead.area;
  const leadShare = leadDrop / seen.supplyVoltage;
  const swing = (endVoltage - seen.saturation) / (seen.supplyVoltage - seen.saturation);
  const results: Work<typeof supplyFields>['results'] = {
    budget,
    listening,
    quiet: sum('quiet'),
    speech,
    tone,
    power: tone * seen.supplyVoltage,
    mean,
    hours: lasts(seen.capacity, mean, peukert) * usable,
    endVoltage,
    endPower: swing > 0 ? seen.pep * swing * swing : null,
    fuse,
    limit: 2 * (receiving + seen.extras),
    leadDrop,
    leadShare,
    leadOutcome: outcomeOf(leadShare, seen.dropAllowed, lead.carries, fuse),
    leadWords: leadsThatDo(seen, tone, fuse),
  };
  return { results, problems: problems(seen, results, lead) };
}

const row = (stage: string, listening: number, quiet: number, speech: number, tone: number) => ({
  stage,
  listening,
  quiet,
  speech,
  tone,
});

const sent = (stage: string, i: number) => row(stage, 0, i, i, i);

/**
 * Time that a battery gives a current, s, by Peukert: T·(C/(I·T))^k with the hours T that its
 * capacity C is printed for.
 *
 * @param capacity C (A·s), @param current A, @param exponent k
 * Source: Peukert, Elektrotechnische Zeitschrift 20, 1897.
 */
export function lasts(capacity: number, current: number, exponent: number): number {
  const rated = RATED_HOURS * HOUR;
  return rated * (capacity / (current * rated)) ** exponent;
}

function outcomeOf(share: number, allowed: number, carries: number, fuse: number | null): Outcome {
  if (share > allowed || (fuse !== null && fuse > carries)) return 'fails';
  return share > 0.8 * allowed ? 'close' : 'holds';
}

/** The thinnest leads that keep the drop and bear the fuse. */
function leadsThatDo(seen: SupplySeen, tone: number, fuse: number | null): string {
  const good = Object.values(leads)
    .filter(({ area, carries }) => {
      const drop = (2 * COPPER * seen.leadLength * tone) / area;
      return drop <= seen.dropAllowed * seen.supplyVoltage && carries >= (fuse ?? Infinity);
    })
    .sort((a, b) => a.area - b.area);
  const [thinnest] = good;
  return thinnest === undefined
    ? 'None of the list: shorter leads, or two in parallel.'
    : `${thinnest.title} or more.`;
}

function problems(
  seen: SupplySeen,
  found: Work<typeof supplyFields>['results'],
  lead: { readonly title: string; readonly carries: number },
): Problem[] {
  const out: Problem[] = [];
  const { leadShare, leadDrop, fuse, hours, tone } = found;
  if (leadShare !== null && leadDrop !== null && leadShare > seen.dropAllowed) {
    out.push({
      field: 'supply.lead',
      weight: 'warns',
      says: `The leads lose ${format(leadDrop, 'V', 2)} of ${format(seen.supplyVoltage, 'V', 3)} at full power.`,
      try: found.leadWords ?? 'Thicker or shorter leads.',
    });
  }
  if (fuse !== null && fuse > lead.carries) {
    out.push({
      field: 'supply.lead',
      weight: 'warns',
      says: `A fuse of ${format(fuse, 'A', 2)} lets more through than leads of ${lead.title} bear.`,
      try: 'Leads must outlast the fuse: thicker ones.',
    });
  }
  if (fuse === null && tone !== null) {
    out.push({
      field: 'supply.lead',
      weight: 'warns',
      says: `${format(tone, 'A', 2)} is more than the list of fuses knows.`,
      try: 'Check the final’s current.',
    });
  }
  if (hours !== null && hours < HOUR) {
    out.push({
      field: 'supply.capacity',
      weight: 'warns',
      says: 'The battery is empty within the hour.',
      try: 'A larger one, or less time on transmit.',
    });
  }
  return out;
}
