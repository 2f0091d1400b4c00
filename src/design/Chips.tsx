import { words } from './words.ts';

interface ChipsProps {
  of: readonly string[];
  onChip: (chip: string) => void;
}

/** Prefix letters for telephones, whose number pads lack them. Keeps the field's focus. */
export function Chips({ of, onChip }: ChipsProps) {
  return (
    <fieldset className="chips">
      <legend className="unseen">{words.suffixes}</legend>
      {of.map((chip) => (
        <button
          key={chip}
          type="button"
          tabIndex={-1}
          onPointerDown={(event) => event.preventDefault()}
          onClick={() => onChip(chip)}
        >
          {chip}
        </button>
      ))}
    </fieldset>
  );
}
