import { SheetFrame } from '../bound/SheetFrame.tsx';

export function CarrierSheet() {
  return (
    <SheetFrame stage="carrier" lead={null}>
      {null}
    </SheetFrame>
  );
}
