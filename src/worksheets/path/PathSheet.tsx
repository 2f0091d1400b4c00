import { useValue } from '../../store/hooks.ts';
import { SheetFrame } from '../bound/SheetFrame.tsx';
import { Read, Write } from '../bound/Write.tsx';
import { AlongGround } from './AlongGround.tsx';
import { Arrival } from './Arrival.tsx';
import { BothWays } from './BothWays.tsx';
import { Ends } from './Ends.tsx';
import { Exposure } from './Exposure.tsx';
import { Losses } from './Losses.tsx';
import { Report } from './Report.tsx';
import { Sight } from './Sight.tsx';
import { Sky } from './Sky.tsx';

const ways: Readonly<Record<string, string>> = {
  skyWave: 'by the ionosphere',
  lineOfSight: 'in line of sight',
  twoRay: 'in line of sight',
  groundWave: 'along the ground',
};

/** From the antenna to the other operator's ear, by the layer or in sight. */
export function PathSheet() {
  const route = useValue<string>('path.route');
  const sky = route === 'skyWave';
  const arrives = useValue<number>('path.received') !== null;
  return (
    <SheetFrame
      stage="path"
      main={<Report />}
      lead={
        arrives ? (
          <>
            Over <Write of="path.distance" /> {ways[route ?? 'skyWave']},{' '}
            <Read of="output.pepAntenna" or="the power wanted" /> arrive as{' '}
            <Read of="path.report" or="nothing" />, <Read of="path.snr" or="an unknown margin" />{' '}
            over the noise there, give or take <Write of="path.spread" /> at the least.
          </>
        ) : (
          <>
            Over <Write of="path.distance" /> {ways[route ?? 'skyWave']} nothing arrives as things
            stand.
          </>
        )
      }
    >
      <Arrival />
      {sky && <Sky />}
      {(route === 'lineOfSight' || route === 'twoRay') && <Sight />}
      {route === 'groundWave' && <AlongGround />}
      <Losses />
      <BothWays />
      <Ends />
      <Exposure />
    </SheetFrame>
  );
}
