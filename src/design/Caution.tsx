import type { ReactNode } from 'react';
import { words } from './words.ts';

/** What may burn, shock, break or be against the licence: said where the work is. */
export function Caution({ children }: { children: ReactNode }) {
  return (
    <aside className="caution" aria-label={words.caution}>
      <svg className="caution__mark" viewBox="0 0 28 26" aria-hidden="true">
        <path d="M14 2 26.5 24h-25z" />
        <path d="M14 10v7M14 20v1.4" />
      </svg>
      <div>
        <strong className="caution__word">{words.caution}</strong> {children}
      </div>
    </aside>
  );
}
