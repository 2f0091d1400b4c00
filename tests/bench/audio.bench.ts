import { bench, describe } from 'vitest';
import { audioEdges } from '../../src/engine/circuit/audio/audioEdges.ts';
import { basebandFrequencies, basebandTaps } from '../../src/engine/circuit/audio/baseband.ts';
import { conditions } from '../../src/engine/circuit/audio/fading.ts';
import { hearOver } from '../../src/engine/circuit/audio/hearOver.ts';
import { waterfall } from '../../src/engine/circuit/audio/waterfall.ts';
import { couplings } from '../../src/engine/circuit/couplings.ts';
import { crystalOf } from '../../src/engine/circuit/crystal.ts';
import { ladderForWidth } from '../../src/engine/circuit/ladderForWidth.ts';
import { ladderResponse } from '../../src/engine/circuit/ladderResponse.ts';
import { voice } from '../../src/engine/circuit/speech/voice.ts';

describe('ten seconds of audio', () => {
  const rate = 16_000;
  const { ladder, band } = ladderForWidth(
    crystalOf(7.2e6, 30e-3, 80e3, 4e-12),
    couplings('chebyshev', 6, 0.2),
    { capacitorQ: 1000, stray: 0 },
    2400,
  );
  const frequency = basebandFrequencies(band.high + 250, rate);
  const gain = new Float64Array(frequency.length);
  const phase = new Float64Array(frequency.length);
  const audio = voice(10, rate, 1);
  bench('the voice made', () => void voice(10, rate, 1));
  bench('all that lies between microphone and ear', () => {
    ladderResponse(ladder, frequency, { gain, phase });
    const filter = basebandTaps(gain, phase);
    hearOver(audio, {
      rate,
      microphone: audioEdges(200, 4000, rate),
      sender: filter,
      final: { over: 3, knee: 2 },
      fading: conditions.moderate,
      noise: { ratio: 10, bandwidth: 2500, of: 'crest' },
      offTune: 50,
      receiver: filter,
      speaker: audioEdges(200, 3500, rate),
      seed: 1,
    });
  });
  bench('its picture', () => void waterfall(audio, rate, 1024, 4000, 400));
});
