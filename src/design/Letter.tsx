import { symbolParts } from './formula/symbol.ts';

/** A quantity's symbol as the trade prints it: `L_m` with its index low, `omega` as a letter. */
export function Letter({ of }: { of: string }) {
  const { letter, index } = symbolParts(of);
  return (
    <span className="letter">
      <i>{letter}</i>
      {index !== '' && <sub>{index}</sub>}
    </span>
  );
}
