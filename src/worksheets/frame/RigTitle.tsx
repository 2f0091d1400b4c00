import { useBench } from '../../store/store.ts';

/** The rig's name, to be written over; an example says that it is invented. */
export function RigTitle() {
  const title = useBench((s) => s.rig.title);
  const invented = useBench((s) => s.rig.invented === true);
  const rename = useBench((s) => s.rename);
  return (
    <>
      <span className="brand">Monoband Bench</span>
      <input
        className="rig-title"
        aria-label="Name of this rig"
        value={title}
        onChange={(event) => rename(event.target.value)}
        size={Math.max(8, title.length)}
        autoComplete="off"
        spellCheck={false}
      />
      {invented && <span className="rig-invented">invented example</span>}
    </>
  );
}
