import type { ReactNode } from 'react';

interface SectionProps {
  id?: string;
  title?: string;
  /** Notes that stand beside this part on a wide page, and after it on a narrow one. */
  margin?: ReactNode;
  children: ReactNode;
}

/** A part of the sheet with its own margin. */
export function Section({ id, title, margin, children }: SectionProps) {
  return (
    <section className="section" id={id} aria-label={title}>
      <div className="section__main">
        {title !== undefined && <h2 className="section__title">{title}</h2>}
        {children}
      </div>
      {margin !== undefined && <div className="section__margin">{margin}</div>}
    </section>
  );
}
