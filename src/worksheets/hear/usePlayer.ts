import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { HearAnswer } from '../../engine/errands/hear/hearAnswer.ts';
import { Player, type Sounds } from './player.ts';

/** A player for an answer's sounds, of which one is heard. */
export function usePlayer(answer: HearAnswer | null, which: string) {
  const player = useRef<Player | null>(null);
  player.current ??= new Player();
  const [playing, setPlaying] = useState(false);
  const sounds = useMemo<Sounds>(
    () =>
      new Map(
        answer?.heard.flatMap(({ name, audio }) =>
          audio === null ? [] : [[name, audio] as const],
        ) ?? [],
      ),
    [answer],
  );
  useEffect(() => player.current?.choose(which), [which]);
  useEffect(() => {
    if (answer) player.current?.lay(sounds, answer.rate);
  }, [answer, sounds]);
  useEffect(() => () => player.current?.stop(), []);
  const toggle = () => {
    if (playing) player.current?.stop();
    else void player.current?.play();
    setPlaying(!playing);
  };
  const position = useCallback(() => player.current?.position() ?? null, []);
  return { playing, toggle, position, ready: sounds.size > 0 };
}
