import { Caution } from '../../design/Caution.tsx';
import { Section } from '../../design/Section.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Write } from '../bound/Write.tsx';
import { Chokes } from './Chokes.tsx';
import { Mixes } from './Mixes.tsx';
import { Transformers } from './Transformers.tsx';

/** Transformers and chokes, to be propped up beside the wire. */
export function TransformersLeaf() {
  return (
    <SheetFrame
      stage="transformers"
      lead={
        <>
          Each winding has <Write of="windings.reactanceTimes" /> times the impedance of its
          circuit.
        </>
      }
    >
      <Transformers />
      <Mixes />
      <Chokes />
      <Section>
        <Caution>
          Scrape or tin the enamel in moving air: its fumes are no good to breathe. A core that is
          too hot to touch after a minute with the key down is the wrong core or too small; switch
          off before you feel it, the windings burn at radio frequency.
        </Caution>
      </Section>
    </SheetFrame>
  );
}
