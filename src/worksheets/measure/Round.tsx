import { Figures } from '../../design/Figures.tsx';
import { Result } from '../bound/Result.tsx';

/** What lay round the crystal while it was swept. */
export function Round({ method }: { method: string }) {
  if (method === 'shift') return null;
  return (
    <Figures>
      {method === 'fixture' && <Result of="measure.end" size="small" />}
      <Result of="measure.shunt" size="small" none="wants C0" />
    </Figures>
  );
}
