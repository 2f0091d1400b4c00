import type { ReactNode } from 'react';

interface DisclosureProps {
  summary: ReactNode;
  children: ReactNode;
  open?: boolean;
  onToggle?: (open: boolean) => void;
}

/** Something to read when wanted. */
export function Disclosure({ summary, children, open, onToggle }: DisclosureProps) {
  return (
    <details
      className="disclosure"
      open={open}
      onToggle={(event) => onToggle?.(event.currentTarget.open)}
    >
      <summary>{summary}</summary>
      <div className="disclosure__body">{children}</div>
    </details>
  );
}
