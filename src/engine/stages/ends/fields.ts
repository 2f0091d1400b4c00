import { declare } from '../../fields/declare.ts';
import { analyserResults, responseResults } from './responseFields.ts';
import { sideResults } from './sideFields.ts';
import { analyserInputs, sideInputs } from './sideInputs.ts';

/** What the filter is really fed from and works into, and how to make that right. */
export const endsFields = declare({
  key: 'ends',
  title: 'Ends',
  asks: 'Does the filter see at both ends what it wants?',
  inputs: { ...sideInputs, ...analyserInputs },
  results: { ...responseResults, ...sideResults, ...analyserResults },
});
