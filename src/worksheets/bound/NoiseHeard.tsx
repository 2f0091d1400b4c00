import { Figures } from '../../design/Figures.tsx';
import { useValue } from '../../store/hooks.ts';
import { Result } from './Result.tsx';
import { Say } from './Say.tsx';

/** What the rise of noise that was heard says of the receiver; nothing until it is read. */
export function NoiseHeard() {
  const heard = useValue<string>('bench.riseMeans') !== null;
  if (!heard) return null;
  return (
    <>
      <Figures>
        <Result of="bench.noiseFigureRead" none="none would" />
        <Result of="bench.moreLoss" none="not to be told" />
      </Figures>
      <Say of="bench.riseMeans" />
    </>
  );
}
