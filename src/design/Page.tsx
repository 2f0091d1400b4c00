import { type ReactNode, useState } from 'react';
import { words } from './words.ts';

interface PageProps {
  /** The rig's name: plain text, or a field to rename it. */
  title: ReactNode;
  /** Undo and redo. */
  undo?: ReactNode;
  /** File, view, print … */
  actions?: ReactNode;
  /** The drawing of the rig. */
  nav: ReactNode;
  /** Name of the sheet shown, for the folded form of the way around. */
  here: string;
  /** The sheet. */
  children: ReactNode;
  /** Below the sheet: version, licence, keys. */
  foot?: ReactNode;
}

/** The bench: a slim head, the rig drawn across the top as the way around, the sheet under it. */
export function Page({ title, undo, actions, nav, here, children, foot }: PageProps) {
  // On a narrow page the drawing is folded away; on a wide one it always shows.
  const [open, setOpen] = useState(false);
  return (
    <div className="page">
      <a className="page__skip" href="#sheet">
        {words.skip}
      </a>
      <header className="page__head">
        <div className="page__title">{title}</div>
        {undo !== undefined && <div className="page__undo">{undo}</div>}
        {actions !== undefined && <div className="page__actions">{actions}</div>}
      </header>
      <div className="page__way" data-open={open}>
        <button
          type="button"
          className="page__fold"
          aria-expanded={open}
          onClick={() => setOpen(!open)}
        >
          <span>{here}</span>
          <span className="page__fold-say">{words.wholeRig}</span>
        </button>
        {/* biome-ignore lint/a11y/noStaticElementInteractions: closes after a link within was taken */}
        {/* biome-ignore lint/a11y/useKeyWithClickEvents: links send a click for Enter, too */}
        <div
          className="page__nav"
          onClick={(event) => {
            if (event.target instanceof Element && event.target.closest('a')) setOpen(false);
          }}
        >
          {nav}
        </div>
      </div>
      {children}
      {foot !== undefined && <footer className="page__foot">{foot}</footer>}
    </div>
  );
}
