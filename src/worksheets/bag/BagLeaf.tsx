import { Disclosure } from '../../design/Disclosure.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Pasted } from '../bound/Pasted.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read } from '../bound/Write.tsx';
import './bag.css';
import { BagTable } from './BagTable.tsx';
import { Buying } from './Buying.tsx';
import { Choosing } from './Choosing.tsx';
import { LotPicture } from './LotPicture.tsx';

/** The bag of crystals: pasted, drawn as it is, chosen from. */
export function BagLeaf() {
  const number = useValue<number>('bag.number') ?? 0;
  return (
    <SheetFrame
      stage="bag"
      main={<Result of="bag.spread" size="main" none="wants a list" />}
      lead={<Lead number={number} />}
    >
      <Section
        title="The crystals"
        margin={
          <Note title="Measure them alike">
            <p>
              All on one day, in one fixture, tweezers instead of fingers: a warm crystal runs off
              by more than neighbours lie apart. Differences count here, not the last digit of the
              counter.
            </p>
          </Note>
        }
      >
        <Pasted
          of="bag.crystals"
          lines={number > 0 ? 6 : 8}
          measured
          files=".csv,.tsv,.txt,text/plain,text/csv"
          example={
            'label   fs        Lm     Rm   C0\n1       7199.98k  30.1m  19   4.0p\n2       7200.12k\n3       7200.05k'
          }
          echo={number > 0 ? `${number} crystals that count` : undefined}
        />
      </Section>
      {number > 0 && (
        <>
          <Section>
            <LotPicture />
            <Lot />
          </Section>
          <BagTable />
          <Choosing />
        </>
      )}
      <Buying />
    </SheetFrame>
  );
}

function Lead({ number }: { number: number }) {
  if (number === 0) {
    return (
      <>
        No crystals yet. <Read of="filter.crystals" /> that match are wanted for the filter, and one
        for the carrier: how many to buy is worked out below.
      </>
    );
  }
  return (
    <>
      <Read of="bag.number" /> crystals within <Read of="bag.range" />, about <Read of="bag.fs" />,
      and the lot has <Read of="bag.humps" />.
    </>
  );
}

/** The lot in figures. */
function Lot() {
  const two = useValue<string>('bag.humps') === 'two';
  const aside = (useValue<number>('bag.aside') ?? 0) > 0;
  return (
    <>
      <Figures>
        <Result of="bag.fs" />
        <Result of="bag.spread" />
        <Result of="bag.range" />
        <Result of="bag.humps" />
        {two && <Result of="bag.lowerHump" />}
        {two && <Result of="bag.upperHump" />}
        <Result of="bag.clusters" size="small" />
        <Result of="bag.lowest" size="small" />
        <Result of="bag.highest" size="small" />
        <Result of="bag.number" size="small" />
        {aside && <Result of="bag.aside" size="small" />}
      </Figures>
      <Figures>
        <Result of="bag.lm" size="small" none="not measured" />
        <Result of="bag.rm" size="small" none="not measured" />
        <Result of="bag.c0" size="small" none="not measured" />
      </Figures>
      <Disclosure summary="The closest neighbours, for every number of crystals">
        <Rows of="bag.sets" columns={['crystals', 'within', 'from', 'to', 'low', 'high']} />
      </Disclosure>
    </>
  );
}
