import { reactanceAt } from '../../circuit/colpitts.ts';
import { gainAt } from '../../circuit/ladderGain.ts';
import type { Work } from '../../fields/stage.ts';
import type { carrierFields } from './fields.ts';
import { edges, heard } from './heard.ts';
import { clampToReach, type Oscillator, oscillatorOf } from './oscillator.ts';
import { ownCrystal } from './ownCrystal.ts';
import { attenuationAt, facingEdge, placements, SKIRT, type Skirt } from './placement.ts';
import { problems } from './problems.ts';
import { pulled } from './pulled.ts';
import type { RuleName } from './ruleNames.ts';
import type { CarrierSeen } from './seen.ts';
import { seriesPart } from './seriesPart.ts';
import { suppressionAt, worstTone } from './tones.ts';

type Answer = Work<typeof carrierFields>;

/** Places the carrier on the filter's skirt, works what that does, and pulls the crystal there. */
export function workCarrier(seen: CarrierSeen): Answer {
  const skirt = skirtOf(seen);
  const places = placements(skirt, {
    attenuation: seen.attenuationGiven,
    offset: seen.offsetGiven,
    frequency: seen.frequencyGiven,
  });
  const own = ownCrystal(seen);
  const oscillator = oscillatorOf(seen, own);
  const placed = places[seen.rule];
  // A carrier far from the filter makes no sideband with it.
  const near = placed !== null && Math.abs(placed - facingEdge(skirt)) <= SKIRT;
  const frequency = near ? placed : null;
  const nearestInReach = frequency === null ? null : clampToReach(frequency, oscillator);
  const outOfReach = frequency !== null && nearestInReach !== frequency;
  const rows = (['attenuation', 'offset', 'frequency', 'nearest'] as const).flatMap((rule) => {
    const f = rule === 'nearest' ? (outOfReach ? nearestInReach : null) : places[rule];
    return f === null || Math.abs(f - facingEdge(skirt)) > SKIRT
      ? []
      : [ruleRow(rule, f, skirt, oscillator)];
  });
  const results: Answer['results'] = {
    ...heard(frequency, own.fs, skirt),
    together: own.count,
    crystalFs: own.fs,
    crystalLm: own.lm,
    crystalRm: own.rm,
    crystalC0: own.c0,
    rules: rows,
    gm: oscillator.gm,
    cpi: oscillator.cpi,
    divider: oscillator.c,
    bare: oscillator.bare,
    reachLow: oscillator.low,
    reachHigh: oscillator.high,
    ...pulled(outOfReach ? null : frequency, seen.coilQ, oscillator),
  };
  return {
    results,
    problems: [...own.problems, ...problems(seen, { placed, skirt, oscillator, own, results })],
  };
}

function skirtOf({ ladder, loss, low3, high3, low6, high6, wantedSideband }: CarrierSeen): Skirt {
  const gain = (f: number) => gainAt(ladder, f);
  return { ladder, gain, loss, low3, high3, low6, high6, way: wantedSideband === 'lower' ? 1 : -1 };
}

type Row = NonNullable<Answer['results']['rules']>[number];

/** What one way to place the carrier gives and costs. */
function ruleRow(rule: RuleName, f: number, skirt: Skirt, oscillator: Oscillator): Row {
  const { gain, way, low6, high6 } = skirt;
  const part =
    clampToReach(f, oscillator) === f
      ? seriesPart(f, reactanceAt(oscillator.x, f), oscillator.c)
      : null;
  return {
    rule,
    frequency: f,
    outside: way * (f - facingEdge(skirt)),
    attenuation: attenuationAt(skirt, f),
    ...edges(f, way, low6, high6),
    suppression300: suppressionAt(gain, f, way, 300),
    suppression1k: suppressionAt(gain, f, way, 1000),
    suppressionWorst: suppressionAt(gain, f, way, worstTone(gain, f, way)),
    seriesC: part?.c ?? null,
    seriesL: part?.l ?? null,
  };
}
