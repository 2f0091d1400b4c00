import { useBench } from '../../store/store.ts';
import './notes.css';

/** What the builder wants to remember of this rig; an example says here what it is meant to show. */
export function Notes() {
  const notes = useBench((s) => s.rig.notes ?? '');
  const note = useBench((s) => s.note);
  return (
    <div className="notes">
      <label htmlFor="rig-notes">Notes on this rig</label>
      <textarea
        id="rig-notes"
        rows={3}
        value={notes}
        placeholder="Where the crystals came from, what was changed and why"
        onChange={(event) => note(event.target.value)}
      />
    </div>
  );
}
