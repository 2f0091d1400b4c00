import { useBench } from '../../store/store.ts';

/** Prints the leaf on the page, its sheet, or the whole rig: some hundred pages. */
export function PrintMenu() {
  return (
    <label className="menu-choice menu-print">
      <span className="unseen">Print</span>
      <select value="" onChange={(event) => print(event.target.value)}>
        <option value="" disabled>
          Print
        </option>
        <option value="leaf">This leaf</option>
        <option value="sheet">This sheet, all its leaves</option>
        <option value="rig">The whole rig, every leaf</option>
      </select>
    </label>
  );
}

/** Puts what is wanted on the page, prints it, and goes back to the one leaf. */
function print(what: string): void {
  if (what === 'leaf') {
    window.print();
    return;
  }
  useBench.getState().setPrinting(what === 'rig' ? 'rig' : 'sheet');
  // The charts are drawn once their places have a width.
  requestAnimationFrame(() =>
    setTimeout(() => {
      window.print();
      useBench.getState().setPrinting(null);
    }, 300),
  );
}
