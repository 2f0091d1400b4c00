import { Fields } from '../../design/Fields.tsx';
import { Figures } from '../../design/Figures.tsx';
import { useValue } from '../../store/hooks.ts';
import { Entry } from '../bound/Entry.tsx';
import { Pasted } from '../bound/Pasted.tsx';
import { Result } from '../bound/Result.tsx';

/** Which crystal the oscillator has: one like the filter's, or some of the bag by their labels. */
export function OwnCrystal() {
  const chosen = useValue<string>('carrier.chosen');
  return (
    <>
      <Fields title="The crystal">
        <Pasted of="carrier.chosen" lines={1} example="17" />
        {chosen === null && <Entry of="carrier.crystalOffset" />}
      </Fields>
      <Figures>
        <Result of="carrier.crystalFs" size="small" />
        <Result of="carrier.crystalLm" size="small" />
        <Result of="carrier.crystalRm" size="small" />
        <Result of="carrier.crystalC0" size="small" />
        <Result of="carrier.together" size="small" />
      </Figures>
    </>
  );
}
