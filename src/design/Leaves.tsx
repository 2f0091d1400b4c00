interface LeavesProps {
  /** Spoken: whose leaves these are. */
  label: string;
  items: readonly { key: string; href: string; label: string }[];
  current: string;
}

/** The leaves of a sheet, side by side: the present one stands on a copper line. */
export function Leaves({ label, items, current }: LeavesProps) {
  return (
    <nav className="leaves" aria-label={label}>
      {items.map(({ key, href, label: name }) => (
        <a key={key} href={href} aria-current={key === current ? 'page' : undefined}>
          {name}
        </a>
      ))}
    </nav>
  );
}
