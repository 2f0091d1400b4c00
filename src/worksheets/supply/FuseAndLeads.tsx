import { Caution } from '../../design/Caution.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';
import { Say } from '../bound/Say.tsx';
import { Read } from '../bound/Write.tsx';

/** What stands between battery and rig. */
export function FuseAndLeads() {
  return (
    <Section
      title="Fuse and leads"
      margin={
        <Note title="What the fuse protects">
          <p>
            Not the rig but the leads: into a short at the rig a full battery would drive{' '}
            <Read of="supply.short" or="whatever it can" />, and a lead that glows sets a bench on
            fire. So the fuse sits at the battery.
          </p>
        </Note>
      }
    >
      <Fields>
        <Entry of="supply.fuseKind" form="list" />
        <Entry of="supply.fuseRoom" />
      </Fields>
      <Figures>
        <Result of="supply.fuse" none="beyond the list" />
        <Result of="supply.fuseNeed" />
      </Figures>
      <Fields>
        <Entry of="supply.lead" form="list" />
        <Entry of="supply.leadLength" />
        <Entry of="supply.dropAllowed" />
      </Fields>
      <Figures>
        <Result of="supply.leadOutcome" />
        <Result of="supply.leadDrop" />
        <Result of="supply.leadShare" />
      </Figures>
      <Say of="supply.leadWords" />
      <Rows of="supply.leadRows" caption="Leads to choose from" narrow="scroll" />
      <Caution>
        A fuse at the battery’s terminal, always, and a diode across the rig’s input behind it, so
        that a reversed plug blows the fuse and not the final. No ring or watch near the poles, no
        bare tool: a battery has no current limit. Lithium cells only with their own protection and
        charger, and never left charging alone. Mains supplies: closed, earthed, made for the
        purpose, and never opened with the plug in.
      </Caution>
    </Section>
  );
}
