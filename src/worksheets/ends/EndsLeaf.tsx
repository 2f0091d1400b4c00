import { SheetFrame } from '../bound/SheetFrame.tsx';

/** A leaf of its sheet. */
export function EndsLeaf() {
  return (
    <SheetFrame stage="ends" lead={null}>
      {null}
    </SheetFrame>
  );
}
