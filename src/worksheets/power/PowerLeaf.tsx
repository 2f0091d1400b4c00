import { Caution } from '../../design/Caution.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import type { PowerAnswer } from '../../engine/errands/power/powerAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { useErrand } from '../../store/errands.ts';
import { Errand } from '../bound/Errand.tsx';
import { Result } from '../bound/Result.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read, Write } from '../bound/Write.tsx';
import { DrivePicture } from './DrivePicture.tsx';
import { ExactHarmonics } from './ExactHarmonics.tsx';
import { Final } from './Final.tsx';
import { HandAndExact } from './HandAndExact.tsx';
import { Heat } from './Heat.tsx';
import { LoadLinePicture } from './LoadLinePicture.tsx';
import { LoadMade } from './LoadMade.tsx';
import { Meters } from './Meters.tsx';
import { SupplyPicture } from './SupplyPicture.tsx';
import { Surroundings } from './Surroundings.tsx';
import { TwoTones } from './TwoTones.tsx';
import { WavePictures } from './WavePictures.tsx';
import { WorkedWith } from './WorkedWith.tsx';

/** Pause after the last change before the model is sent for, ms. */
const PAUSE = 400;

/** The final twice over: as an instructor works it on the board, and from its transistor's model. */
export function PowerLeaf() {
  const errand = useErrand<PowerAnswer>('power', { auto: PAUSE });
  const { answer } = errand;
  const found = answer?.found ?? null;
  return (
    <SheetFrame
      stage="power"
      main={<Result of="transmit.collectorLoad" size="main" />}
      lead={
        <>
          For <Write of="plan.pep" /> from <Write of="plan.supply" /> the final wants{' '}
          <Read of="transmit.collectorLoad" /> at its collector, draws{' '}
          <Read of="transmit.dcCurrent" /> at the crest of the voice and gets to{' '}
          <Read of="transmit.junction" /> inside.
        </>
      }
    >
      <Final />
      <Section
        title="On the board, and from the model"
        margin={
          <>
            <Note title="Why two answers">
              <p>
                By hand the current is the tip of a cosine: good for load, current and heat, and
                anyone can check it. The second harmonic hangs on bias, drive, stored charge and
                network together and swings by twenty decibels; only the model follows that.
              </p>
            </Note>
            {answer && (
              <Note title="How the model does it">
                <p>{answer.how}</p>
              </Note>
            )}
          </>
        }
      >
        <Errand of={errand} what="The final from its transistor’s model" run="Work it" />
        {answer && <p>{answer.says}</p>}
        <HandAndExact />
        {found?.sag && (
          <p>
            Behind {format(found.sag.resistance, 'Ω', 2)} of battery and leads{' '}
            {format(found.sag.supply, 'V', 3)} are left at the crest, and{' '}
            {format(found.sag.power, 'W', 3)} at the antenna.
          </p>
        )}
        {answer && <WorkedWith of={answer.assumptions} />}
      </Section>
      <Section>
        <WavePictures />
        <LoadLinePicture />
      </Section>
      <LoadMade />
      <Meters />
      <Section>
        <ExactHarmonics />
      </Section>
      {found?.twoTones && (
        <Section
          title="Two tones"
          margin={
            <Note title="Six decibels of confusion">
              <p>
                Each of two tones lies 6 dB under the peak envelope power. Figures against PEP look
                6 dB better than those against a tone: always say which.
              </p>
            </Note>
          }
        >
          <TwoTones of={found.twoTones} />
          <DrivePicture />
        </Section>
      )}
      <Section>
        <SupplyPicture />
      </Section>
      <Surroundings />
      <Heat />
      <Section>
        <Caution>
          First into a dummy load that bears the power, the supply’s current limit a little above
          the figure here, and one hand in the pocket. The final’s case burns a finger long before
          the transistor suffers, and radio-frequency volts at its collector burn deeper than they
          hurt: switch off before you touch. On the air only with a licence.
        </Caution>
      </Section>
    </SheetFrame>
  );
}
