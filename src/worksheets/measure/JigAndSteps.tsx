import { JigDrawing } from '../../design/drawing/JigDrawing.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import { stepsOf } from './stepsOf.ts';

/** The circuit of the way chosen, and what to do with it, one after the other. */
export function JigAndSteps({ method }: { method: string }) {
  const jig = useValue<string>('measure.jig');
  const end = useValue<number>('measure.end');
  const through = useValue<string>('measure.firstWith') === 'series';
  const third = useValue<string>('measure.oscillatorBy') === 'third';
  const steps = stepsOf(method, { pi: jig === 'pi', through, third });
  return (
    <>
      {method === 'shift' ? (
        <JigDrawing
          jig={third ? 'third' : 'shift'}
          throughBoth={through}
          label="A Colpitts oscillator with the crystal from base to ground, a capacitor in series with it, and a counter at the emitter"
        />
      ) : method === 'fixture' && jig === 'pi' ? (
        <JigDrawing
          jig="pi"
          label="The crystal between two pi networks of resistors, a generator before and a level meter behind"
        />
      ) : (
        <JigDrawing
          jig="plain"
          end={end === null ? '50 Ω' : format(end, 'Ω', 3)}
          label="The crystal in series between generator and level meter, with equal resistances on both sides"
        />
      )}
      <ol className="jig-steps">
        {steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
    </>
  );
}
