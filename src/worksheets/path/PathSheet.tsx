import { SheetFrame } from '../bound/SheetFrame.tsx';

export function PathSheet() {
  return (
    <SheetFrame stage="path" lead={null}>
      {null}
    </SheetFrame>
  );
}
