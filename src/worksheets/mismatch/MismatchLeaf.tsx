import { Caution } from '../../design/Caution.tsx';
import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import type { Outcome } from '../../engine/fields/kinds.ts';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read, Write } from '../bound/Write.tsx';
import { CollectorPicture } from './CollectorPicture.tsx';
import { ExactFinal } from './ExactFinal.tsx';
import { LoadPicture } from './LoadPicture.tsx';
import { MarginPicture } from './MarginPicture.tsx';
import { PowerPicture } from './PowerPicture.tsx';

/** An antenna that does not fit, turned once round. */
export function MismatchLeaf() {
  return (
    <SheetFrame
      stage="mismatch"
      lead={
        <>
          An antenna with a standing-wave ratio of <Write of="mismatch.swr" /> throws back{' '}
          <Read of="mismatch.reflected" /> of the power. At the worst angle harmonic{' '}
          <Read of="mismatch.marginOrder" /> still has a margin of <Read of="mismatch.margin" />,{' '}
          <Read of="mismatch.power" /> of <Read of="output.pepAntenna" /> get out, and the collector
          could come to <Read of="mismatch.collector" />.
        </>
      }
      main={<LeastMargin />}
    >
      <Section
        title="Turn it once round"
        margin={
          <>
            <Note title="Why all angles?">
              <p>
                A meter shows how much comes back, not with which phase; that is up to the antenna
                and the length of the cable. A quarter wavelength of cable more goes half way round.
              </p>
            </Note>
            <Note title="It is not lost">
              <p>
                What comes back is not turned into heat by itself. It makes another load of the
                antenna, and so another load for the final.
              </p>
            </Note>
          </>
        }
      >
        <Fields>
          <Entry of="mismatch.swr" />
        </Fields>
        <LoadPicture />
        <Figures>
          <Result of="mismatch.reflection" size="small" />
          <Result of="mismatch.reflected" size="small" />
        </Figures>
      </Section>
      <Section
        title="The final"
        margin={
          <Note title="Two voltages">
            <p>
              Into a high load the swing comes to its end at the supply, and the drive is held: that
              is the lower line. If the planned pulse of current went on, the collector would go
              where the upper line is. A real one saturates on the way: the dashed line, from the
              model of its transistor.
            </p>
          </Note>
        }
      >
        <CollectorPicture />
        <PowerPicture />
        <Figures>
          <Result of="mismatch.collector" />
          <Result of="mismatch.collectorHeld" />
          <Result of="mismatch.power" />
          <Result of="mismatch.heat" />
          <Result of="mismatch.loss" />
        </Figures>
        <Rows
          of="mismatch.worst"
          caption="Power and final: the worst over all angles"
          narrow="scroll"
          columns={[
            'swr',
            'collector',
            'collectorAngle',
            'power',
            'powerAngle',
            'heat',
            'heatAngle',
            'loss',
            'lossAngle',
          ]}
        />
        <ExactFinal />
        <Caution>
          At a high standing-wave ratio there are two to three times the volts on the antenna
          terminal and in the network, and the final runs hot: burns without a spark, and a dead
          transistor. Try it for seconds, with the supply turned down, into a dummy load made wrong
          on purpose.
        </Caution>
      </Section>
      <Section
        title="The harmonics"
        margin={
          <Note title="Which antenna at 14 MHz?">
            <p>
              A wire that fits at one frequency is another thing at twice that. The network’s output
              is almost pure reactance there, and an antenna that happens to tune it can take far
              more: the last figure is the bound that no antenna passes.
            </p>
          </Note>
        }
      >
        <MarginPicture />
        <Figures>
          <Result of="mismatch.verdict" />
          <Result of="mismatch.marginOrder" />
          <Result of="mismatch.marginSame" />
          <Result of="mismatch.marginAny" none="nothing bounds it" />
        </Figures>
        <Rows
          of="mismatch.worst"
          caption="Harmonics: the least margin over all angles"
          narrow="scroll"
          columns={['swr', 'margin', 'marginOrder', 'marginAngle', 'marginSame', 'marginAny']}
        />
        <Rows of="mismatch.harmonics" narrow="scroll" columns={['order', 'back', 'same', 'any']} />
        <Disclosure summary="For the board: the network as four numbers">
          <Rows
            of="mismatch.waves"
            narrow="scroll"
            columns={['order', 'frequency', 'ar', 'ai', 'br', 'bi', 'cr', 'ci', 'dr', 'di']}
          />
        </Disclosure>
        <Caution>
          A planning figure. Rules differ by country and licence and change: read the text in force,
          measure the finished transmitter, and do not go on the air with a rig that fails. The
          operator answers for the station.
        </Caution>
      </Section>
    </SheetFrame>
  );
}

/** The margin of the worst harmonic at the worst angle, with how that is to be taken. */
function LeastMargin() {
  const verdict = useValue<Outcome>('mismatch.verdict');
  return (
    <Result
      of="mismatch.margin"
      size="main"
      none="no harmonics"
      verdict={verdict === null ? undefined : { of: verdict }}
    />
  );
}
