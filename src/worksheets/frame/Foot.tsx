/** What stands at the foot of every page. */
export function Foot() {
  return (
    <>
      <p>
        Planning figures, with their sources beside them. Local rules, the licence and a measurement
        decide; the operator answers for the station.
      </p>
      <p>
        Everything is worked out and kept in this browser; nothing is sent anywhere. Save the rig as
        a file to keep it safe.
      </p>
    </>
  );
}
