import { SheetFrame } from '../bound/SheetFrame.tsx';

export function TransmitSheet() {
  return (
    <SheetFrame stage="transmit" lead={null}>
      {null}
    </SheetFrame>
  );
}
