import { Button } from '../../design/Button.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { fileName, saveBlob } from '../../design/saveBlob.ts';
import type { Ladder } from '../../engine/circuit/ladder.ts';
import { format } from '../../engine/quantity/format.ts';
import { netlist } from '../../paper/netlist.ts';
import { type ResponseCurve, responseCsv } from '../../paper/responseCsv.ts';
import { touchstoneOf } from '../../paper/touchstoneOf.ts';
import { useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import './takeAway.css';

/** Points of the sweep that the netlist asks for. */
const POINTS = 401;

/** The filter as fitted, for other programs: nothing is shown, files are saved. */
export function TakeAway() {
  const ladder = useValue<Ladder>('filter.ladder');
  const response = useValue<ResponseCurve>('filter.response');
  const ends = useValue<number>('filter.ends');
  const title = useBench((s) => s.rig.title);
  if (ladder === null || response === null || ends === null) return null;
  const { frequency } = response;
  const from = frequency[0] ?? 0;
  const to = frequency[frequency.length - 1] ?? 0;
  const save = (what: string, ending: string, text: string) =>
    saveBlob(fileName(`${title} ${what}`, ending), new Blob([text], { type: 'text/plain' }));
  const touchstone = (reference: number, what: string) =>
    save(what, 's2p', touchstoneOf(ladder, { title, frequency, reference }));
  return (
    <Section title="Take it away" margin={<AsFitted />}>
      <p className="take-away">
        <Button
          label="Runs in ngspice and its kin as it is"
          onPress={() =>
            save('filter', 'cir', netlist(ladder, { title, from, to, points: POINTS }))
          }
        >
          SPICE netlist
        </Button>
        <Button
          label="All four parameters, port 1 at the source"
          onPress={() => touchstone(50, '50 ohm')}
        >
          Touchstone at 50 Ω
        </Button>
        <Button
          label="Referred to the ends that the filter is designed for"
          onPress={() => touchstone(Number(ends.toPrecision(6)), 'own ends')}
        >
          Touchstone at {format(ends, 'Ω', 3)}
        </Button>
        <Button
          label="Gain, delay and return loss against frequency"
          onPress={() => save('response', 'csv', responseCsv(response))}
        >
          Response as CSV
        </Button>
      </p>
    </Section>
  );
}

function AsFitted() {
  return (
    <Note title="As fitted">
      <p>
        The files hold the parts that are fitted, strays and losses included, not the exact design.
        The Touchstone file is the filter alone; the netlist has its ends too.
      </p>
    </Note>
  );
}
