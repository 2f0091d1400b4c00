import { Disclosure } from '../../design/Disclosure.tsx';
import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { shown } from '../../engine/rig/moved.ts';
import { useInput, useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Result } from '../bound/Result.tsx';

/** By the ionosphere: whether it is open, and the way of the ray. */
export function Sky() {
  const byE = useValue<string>('path.layer') === 'e';
  return (
    <>
      <Section
        title="Is the layer open?"
        margin={
          <>
            <Note title="Skip">
              <p>
                A layer that lets the steep ray through still returns the flat one: near stations
                hear nothing, far ones do. A lower band brings the near ones back.
              </p>
            </Note>
            <Note title="Better than a guess">
              <p>
                An ionosonde near the middle of the path measures the critical frequency every
                quarter of an hour. Type it in and season, spots and latitude no longer matter for
                the opening.
              </p>
            </Note>
          </>
        }
      >
        <Entry of="path.season" form="row" />
        <Fields>
          <Entry of="path.hour" />
          <Entry of="path.latitude" />
          <Entry of="path.sunspots" />
          {byE ? null : <Given of="path.foF2" used="path.critical" />}
        </Fields>
        <Figures>
          <Result of="path.opening" none="the Earth is in the way" />
          <Result of="path.muf" />
          <Result of="path.mufShare" />
          <Result of="path.skip" none="nothing is skipped, or nothing returned" />
          <Result of="path.critical" />
          <Result of="path.zenith" />
          <Result of="path.dayShare" />
        </Figures>
      </Section>
      <Section
        title="The way of the ray"
        margin={
          <Note>
            <p>
              Near stations want a ray that leaves steeply, far ones a flat one. A low dipole serves
              the first, height over ground the second.
            </p>
          </Note>
        }
      >
        <Entry of="path.layer" form="row" />
        <Fields>
          {byE ? null : <Entry of="path.layerHeight" />}
          <Given of="path.hops" used="path.hopCount" />
          <Entry of="path.lowest" />
        </Fields>
        <Figures>
          <Result of="path.elevation" />
          <Result of="path.mirror" />
          <Result of="path.hopCount" />
          <Result of="path.hopDistance" />
          <Result of="path.longestHop" />
          <Result of="path.usableHop" />
          <Result of="path.secant" />
        </Figures>
        <Disclosure summary="The Earth’s magnetic field">
          <Fields>
            <Entry of="path.gyro" />
          </Fields>
        </Disclosure>
      </Section>
    </>
  );
}

/** An entry that shows, while blank, what is used in its stead. */
function Given({ of, used }: { of: string; used: string }) {
  const value = useValue<unknown>(used);
  const { wrong } = useInput(of);
  const field = fieldAt(used);
  const typical = field && !wrong ? shown(field, value) : '';
  return (
    <Entry
      of={of}
      typical={typical === '' ? undefined : typical}
      typicalOrigin={used === 'path.critical' ? 'typical' : 'worked'}
    />
  );
}
