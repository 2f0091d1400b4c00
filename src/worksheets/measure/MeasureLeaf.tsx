import { SheetFrame } from '../bound/SheetFrame.tsx';

/** A leaf of its sheet. */
export function MeasureLeaf() {
  return (
    <SheetFrame stage="measure" lead={null}>
      {null}
    </SheetFrame>
  );
}
