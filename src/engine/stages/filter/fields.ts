import { declare } from '../../fields/declare.ts';
import { crystalInputs } from './crystalInputs.ts';
import { designResults } from './designFields.ts';
import { endResults } from './endFields.ts';
import { endInputs } from './endInputs.ts';
import { figureResults } from './figureFields.ts';
import { formResults } from './formFields.ts';
import { partResults } from './partFields.ts';
import { partInputs } from './partInputs.ts';
import { placeResults } from './placeFields.ts';
import { reachResults } from './reachFields.ts';
import { responseResults } from './responseFields.ts';
import { shapeInputs } from './shapeInputs.ts';

/** The crystal ladder: what was asked for, the parts that make it, and what they really do. */
export const filterFields = declare({
  key: 'filter',
  title: 'Filter',
  asks: 'Which parts make the filter, and what does it do?',
  inputs: { ...shapeInputs, ...crystalInputs, ...partInputs, ...endInputs },
  results: {
    ...figureResults,
    ...designResults,
    ...formResults,
    ...partResults,
    ...placeResults,
    ...endResults,
    ...reachResults,
    ...responseResults,
  },
});
