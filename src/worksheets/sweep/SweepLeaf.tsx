import { SheetFrame } from '../bound/SheetFrame.tsx';

/** A leaf of its sheet. */
export function SweepLeaf() {
  return (
    <SheetFrame stage="sweep" lead={null}>
      {null}
    </SheetFrame>
  );
}
