import { type ChangeEvent, type KeyboardEvent, type RefObject, useRef } from 'react';

/** What a text field for a quantity needs to know and tell, whatever its shape on the page. */
export interface Entry {
  /** The raw text, exactly as typed. */
  text: string;
  onText: (text: string) => void;
  /** Arrow keys: one step up or down, ten with Shift. */
  onStep?: ((direction: 1 | -1, coarse: boolean) => void) | undefined;
}

interface Wiring {
  ref: RefObject<HTMLInputElement | null>;
  /** Puts a piece of text where the caret is. */
  insert: (piece: string) => void;
  input: {
    ref: RefObject<HTMLInputElement | null>;
    type: 'text';
    value: string;
    autoComplete: 'off';
    autoCapitalize: 'off';
    autoCorrect: 'off';
    spellCheck: false;
    enterKeyHint: 'done';
    onChange: (event: ChangeEvent<HTMLInputElement>) => void;
    onKeyDown: (event: KeyboardEvent<HTMLInputElement>) => void;
  };
}

/** The wiring that every quantity field shares: plain text, arrow keys that step, prefix chips. */
export function useEntry({ text, onText, onStep }: Entry): Wiring {
  const ref = useRef<HTMLInputElement>(null);
  const insert = (piece: string) => {
    const at = ref.current?.selectionStart ?? text.length;
    const to = ref.current?.selectionEnd ?? at;
    onText(text.slice(0, at) + piece + text.slice(to));
    const caret = at + piece.length;
    requestAnimationFrame(() => ref.current?.setSelectionRange(caret, caret));
  };
  return {
    ref,
    insert,
    input: {
      ref,
      type: 'text',
      value: text,
      autoComplete: 'off',
      autoCapitalize: 'off',
      autoCorrect: 'off',
      spellCheck: false,
      enterKeyHint: 'done',
      onChange: (event) => onText(event.target.value),
      onKeyDown: (event) => {
        if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
        if (onStep === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
        event.preventDefault();
        onStep(event.key === 'ArrowUp' ? 1 : -1, event.shiftKey);
      },
    },
  };
}
