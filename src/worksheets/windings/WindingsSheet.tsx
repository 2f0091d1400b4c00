import { SheetFrame } from '../bound/SheetFrame.tsx';

export function WindingsSheet() {
  return (
    <SheetFrame stage="windings" lead={null}>
      {null}
    </SheetFrame>
  );
}
