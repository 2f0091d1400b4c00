import { Disclosure } from '../../design/Disclosure.tsx';
import { JigDrawing } from '../../design/drawing/JigDrawing.tsx';
import { Fields } from '../../design/Fields.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';

/** The fixture, the reading with a wire, and what is known of C0. */
export function Fixture() {
  const resistance = useValue<number>('sweep.resistance');
  const ohms = resistance === null ? '50 Ω' : format(resistance, 'Ω', 3);
  const pi = resistance !== null && Math.abs(resistance - 12.5) < 0.6;
  return (
    <>
      <JigDrawing
        jig={pi ? 'pi' : 'plain'}
        end={ohms}
        label={
          pi
            ? 'The crystal between two pi networks of resistors, a generator before and a level meter behind'
            : `The crystal in series between generator and level meter, with ${ohms} on both sides`
        }
      />
      <Fields>
        <Entry
          of="sweep.rt"
          typical={resistance === null ? undefined : format(resistance, 'Ω', 4)}
        />
        <Entry of="sweep.through" measured />
        <Entry of="sweep.ifBandwidth" />
        <Entry of="sweep.c0Known" measured />
        <Entry of="measure.beside" />
      </Fields>
      <Disclosure summary="What else may be fitted">
        <Entry of="sweep.use" form="row" />
        <Entry of="sweep.levelFree" form="row" />
        <Entry of="sweep.shuntFree" form="row" />
        <Fields>
          <Entry of="sweep.shunt" />
          <Entry of="sweep.throughVolts" measured />
        </Fields>
      </Disclosure>
    </>
  );
}
