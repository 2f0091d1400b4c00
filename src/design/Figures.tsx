import type { ReactNode } from 'react';

/** Results side by side, as many as fit. */
export function Figures({ children }: { children: ReactNode }) {
  return <div className="figures">{children}</div>;
}
