import type { ReactNode } from 'react';

/** The sheet's first sentence, whose numbers are live: `<Blank>` to write in, `<Told>` to read. */
export function Sentence({ children }: { children: ReactNode }) {
  return <p className="sentence">{children}</p>;
}
