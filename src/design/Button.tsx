import type { ReactNode } from 'react';
import { joined } from './joined.ts';

interface ButtonProps {
  children: ReactNode;
  onPress: () => void;
  /** A tip that says more than the word on the button. */
  label?: string;
  /** `strong`: the one thing to do here. */
  kind?: 'plain' | 'strong';
  pressed?: boolean;
  disabled?: boolean;
}

/** A word to press: no box, a copper line under it. */
export function Button({
  children,
  onPress,
  label,
  kind = 'plain',
  pressed,
  disabled,
}: ButtonProps) {
  return (
    <button
      type="button"
      className={joined('button', kind === 'strong' && 'button--strong')}
      onClick={onPress}
      title={label}
      aria-pressed={pressed}
      disabled={disabled}
    >
      {children}
    </button>
  );
}
