import type { ReactNode } from 'react';
import './winding.css';

export interface PlannedWinding {
  key: string;
  /** `L1 and L3`, `Output transformer`. */
  title: string;
  /** What to do, as a sentence. */
  build: string;
  /** One more remark: what a meter should show. */
  more?: string | undefined;
  picture: ReactNode;
}

/** What to wind, each with its picture: the page to prop up beside the wire. */
export function WindingPlan({ windings }: { windings: readonly PlannedWinding[] }) {
  return (
    <ul className="windings">
      {windings.map((winding) => (
        <li key={winding.key} className="winding">
          {winding.picture}
          <div>
            <h3 className="winding__title">{winding.title}</h3>
            <p className="winding__build">{winding.build}</p>
            {winding.more !== undefined && <p className="winding__more">{winding.more}</p>}
          </div>
        </li>
      ))}
    </ul>
  );
}
