import type { ReactNode } from 'react';

/** Fields that belong together, in as many columns as fit. */
export function Fields({ title, children }: { title?: string; children: ReactNode }) {
  return (
    <fieldset className="fields">
      {title !== undefined && <legend className="fields__title">{title}</legend>}
      <div className="fields__grid">{children}</div>
    </fieldset>
  );
}
