import type { SuggestAnswer } from '../../engine/errands/suggest/suggestAnswer.ts';
import { OfferedTable } from './OfferedTable.tsx';
import { TakeIt } from './TakeIt.tsx';

/** Where no network passes: what would help, and which fail by least. */
export function Unmet({ answer }: { answer: SuggestAnswer }) {
  if (answer.ranked.length > 0) return null;
  return (
    <>
      <p>
        <strong>None of the {answer.looked} networks passes in everything that is asked.</strong>
      </p>
      {answer.help.length > 0 && (
        <ul className="helps">
          {answer.help.map(({ says, offered }) => (
            <li key={says}>
              {says} {offered.words}. <TakeIt offered={offered} />
            </li>
          ))}
        </ul>
      )}
      <OfferedTable caption="Those allowed that fail by least" offered={answer.nearest} lacking />
    </>
  );
}
