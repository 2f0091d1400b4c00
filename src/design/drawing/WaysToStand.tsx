import type { ReactNode } from 'react';
import './winding.css';

export interface WayToStand {
  key: string;
  title: string;
  /** The figure that comes of it, ready to read. */
  figure: string;
  more: string;
  picture: ReactNode;
}

/** The same winding in several ways, side by side, each with the figure that comes of it. */
export function WaysToStand({ items }: { items: readonly WayToStand[] }) {
  return (
    <ul className="ways">
      {items.map(({ key, title, figure, more, picture }) => (
        <li key={key} className="way-to-stand">
          {picture}
          <p className="way-to-stand__title">{title}</p>
          <p className="way-to-stand__figure">{figure}</p>
          <p className="way-to-stand__more">{more}</p>
        </li>
      ))}
    </ul>
  );
}
