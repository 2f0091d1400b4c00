import { choice, pasted } from '../../fields/declare.ts';

/** Which crystals of the bag stand in the filter. */
export const crystalInputs = {
  chosen: pasted({
    label: 'Crystals, from source to load',
    longest: 400,
    help: 'Labels from the bag in the order of their places: 7 12 3 9 1 22. Blank: all alike, as Quartz has them.',
  }),
  aligning: choice({
    label: 'Unlike crystals are aligned',
    options: {
      design: 'by the series capacitors of the design only',
      each: 'by a series capacitor for each crystal',
    },
    default: 'design',
    help: 'A capacitor of its own brings each mesh to the same frequency. With crystals that match within a tenth of the width it is not worth its trouble.',
  }),
};
