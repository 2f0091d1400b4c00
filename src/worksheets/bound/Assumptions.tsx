const texts = import.meta.glob<string>('../../engine/stages/*/assumptions.md', {
  query: '?raw',
  import: 'default',
  eager: true,
});

/** What a stage's model leaves out, as its author wrote it beside the model. */
export function Assumptions({ of }: { of: string }) {
  const text = texts[`../../engine/stages/${of}/assumptions.md`] ?? '';
  const items = text
    .split(/\n(?=[-*] )/)
    .map((item) =>
      item
        .replace(/^[-*]\s+/, '')
        .replace(/\s*\n\s*/g, ' ')
        .replace(/[*_`]/g, '')
        .trim(),
    )
    .filter((item) => item !== '' && !item.startsWith('#'));
  return (
    <ul className="assumptions">
      {items.map((item) => (
        <li key={item}>{item}</li>
      ))}
    </ul>
  );
}
