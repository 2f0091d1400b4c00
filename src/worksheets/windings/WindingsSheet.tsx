import { Caution } from '../../design/Caution.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Result } from '../bound/Result.tsx';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read, Write } from '../bound/Write.tsx';
import { Coils } from './Coils.tsx';

/** Turns, wire and cores, to be propped up beside the wire. */
export function WindingsSheet() {
  const typed = useValue<number>('output.coilQ');
  return (
    <SheetFrame
      stage="windings"
      lead={
        <>
          The coils of the output network take <Read of="windings.wireTotal" /> of wire. The poorest
          of them should reach a Q of <Read of="windings.leastQ" />
          {typed === null ? (
            '; Output reckons with what each should reach.'
          ) : (
            <>
              ; Output reckons with <Write of="output.coilQ" />.
            </>
          )}
        </>
      }
      main={<Result of="windings.leastQ" size="main" />}
    >
      <Coils />
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
