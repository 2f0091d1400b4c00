import { SheetFrame } from '../bound/SheetFrame.tsx';

/** A leaf of its sheet. */
export function CompareLeaf() {
  return (
    <SheetFrame stage="compare" lead={null}>
      {null}
    </SheetFrame>
  );
}
