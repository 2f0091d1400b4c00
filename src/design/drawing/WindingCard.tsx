import type { ReactNode } from 'react';
import { Words } from '../Words.tsx';
import './transformer.css';

export interface WindingCardProps {
  title: string;
  /** What it is there for. */
  does: string;
  /** What to do, as a sentence. */
  build: string;
  /** Which end goes to which. */
  joins?: string | undefined;
  /** The figures to have at hand, ready to read. */
  facts: readonly { label: string; value: string }[];
  picture: ReactNode;
}

/** A transformer to wind: what it does, its picture, the line to act on, and how good it is. */
export function WindingCard({ title, does, build, joins, facts, picture }: WindingCardProps) {
  return (
    <li className="card">
      {picture}
      <div>
        <h3 className="card__title">{title}</h3>
        <p className="card__does">{does}</p>
        <p className="card__build">
          <Words of={build} />
        </p>
        {joins !== undefined && <p className="card__joins">{joins}</p>}
        <dl className="card__facts">
          {facts.map(({ label, value }) => (
            <div key={label}>
              <dt>{label}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      </div>
    </li>
  );
}

/** Several of them, one below the other. */
export function WindingCards({ children }: { children: ReactNode }) {
  return <ul className="cards">{children}</ul>;
}
