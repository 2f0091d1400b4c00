import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import type { Outcome } from '../../design/marks.ts';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read, Write } from '../bound/Write.tsx';
import { PairPicture } from './PairPicture.tsx';

/** What strong stations do to the receiver: products, blocking, and ways past the filter. */
export function StrongLeaf() {
  const converts = useValue<string>('plan.scheme') === 'conversion';
  return (
    <SheetFrame
      stage="strong"
      main={<Verdict />}
      lead={
        <>
          Two stations beside the channel may reach <Read of="strong.harmless" or="some level" />{' '}
          each before what they make of each other is heard. A broadcaster on{' '}
          <Read of="strong.broadcaster" or="a frequency near by" /> blocks the receiver from{' '}
          <Read of="strong.broadcasterMost" or="some level" /> on.
        </>
      }
    >
      <Pair />
      <Broadcaster />
      <Section
        title="Whose intercept it is"
        margin={
          <Note title="Gain makes it worse">
            <p>
              A decibel of gain before a block is a decibel less intercept at the antenna. Up to the
              crystal filter that goes for every station on the band; behind it only for those in
              the channel.
            </p>
          </Note>
        }
      >
        <Rows of="strong.blocks" caption="Intercepts, block by block" />
        <Figures>
          <Result of="strong.interceptOutside" />
          <Result of="strong.interceptInside" />
        </Figures>
        <Fields>
          <Entry of="strong.filterIntercept" />
          {converts && <Entry of="strong.mixerIntercept" />}
          <Entry of="strong.detectorIntercept" />
        </Fields>
      </Section>
    </SheetFrame>
  );
}

function Verdict() {
  const verdict = useValue<Outcome>('strong.verdict');
  const worst = useValue<string>('strong.worst');
  return (
    <Result
      of="strong.verdict"
      size="main"
      verdict={verdict === null || worst === null ? undefined : { of: verdict, says: worst }}
    />
  );
}

function Pair() {
  return (
    <Section
      title="Two strong stations beside the channel"
      margin={
        <>
          <Note title="The attenuator’s trick">
            <p>
              A real station falls by one decibel for each decibel of attenuation, a product by
              three. If what you hear falls faster than it should, it isn’t there.
            </p>
          </Note>
          <Note title="S-units in dBm">
            <p>S9 is −73 dBm; S9+20 dB is −53, S9+40 dB is −33.</p>
          </Note>
        </>
      }
    >
      <PairPicture />
      <Fields>
        <Entry of="strong.pair" />
      </Fields>
      <Figures>
        <Result of="strong.product" />
        <Result of="strong.productOver" />
        <Result of="strong.productSpared" />
        <Result of="strong.free" />
        <Result of="strong.freeBand" />
        <Result of="strong.harmless" />
      </Figures>
    </Section>
  );
}

function Broadcaster() {
  const converts = useValue<string>('plan.scheme') === 'conversion';
  return (
    <Section
      title="A broadcaster outside the band"
      margin={
        <Note title="Find out which it is">
          <p>
            Tune to a quiet spot of the band. Speech or music that stays wherever you tune is
            rectified in the detector; weak stations that come and go with a strong one are blocked
            {converts && '; a carrier that moves the wrong way as you tune comes in on the image'}.
          </p>
        </Note>
      }
    >
      <p>
        It comes with <Write of="strong.level" /> from the antenna on{' '}
        <Read of="strong.broadcaster" or="a frequency near by" />.
      </p>
      <Fields>
        <Entry of="strong.frequency" />
        <Entry of="strong.level" />
        <Entry of="strong.balance" />
      </Fields>
      <Figures>
        <Result of="strong.blockMargin" />
        <Result of="strong.broadcasterMost" />
        <Result of="strong.broadcaster" />
      </Figures>
      <Rows of="strong.ways" narrow="scroll" />
      <Disclosure summary="Blocking, block by block, and the filter far off">
        <Rows of="strong.blocked" narrow="scroll" />
        <Fields>
          <Entry of="strong.stopband" />
        </Fields>
        <Figures>
          <Result of="strong.stopbandUsed" />
        </Figures>
      </Disclosure>
    </Section>
  );
}
