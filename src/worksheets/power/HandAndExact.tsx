import { memo } from 'react';
import { Table } from '../../design/Table.tsx';
import type { PowerAnswer } from '../../engine/errands/power/powerAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import type { Unit } from '../../engine/quantity/units.ts';
import { useValue } from '../../store/hooks.ts';
import { useExact } from './useExact.ts';

interface HarmonicRow {
  readonly order: number;
  readonly level: number | null;
}

type Found = NonNullable<PowerAnswer['found']>;

/** What an instructor works on the board, beside what the transistor's model says. */
export function HandAndExact() {
  const found = useExact();
  const pep = useValue<number>('output.pepAntenna');
  const load = useValue<number>('transmit.collectorLoad');
  const shown = useValue<number>('output.inputResistance');
  const share = useValue<number>('transmit.efficiency');
  const dc = useValue<number>('transmit.dcCurrent');
  const overall = useValue<number>('transmit.overall');
  const heat = useValue<number>('transmit.dissipation');
  const peak = useValue<number>('transmit.peakEach');
  const junction = useValue<number>('transmit.junction');
  const supply = useValue<number>('plan.supply');
  const saturation = useValue<number>('transmit.saturation');
  const harmonics = useValue<readonly HarmonicRow[]>('output.harmonics');
  const swing = supply === null || saturation === null ? null : 2 * supply - saturation;
  const hand = { pep, load, shown, share, dc, overall, heat, peak, junction, swing };
  return <Both hand={hand} harmonics={harmonics} found={found} />;
}

/** Below this a harmonic is no figure any more, dBc: a real lay-out lets more through. */
const FAINT = -120;

function said(value: number | null, unit: Unit, digits: number): string {
  if (value === null) return '–';
  return unit === 'dBc' && value < FAINT
    ? `under ${format(FAINT, unit, 0)}`
    : format(value, unit, digits);
}

interface BothProps {
  hand: Readonly<
    Record<
      | 'pep'
      | 'load'
      | 'shown'
      | 'share'
      | 'dc'
      | 'overall'
      | 'heat'
      | 'peak'
      | 'junction'
      | 'swing',
      number | null
    >
  >;
  harmonics: readonly HarmonicRow[] | null;
  found: Found | null;
}

const Both = memo(function Both({ hand, harmonics, found }: BothProps) {
  const line = (
    key: string,
    what: string,
    unit: Unit,
    byHand: number | null,
    exact: number | null | undefined,
    digits = 3,
  ) => ({
    key,
    cells: {
      what,
      hand: said(byHand, unit, digits),
      exact: said(exact ?? null, unit, digits),
    },
  });
  const exactOf = (order: number) => found?.harmonics.find((one) => one.order === order)?.level;
  const rows = [
    line('power', 'Power at the antenna', 'W', hand.pep, found?.figures.power),
    line('load', 'Collector load, wanted and as built', 'Ω', hand.load, hand.shown),
    line('dc', 'Final’s current', 'A', hand.dc, found?.figures.collectorCurrent),
    line(
      'collector',
      'Collector’s radio power over direct power',
      '%',
      hand.share,
      found?.figures.collectorEfficiency,
    ),
    line(
      'share',
      'Antenna’s radio power over direct power',
      '%',
      hand.overall,
      found?.figures.efficiency,
    ),
    line('heat', 'Heat in the transistors', 'W', hand.heat, found?.figures.dissipation),
    line('peak', 'Peak current of each', 'Apk', hand.peak, found?.each.peakCurrent),
    line('swing', 'Highest collector voltage', 'V', hand.swing, found?.figures.peakVoltage),
    line('junction', 'Junction', '°C', hand.junction, found?.junction.temperature, 2),
    ...[2, 3, 4, 5].map((order) =>
      line(
        `h${order}`,
        `Harmonic ${order} at the antenna`,
        'dBc',
        harmonics?.find((row) => row.order === order)?.level ?? null,
        exactOf(order),
        2,
      ),
    ),
  ];
  return (
    <Table
      caption="With one tone at full power"
      columns={[
        { key: 'what', label: 'What', as: 'words' },
        { key: 'hand', label: 'By hand' },
        { key: 'exact', label: 'From the model' },
      ]}
      rows={rows}
    />
  );
});
