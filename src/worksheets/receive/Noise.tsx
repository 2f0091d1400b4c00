import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { ChainPicture } from './ChainPicture.tsx';

/** Block by block from antenna to audio: gain, and whose noise it is. */
export function Noise() {
  const converts = useValue<string>('plan.scheme') === 'conversion';
  return (
    <>
      <Section
        title="Where its noise comes from"
        margin={
          <Note title="The first gain counts">
            <p>
              A decibel lost before the first amplifier is a decibel of noise figure. Behind enough
              gain, losses and noisy stages no longer matter.
            </p>
          </Note>
        }
      >
        {converts && <Entry of="receive.thirdServes" form="row" />}
        <Fields>
          <Entry of="receive.detectorLoss" />
          <Entry of="receive.preampNoise" />
        </Fields>
        <Figures>
          <Result of="receive.noiseFigure" />
          <Result of="receive.frontGain" />
        </Figures>
        <Rows of="receive.chain" columns={['block', 'gain', 'noise', 'before', 'share', 'level']} />
      </Section>
      <Section>
        <ChainPicture />
      </Section>
    </>
  );
}
