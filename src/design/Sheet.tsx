import type { ReactNode } from 'react';

interface SheetProps {
  title: string;
  /** The question that this sheet answers. */
  asks?: string;
  /** The leaves of a sheet that has several. */
  leaves?: ReactNode;
  /** The live sentence at its head. */
  lead?: ReactNode;
  /** The figure that matters most: a `<Figure size="main">`, beside the lead on a wide page. */
  main?: ReactNode;
  /** The strip of what moved. */
  moved?: ReactNode;
  children: ReactNode;
  /** The way on: the sheets before and after. */
  foot?: ReactNode;
}

/** One worksheet. */
export function Sheet({ title, asks, leaves, lead, main, moved, children, foot }: SheetProps) {
  return (
    <main className="sheet" id="sheet" tabIndex={-1}>
      <div className="sheet__opening">
        <div>
          <header className="sheet__head">
            <h1 className="sheet__title">{title}</h1>
            {asks !== undefined && <p className="sheet__asks">{asks}</p>}
          </header>
          {leaves}
          {lead}
        </div>
        {main}
      </div>
      {moved}
      {children}
      {foot !== undefined && <footer className="sheet__foot">{foot}</footer>}
    </main>
  );
}
