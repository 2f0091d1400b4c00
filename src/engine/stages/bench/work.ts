import type { Outcome } from '../../fields/kinds.ts';
import type { Problem, Work } from '../../fields/stage.ts';
import { dbmOfWatts, voltsOfWatts } from '../../quantity/power.ts';
import { cautions } from './cautions.ts';
import { dcMeans } from './dcMeans.ts';
import { classBCeiling, dcSanity } from './dcSanity.ts';
import type { benchFields } from './fields.ts';
import { worstOf } from './judge.ts';
import { noiseFigureOf, riseMeans, usualRises } from './noiseHeard.ts';
import type { Group } from './point.ts';
import { type PointRow, pointRow } from './pointRow.ts';
import { pointsOf } from './points.ts';
import { shownShare, TIMES_ONE_BANDWIDTH } from './scopeError.ts';
import type { BenchSeen } from './seen.ts';

type Results = Work<typeof benchFields>['results'];

/** What each meter should show, what it does show, and the verdicts. */
export function workBench(seen: BenchSeen): Work<typeof benchFields> {
  const tables = {
    supplies: rows('supplies', seen),
    currents: rows('currents', seen),
    frequencies: rows('frequencies', seen),
    widths: rows('widths', seen),
    volts: rows('volts', seen),
    powers: rows('powers', seen),
    levels: rows('levels', seen),
    harmonics: rows('harmonics', seen),
  };
  const all = Object.values(tables).flat();
  const direct = directFigures(seen);
  const scope = scopeFigures(seen);
  const verdicts = all.map(({ verdict, rule }) => worstOf([verdict, rule]));
  return {
    results: {
      ...tables,
      overall: worstOf([...verdicts, direct.dcVerdict]),
      summary: summary(verdicts, all),
      ...direct,
      ...riseFigures(seen),
      outputVpp:
        seen.outputRead === null ? null : voltsOfWatts(seen.outputRead, 'Vpp', seen.dummyLoad),
      outputLevel: seen.outputRead === null ? null : dbmOfWatts(seen.outputRead),
      ...scope,
      cautions: cautions(scope.scopeLoss),
    },
    problems: scopeProblems(seen, scope.scopeLoss),
    origins: { outputVpp: 'measured', outputLevel: 'measured', noiseFigureRead: 'measured' },
  };
}

const rows = (group: Group, seen: BenchSeen): PointRow[] =>
  pointsOf(group).map((point) => pointRow(point, seen));

/** Radio power against direct power, from the final's current where it was read. */
function directFigures(
  seen: BenchSeen,
): Pick<Results, 'directPower' | 'dcRatio' | 'dcVerdict' | 'dcMeans' | 'dcCeiling'> {
  const volts = seen.supplyRead ?? seen.supply;
  const amps = seen.finalRead ?? seen.transmitRead;
  const directPower = volts === null || amps === null ? null : volts * amps;
  const known = seen.outputRead !== null && directPower !== null && directPower > 0;
  const dcRatio = known ? seen.outputRead / directPower : null;
  return {
    directPower,
    dcRatio,
    dcVerdict: dcRatio === null ? null : dcSanity(dcRatio),
    dcMeans: dcRatio === null ? null : dcMeans(dcRatio, seen.finalRead === null),
    dcCeiling:
      volts === null || seen.saturation === null || seen.saturation >= volts
        ? null
        : classBCeiling(volts, seen.saturation),
  };
}

/** What the rise of noise that was heard says of the receiver. */
function riseFigures(seen: BenchSeen): Pick<Results, 'riseMeans' | 'noiseFigureRead' | 'moreLoss'> {
  const { noiseRiseRead: read, noiseRise, noiseFigure, external, place } = seen;
  if (
    read === null ||
    noiseRise === null ||
    noiseFigure === null ||
    external === null ||
    place === null
  ) {
    return { riseMeans: null, noiseFigureRead: null, moreLoss: null };
  }
  const fits = noiseFigureOf(read, external);
  return {
    riseMeans: riseMeans(read, noiseRise, usualRises(external, noiseFigure, place)),
    noiseFigureRead: fits,
    moreLoss: fits === null ? null : fits - noiseFigure,
  };
}

function scopeFigures({ frequency, scopeBandwidth, probe }: BenchSeen) {
  if (frequency === null) return { scopeShows: null, scopeLoss: null };
  const shown =
    shownShare(frequency, scopeBandwidth) *
    (probe === 'one' ? shownShare(frequency, TIMES_ONE_BANDWIDTH) : 1);
  return { scopeShows: shown, scopeLoss: -20 * Math.log10(shown) };
}

function scopeProblems({ probe }: BenchSeen, lost: number | null): Problem[] {
  if (lost === null || lost <= 0.5) return [];
  return [
    {
      field: probe === 'one' ? 'bench.probe' : 'bench.scopeBandwidth',
      weight: 'warns',
      says: `Oscilloscope and probe show ${lost.toFixed(1)} dB too little at this frequency.`,
      try: 'A trimmed ×10 probe and five times the bandwidth, or believe the wattmeter.',
    },
  ];
}

function summary(verdicts: readonly (Outcome | null)[], all: readonly PointRow[]): string {
  const count = (outcome: Outcome) => verdicts.filter((v) => v === outcome).length;
  const open = all.filter((row, i) => verdicts[i] === null && row.expected !== null).length;
  const waiting = all.filter((row) => row.expected === null).length;
  const worst = all.filter((_, i) => verdicts[i] === 'fails').sort((a, b) => a.step - b.step)[0];
  return [
    `${count('holds')} hold, ${count('close')} close, ${count('fails')} fail; ${open} not measured yet`,
    ...(waiting === 0 ? [] : [`, ${waiting} wait for another sheet`]),
    worst ? `. Look first at: ${worst.point}.` : '.',
  ].join('');
}
