import { type ComponentType, useEffect } from 'react';
import { Page } from '../design/Page.tsx';
import { allLeaves, hasLeaf, leavesOf, sheetOf } from '../engine/rig/leaves.ts';
import { stages } from '../engine/rig/stages.ts';
import { useValue } from '../store/hooks.ts';
import { type SheetKey, useBench } from '../store/store.ts';
import { AmplifiersLeaf } from './amplifiers/AmplifiersLeaf.tsx';
import { AntennaLeaf } from './antenna/AntennaLeaf.tsx';
import { BagLeaf } from './bag/BagLeaf.tsx';
import { BenchSheet } from './bench/BenchSheet.tsx';
import { CarrierSheet } from './carrier/CarrierSheet.tsx';
import { CompareLeaf } from './compare/CompareLeaf.tsx';
import { ConvertLeaf } from './convert/ConvertLeaf.tsx';
import { CoresLeaf } from './cores/CoresLeaf.tsx';
import { DayLeaf } from './day/DayLeaf.tsx';
import { DriftLeaf } from './drift/DriftLeaf.tsx';
import { EndsLeaf } from './ends/EndsLeaf.tsx';
import { FeedLeaf } from './feed/FeedLeaf.tsx';
import { FilterSheet } from './filter/FilterSheet.tsx';
import { Foot } from './frame/Foot.tsx';
import { Menu } from './frame/Menu.tsx';
import { Notices } from './frame/Notices.tsx';
import { RigTitle } from './frame/RigTitle.tsx';
import './frame/frame.css';
import { Undo } from './frame/Undo.tsx';
import { useAddress } from './frame/useAddress.ts';
import { WayAround } from './frame/WayAround.tsx';
import { FrontLeaf } from './front/FrontLeaf.tsx';
import { HearLeaf } from './hear/HearLeaf.tsx';
import { LoudnessLeaf } from './loudness/LoudnessLeaf.tsx';
import { MeasureLeaf } from './measure/MeasureLeaf.tsx';
import { MismatchLeaf } from './mismatch/MismatchLeaf.tsx';
import { OutputSheet } from './output/OutputSheet.tsx';
import { PathSheet } from './path/PathSheet.tsx';
import { PlanSheet } from './plan/PlanSheet.tsx';
import { PowerLeaf } from './power/PowerLeaf.tsx';
import { ProductsLeaf } from './products/ProductsLeaf.tsx';
import { QuartzSheet } from './quartz/QuartzSheet.tsx';
import { ReceiveSheet } from './receive/ReceiveSheet.tsx';
import { SpeechLeaf } from './speech/SpeechLeaf.tsx';
import { StrongLeaf } from './strong/StrongLeaf.tsx';
import { SuggestLeaf } from './suggest/SuggestLeaf.tsx';
import { SupplyLeaf } from './supply/SupplyLeaf.tsx';
import { SweepLeaf } from './sweep/SweepLeaf.tsx';
import { TransformersLeaf } from './transformers/TransformersLeaf.tsx';
import { TransmitSheet } from './transmit/TransmitSheet.tsx';
import { WindingsSheet } from './windings/WindingsSheet.tsx';
import { YieldLeaf } from './yield/YieldLeaf.tsx';

const sheets: Partial<Record<SheetKey, ComponentType>> = {
  plan: PlanSheet,
  quartz: QuartzSheet,
  measure: MeasureLeaf,
  sweep: SweepLeaf,
  bag: BagLeaf,
  filter: FilterSheet,
  ends: EndsLeaf,
  yield: YieldLeaf,
  compare: CompareLeaf,
  carrier: CarrierSheet,
  drift: DriftLeaf,
  convert: ConvertLeaf,
  front: FrontLeaf,
  products: ProductsLeaf,
  transmit: TransmitSheet,
  amplifiers: AmplifiersLeaf,
  power: PowerLeaf,
  supply: SupplyLeaf,
  output: OutputSheet,
  suggest: SuggestLeaf,
  mismatch: MismatchLeaf,
  windings: WindingsSheet,
  transformers: TransformersLeaf,
  cores: CoresLeaf,
  receive: ReceiveSheet,
  loudness: LoudnessLeaf,
  strong: StrongLeaf,
  path: PathSheet,
  antenna: AntennaLeaf,
  feed: FeedLeaf,
  day: DayLeaf,
  hear: HearLeaf,
  speech: SpeechLeaf,
  bench: BenchSheet,
};

/** The whole bench: one worksheet at a time on the page, all of them on paper. */
export function App() {
  const current = useBench((s) => s.sheet);
  const view = useBench((s) => s.view);
  const scheme = useBench((s) => s.scheme);
  const printing = useBench((s) => s.printing);
  const works = useValue<string>('plan.scheme');
  useAddress();
  useEffect(() => {
    const { dataset } = document.documentElement;
    dataset.view = view;
    if (scheme === 'auto') delete dataset.scheme;
    else dataset.scheme = scheme;
  }, [view, scheme]);
  const Current = sheets[current] ?? PlanSheet;
  const here = stages.find((s) => s.fields.key === sheetOf(current))?.fields.title ?? current;
  return (
    <Page
      title={<RigTitle />}
      undo={<Undo />}
      actions={<Menu />}
      nav={<WayAround />}
      here={here}
      foot={<Foot />}
    >
      <Notices />
      {printing ? (
        (printing === 'rig' ? allLeaves : leavesOf(sheetOf(current))).map((key) => {
          if (!hasLeaf(key, works)) return null;
          const Leaf = sheets[key as SheetKey];
          return Leaf ? <Leaf key={key} /> : null;
        })
      ) : (
        <Current key={current} />
      )}
    </Page>
  );
}
