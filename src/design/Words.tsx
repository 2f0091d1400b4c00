/** Type numbers: FT37-43, T50-2, TO-39, BN43-2402, HC-49/U. */
const typeNumber = /(\b[A-Z]{1,3}\d{0,3}-\d+\w*)/;

/** Words that may break into lines, but never within a type number. */
export function Words({ of }: { of: string }) {
  const parts = of.split(typeNumber);
  if (parts.length === 1) return of;
  return parts.map((part, i) =>
    i % 2 === 0 ? (
      part
    ) : (
      // biome-ignore lint/suspicious/noArrayIndexKey: the parts have no other name
      <span key={i} className="whole">
        {part}
      </span>
    ),
  );
}
