import { COPPER } from '../../circuit/wireLoss.ts';
import { fuseFor, fuses } from '../../data/fuses.ts';
import { type Lead, leads } from '../../data/leads.ts';
import type { Outcome } from '../../fields/kinds.ts';
import type { SupplySeen } from './seen.ts';

/** From this part of the drop allowed on, leads are called warm. */
export const CLOSE = 0.8;

/** Fuse and leads for a steady current (A), and the limit for the first switch-on. */
export function wiring(seen: SupplySeen, tone: number) {
  const fuseNeed = seen.fuseRoom * tone;
  const fuse = fuseFor(fuses[seen.fuseKind], fuseNeed);
  const leadRows = Object.values(leads).map((lead: Lead) => {
    const drop = (2 * COPPER * seen.leadLength * tone) / lead.area;
    const share = drop / seen.supplyVoltage;
    const outcome = outcomeOf(share, seen.dropAllowed, lead.bears, fuse);
    return { lead: lead.title, area: lead.area, drop, share, bears: lead.bears, outcome };
  });
  const chosen = leadRows.find(({ lead }) => lead === leads[seen.lead].title);
  const thinnest = leadRows
    .filter(({ outcome }) => outcome !== 'fails')
    .sort((a, b) => a.area - b.area)[0];
  return {
    fuseNeed,
    fuse,
    leadRows,
    leadDrop: chosen?.drop ?? null,
    leadShare: chosen?.share ?? null,
    leadOutcome: chosen?.outcome ?? null,
    leadWords:
      thinnest === undefined
        ? 'None of the list: shorter leads, or two side by side.'
        : `${thinnest.lead} or more.`,
  };
}

function outcomeOf(share: number, allowed: number, bears: number, fuse: number | null): Outcome {
  if (share > allowed || (fuse !== null && fuse > bears)) return 'fails';
  return share > CLOSE * allowed ? 'close' : 'holds';
}
