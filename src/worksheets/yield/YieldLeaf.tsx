import { SheetFrame } from '../bound/SheetFrame.tsx';

/** A leaf of its sheet. */
export function YieldLeaf() {
  return (
    <SheetFrame stage="yield" lead={null}>
      {null}
    </SheetFrame>
  );
}
