import { SheetFrame } from '../bound/SheetFrame.tsx';

export function OutputSheet() {
  return (
    <SheetFrame stage="output" lead={null}>
      {null}
    </SheetFrame>
  );
}
