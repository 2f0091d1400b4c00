import type { ReactNode } from 'react';

/** A remark for the margin, or between the lines on a narrow page. */
export function Note({ title, children }: { title?: string; children: ReactNode }) {
  return (
    <div className="note">
      {title !== undefined && <h3 className="note__title">{title}</h3>}
      {children}
    </div>
  );
}
