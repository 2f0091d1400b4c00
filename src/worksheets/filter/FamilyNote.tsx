import { Note } from '../../design/Note.tsx';

/** What each family is for. */
const notes: Readonly<Record<string, readonly [title: string, text: string]>> = {
  butterworth: [
    'Butterworth',
    'Flat as long as it can be. Rings less than equal ripple, and its loss rounds the corners as they are round already: a good choice for few crystals or a low Q.',
  ],
  chebyshev: [
    'Chebyshev',
    'The steepest skirts for the number of crystals. A tenth of a decibel is hardly seen; a whole one rings, and wants the ends exact.',
  ],
  bessel: [
    'Bessel',
    'All tones come equally late, so data and telegraphy pass without ringing. The skirts are gentle: it needs a neighbour-free band, or another filter behind it.',
  ],
  linear005: [
    'Linear phase',
    'Nearly as even in delay as Bessel, over more of the passband, with somewhat steeper skirts.',
  ],
  linear05: [
    'Linear phase',
    'A phase that strays by half a degree buys steeper skirts than Bessel has, with hardly any ringing yet.',
  ],
  gaussian: [
    'Gaussian to 6 dB',
    'Rings least down to 6 dB and falls quickly from there: between Bessel and Butterworth. Used for telegraphy and for measuring.',
  ],
  equal: [
    'Equal capacitors',
    'One value for all, and the least loss for its skirts. From six crystals on, dips appear next to the edges.',
  ],
  doubled: [
    'Doubled ends',
    'Two crystals side by side at each end take away most of the dips of equal capacitors, and no mesh needs a series capacitor. It costs two crystals.',
  ],
};

/** A word on the family that is chosen. */
export function FamilyNote({ family }: { family: string | null }) {
  const note = notes[family ?? ''];
  if (!note) return null;
  return (
    <Note title={note[0]}>
      <p>{note[1]}</p>
    </Note>
  );
}
