import { SheetFrame } from '../bound/SheetFrame.tsx';

export function FilterSheet() {
  return (
    <SheetFrame stage="filter" lead={null}>
      {null}
    </SheetFrame>
  );
}
