import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { NoiseHeard } from '../bound/NoiseHeard.tsx';
import { Result } from '../bound/Result.tsx';

/** Who sets the limit, the receiver or the band, and by how much. */
export function Limit() {
  return (
    <Section
      title="The receiver or the band?"
      margin={
        <>
          <Note title="A test without instruments">
            <p>
              Listen with a dummy load, then with the antenna. If the noise clearly rises, the band
              sets the limit and the receiver is good enough: 4 to 5 dB is the least, ten are
              comfortable.
            </p>
          </Note>
          <Note title="Too good is no gain">
            <p>
              What the noise rises beyond 10 dB may as well go into an attenuator: strong stations
              then trouble the mixer less, and nothing is lost.
            </p>
          </Note>
        </>
      }
    >
      <Entry of="receive.place" form="list" />
      <Fields>
        <Entry of="receive.atmospheric" />
        <Entry of="receive.frontLoss" />
        <Entry of="bench.noiseRiseRead" />
      </Fields>
      <Entry of="receive.throughNetwork" form="row" />
      <Figures>
        <Result of="receive.noiseRise" />
        <Result of="receive.bandHere" />
        <Result of="receive.floor" />
        <Result of="receive.margin" />
        <Result of="receive.attenuator" none="none to spare" />
        <Result of="receive.external" />
        <Result of="receive.bandNoise" />
        <Result of="receive.externalHere" />
      </Figures>
      <NoiseHeard />
      <Figures>
        <Result of="receive.weakest" />
        <Result of="receive.weakestUnits" none="below S1" />
        <Result of="receive.sensitivity" />
        <Result of="receive.sensitivityVolts" />
        <Result of="receive.sensitivityEmf" />
      </Figures>
    </Section>
  );
}
