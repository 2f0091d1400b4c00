import { memo, useEffect, useMemo } from 'react';
import { SoundChart, type SoundChartProps } from '../../design/chart/SoundChart.tsx';
import { Problem } from '../../design/Problem.tsx';
import type { HearAnswer, Heard } from '../../engine/errands/hear/hearAnswer.ts';
import type { HearBeside } from '../../engine/errands/hear/hearWork.ts';
import type { PowerAnswer } from '../../engine/errands/power/powerAnswer.ts';
import { layBeside, useErrand } from '../../store/errands.ts';
import { useHear } from '../../store/hear.ts';
import { useValue } from '../../store/hooks.ts';
import { Errand } from '../bound/Errand.tsx';
import { Player } from './player.ts';
import { usePlayer } from './usePlayer.ts';

/** Pause after the last change before the sound is made anew, ms. */
const PAUSE = 250;
const FINAL_PAUSE = 600;

/** Makes the sounds, plays them, and shows the one that is heard. */
export function Listen() {
  const own = useHear((s) => s.own);
  const final = useValue<string>('hear.final');
  const { answer: power } = useErrand<PowerAnswer>(
    'power',
    final === 'exact' ? { auto: FINAL_PAUSE } : {},
  );
  const curve = power?.found?.overDrive ?? null;
  const beside = useMemo<HearBeside>(
    () => ({ audio: own?.samples ?? null, final: final === 'exact' ? curve : null }),
    [own, final, curve],
  );
  useEffect(() => layBeside('hear', beside), [beside]);
  const errand = useErrand<HearAnswer>('hear', { auto: PAUSE });
  const { answer } = errand;
  const which = useHear((s) => s.which);
  const { playing, toggle, position, ready } = usePlayer(answer, which);
  const shown = answer?.heard.find(({ name }) => name === which) ?? answer?.heard[1] ?? null;
  return (
    <>
      <Errand of={errand} what="The sound through each filter" run="Make the sound" />
      <div className="player">
        <button
          type="button"
          className="player__play"
          aria-pressed={playing}
          disabled={!ready || !Player.able}
          onClick={toggle}
        >
          <svg viewBox="0 0 18 18" aria-hidden="true">
            {playing ? <path d="M2 2h14v14H2z" /> : <path d="M3 1v16l14-8z" />}
          </svg>
          {playing ? 'Stop' : 'Listen'}
        </button>
        <Which answer={answer} />
      </div>
      {!Player.able && (
        <Problem weight="warns" says="This browser can’t play sound; the pictures show it." />
      )}
      {answer && shown && <Shown answer={answer} of={shown} position={position} />}
    </>
  );
}

const nameOf = (name: Heard['name']): string =>
  name === '0' ? 'As spoken' : name === 'A' ? 'A, the present filter' : `Filter ${name}`;

/** Which of the sounds is heard. */
function Which({ answer }: { answer: HearAnswer | null }) {
  const which = useHear((s) => s.which);
  const choose = useHear((s) => s.choose);
  return (
    <fieldset className="player__which">
      <legend className="unseen">What is heard</legend>
      {(answer?.heard ?? []).map(({ name, audio }) => (
        <label key={name}>
          <input
            type="radio"
            name="heard"
            checked={which === name}
            disabled={audio === null}
            onChange={() => choose(name)}
          />
          {nameOf(name)}
        </label>
      ))}
    </fieldset>
  );
}

interface ShownProps {
  answer: HearAnswer;
  of: Heard;
  position: () => number | null;
}

/** The sound as a picture. */
const Shown = memo(function Shown({ answer, of, position }: ShownProps) {
  const chart = useMemo(() => drawn(answer, of), [answer, of]);
  return (
    <>
      {of.says.map((says) => (
        <Problem key={says} weight="warns" says={says} />
      ))}
      {chart && <SoundChart {...chart} position={position} />}
    </>
  );
});

function drawn({ seconds }: HearAnswer, { name, picture }: Heard): SoundChartProps | null {
  if (picture === null) return null;
  return {
    title: name === '0' ? 'The voice as it is spoken' : `What is heard: ${nameOf(name)}`,
    summary: 'Time along, pitch upwards, the darker the stronger, down to 45 dB.',
    seconds,
    moments: picture.moments,
    frequencies: picture.frequencies,
    step: picture.step,
    level: picture.level,
    xName: 'seconds',
    yName: 'audio, Hz',
  };
}
