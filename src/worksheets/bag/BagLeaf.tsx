import { SheetFrame } from '../bound/SheetFrame.tsx';

/** A leaf of its sheet. */
export function BagLeaf() {
  return (
    <SheetFrame stage="bag" lead={null}>
      {null}
    </SheetFrame>
  );
}
