import { useValue } from '../../store/hooks.ts';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read, Write } from '../bound/Write.tsx';
import { Arrival } from './Arrival.tsx';
import { Exposure } from './Exposure.tsx';
import { Losses } from './Losses.tsx';
import { Report } from './Report.tsx';
import { Sight } from './Sight.tsx';
import { Sky } from './Sky.tsx';

/** From the antenna to the other operator's ear, by the layer or in sight. */
export function PathSheet() {
  const sky = useValue<string>('path.route') === 'skyWave';
  return (
    <SheetFrame
      stage="path"
      main={<Report />}
      lead={
        <>
          Over <Write of="path.distance" /> {sky ? 'by the F2 layer' : 'in line of sight'},{' '}
          <Read of="output.pepAntenna" or="the power wanted" /> arrive as{' '}
          <Read of="path.report" or="nothing" />, <Read of="path.snr" or="an unknown distance" />{' '}
          over the noise there, give or take <Write of="path.spread" /> at the least.
        </>
      }
    >
      <Arrival />
      {sky ? <Sky /> : <Sight />}
      <Losses />
      <Exposure />
    </SheetFrame>
  );
}
