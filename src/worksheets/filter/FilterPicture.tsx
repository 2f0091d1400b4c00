import { memo, useDeferredValue, useMemo } from 'react';
import { PassbandStrip } from '../../design/chart/PassbandStrip.tsx';
import { ResponseChart, type ResponseChartProps } from '../../design/chart/ResponseChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Response {
  readonly frequency: Float64Array;
  readonly gain: Float64Array;
}

interface RuleRow {
  readonly rule: string;
  readonly frequency: number | null;
  readonly attenuation: number | null;
  readonly outside: number | null;
  readonly suppression300: number | null;
}

/** Tones of the voice that both sidebands are drawn for, Hz. */
const VOICE = [300, 2700] as const;

/** The filter's response with the carrier and both sidebands, and the passband under the glass. */
export function FilterPicture() {
  // The figures come first; the curves follow as soon as the page has a moment.
  const picture = useDeferredValue(usePicture());
  return picture && <Pictures {...picture} />;
}

const Pictures = memo(function Pictures({ strip, ...response }: Picture) {
  return (
    <>
      <ResponseChart {...response} />
      <PassbandStrip {...response} {...strip} rules={none} widths={none} />
    </>
  );
});

const none: readonly never[] = [];

type Picture = ResponseChartProps & {
  strip: { title: string; summary: string; domain: readonly [number, number] };
};

function usePicture(): Picture | null {
  const fs = useValue<number>('quartz.fs');
  const response = useValue<Response>('filter.response');
  const exact = useValue<Response>('filter.exactResponse');
  const fitted = useValue<string>('filter.fitted');
  const loss = useValue<number>('filter.loss');
  const ripple = useValue<number>('filter.rippleFound');
  const width = useValue<number>('filter.width3');
  const edges = [
    useWidth(3, useValue<number>('filter.low3'), useValue<number>('filter.high3')),
    useWidth(6, useValue<number>('filter.low6'), useValue<number>('filter.high6')),
    useWidth(20, useValue<number>('filter.low20'), useValue<number>('filter.high20')),
    useWidth(60, useValue<number>('filter.low60'), useValue<number>('filter.high60')),
  ];
  const floor = useValue<number>('filter.floor');
  const [w3, w6, w20, w60] = edges;
  const carrier = useValue<number>('carrier.frequency');
  const attenuation = useValue<number>('carrier.attenuation');
  const rule = useValue<string>('carrier.rule');
  const rules = useValue<readonly RuleRow[]>('carrier.rules');
  const sideband = useValue<string>('plan.filterSideband');

  return useMemo(() => {
    if (fs === null || response === null || loss === null || width === null) return null;
    const kHz = (f: number) => (f - fs) / 1000;
    const below = (r: Response) => ({ x: r.frequency.map(kHz), y: r.gain.map((g) => g + loss) });
    const direction = sideband === 'upper' ? 1 : -1;
    const band = (side: 1 | -1) => {
      const ends = VOICE.map((tone) => kHz((carrier ?? fs) + side * tone));
      return { from: Math.min(...ends), to: Math.max(...ends) };
    };
    const widths = [w3, w6, w20, w60].flatMap((w) =>
      w ? [{ ...w, low: kHz(w.low), high: kHz(w.high) }] : [],
    );
    const span = widths[1] ?? widths[0] ?? { low: -1, high: 4 };
    return {
      title: 'Response of the filter',
      summary: summaryOf(width, loss, carrier, attenuation),
      strip: {
        title: 'The passband, magnified',
        summary: `Ripple ${format(ripple ?? 0, 'dB', 4)} over ${format(width, 'Hz', 4)}; corners and slope show what loss and termination do.`,
        domain: around(span.low, span.high),
      },
      curve: below(response),
      domain: steps(kHz(response.frequency[0] ?? fs), kHz(response.frequency.at(-1) ?? fs)),
      reference:
        exact !== null
          ? { ...below(exact), label: fitted === 'exact' ? 'as designed' : 'exact values' }
          : undefined,
      leak:
        floor === null ? undefined : { at: -floor, label: `leakage, ${format(-floor, 'dB', 2)}` },
      xName: `kHz from ${format(fs, 'Hz', 7)}`,
      ...(carrier === null
        ? {}
        : {
            carrier: {
              at: kHz(carrier),
              label: `carrier, ${format(-(attenuation ?? 0), 'dB', 2)}`,
              direction,
            },
            wanted: { ...band(direction), label: 'wanted' },
            opposite: { ...band(direction === 1 ? -1 : 1), label: 'other sideband' },
            rules: ruleMarks(rules ?? [], rule, kHz),
          }),
      widths,
      floor: -90,
    } as Picture;
  }, [
    fs,
    response,
    exact,
    fitted,
    floor,
    loss,
    ripple,
    width,
    w3,
    w6,
    w20,
    w60,
    carrier,
    attenuation,
    rule,
    rules,
    sideband,
  ]);
}

/** The passband with a quarter of its width on either side, kHz. */
function around(low: number, high: number): readonly [number, number] {
  const margin = 0.25 * (high - low);
  return steps(low - margin, high + margin);
}

/** Ends of an axis in whole half kilohertz, so that its frame stands still while figures change. */
function steps(from: number, to: number): readonly [number, number] {
  return [Math.floor(2 * from) / 2, Math.ceil(2 * to) / 2];
}

function useWidth(level: number, low: number | null, high: number | null) {
  return useMemo(
    () =>
      low === null || high === null
        ? null
        : { level: -level, low, high, label: format(high - low, 'Hz', 3) },
    [level, low, high],
  );
}

/** Where the rules of thumb that were not chosen would put the carrier, with what each costs. */
function ruleMarks(rules: readonly RuleRow[], chosen: string | null, kHz: (f: number) => number) {
  return rules.flatMap((row) => {
    if (row.frequency === null || row.rule === chosen) return [];
    return [{ at: kHz(row.frequency), label: ruleLabel(row) }];
  });
}

/** What a rule asks for, and what it then costs. */
function ruleLabel({ rule, attenuation, outside }: RuleRow): string {
  const down = format(-(attenuation ?? 0), 'dB', 2);
  const out = `${format(outside ?? 0, 'Hz', 3)} outside`;
  if (rule === 'attenuation') return `${format(attenuation ?? 0, 'dB', 2)} down: ${out}`;
  if (rule === 'offset') return `${out}: ${down}`;
  return `${rule === 'nearest' ? 'nearest in reach' : 'as given'}: ${down}`;
}

function summaryOf(
  width: number,
  loss: number,
  carrier: number | null,
  down: number | null,
): string {
  const filter = `${format(width, 'Hz', 4)} wide at −3 dB, ${format(loss, 'dB', 3)} of loss`;
  return carrier === null || down === null
    ? `${filter}.`
    : `${filter}; the carrier at ${format(carrier, 'Hz', 7)} lies ${format(down, 'dB', 3)} down the skirt.`;
}
