import { SheetFrame } from '../bound/SheetFrame.tsx';

export function BenchSheet() {
  return (
    <SheetFrame stage="bench" lead={null}>
      {null}
    </SheetFrame>
  );
}
