import { SheetFrame } from '../bound/SheetFrame.tsx';

export function ReceiveSheet() {
  return (
    <SheetFrame stage="receive" lead={null}>
      {null}
    </SheetFrame>
  );
}
