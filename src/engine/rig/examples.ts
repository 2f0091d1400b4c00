import { type Entry, emptyRig, type Rig } from './document.ts';
import { exampleBags } from './exampleBags.ts';
import { exampleSweeps } from './exampleSweeps.ts';

/** A rig from plain texts by path, and from what an imagined bench measured. */
function example(
  title: string,
  notes: string,
  texts: Readonly<Record<string, string>>,
  measured: Readonly<Record<string, string>>,
): Rig {
  const entries: Record<string, Entry> = {};
  for (const [path, text] of Object.entries(texts)) entries[path] = { text };
  for (const [path, text] of Object.entries(measured)) entries[path] = { text, from: 'measured' };
  return { ...emptyRig(title), invented: true, notes, entries };
}

/** The worked examples. Invented: nobody built them. */
export const examples: readonly Rig[] = [
  example(
    'Forty-metre evening rig',
    'Invented example. Six crystals of 7.2 MHz, the carrier on their upper skirt: lower sideband, two watts from a 12 V supply.',
    {
      'plan.marking': '7.2M',
      'plan.sideband': 'lower',
      'plan.supply': '12',
      'plan.pep': '2',
      'quartz.fsGiven': '7.2M',
      'quartz.lmGiven': '30m',
      'quartz.c0Given': '4p',
      'quartz.quGiven': '70k',
      'filter.crystals': '6',
      'filter.bandwidth': '2400',
      'path.hour': '18h',
      'ends.sourceTuned': 'out',
      'ends.loadTuned': 'out',
      'yield.widthLeast': '2300',
      'yield.widthMost': '2500',
      'yield.rippleMost': '1',
    },
    { 'sweep.file': exampleSweeps.forty, 'bag.crystals': exampleBags.forty },
  ),
  example(
    'Twenty-metre upper-sideband rig',
    'Invented example. Crystals of 14.318 MHz with the carrier below the passband, on the shallow skirt: the harder of the two sidebands.',
    {
      'plan.marking': '14.318M',
      'plan.sideband': 'upper',
      'plan.supply': '13.8',
      'plan.pep': '2',
      'quartz.fsGiven': '14.318M',
      'quartz.lmGiven': '7.5m',
      'quartz.c0Given': '3p',
      'quartz.quGiven': '80k',
      'filter.crystals': '8',
      'filter.bandwidth': '2500',
      'transmit.amplifierDevice': 'n3904',
      'transmit.amplifierFeedback': '6k8',
      'transmit.driverBridged': '75',
      'path.distance': '2000k',
      'ends.sourceTuned': 'out',
      'ends.loadTuned': 'out',
      'yield.widthLeast': '2400',
      'yield.widthMost': '2600',
      'yield.rippleMost': '1',
    },
    { 'sweep.file': exampleSweeps.twenty, 'bag.crystals': exampleBags.twenty },
  ),
  example(
    'Eighty-metre rig that asks too much',
    'Invented example. Crystals of 3.6864 MHz are asked for 3 kHz and cannot: the Filter sheet shows why and what to change.',
    {
      'plan.marking': '3.6864M',
      'plan.sideband': 'lower',
      'plan.supply': '12',
      'plan.pep': '2',
      'quartz.fsGiven': '3.6864M',
      'quartz.lmGiven': '130m',
      'quartz.c0Given': '5.8p',
      'quartz.quGiven': '90k',
      'filter.crystals': '6',
      'filter.bandwidth': '3k',
      'path.hour': '20h',
    },
    { 'sweep.file': exampleSweeps.eighty, 'bag.crystals': exampleBags.eighty },
  ),
  example(
    'Forty-metre rig from nine-megahertz crystals',
    'Invented example. Six crystals of 9 MHz make the sideband, a second oscillator brings it to 40 m: the Carrier sheet has the leaves for conversion, band-pass and products.',
    {
      'plan.scheme': 'conversion',
      'plan.marking': '9M',
      'plan.frequency': '7.1M',
      'plan.sideband': 'lower',
      'plan.supply': '13.8',
      'plan.pep': '2',
      'quartz.fsGiven': '9M',
      'quartz.lmGiven': '14.5m',
      'quartz.c0Given': '3.8p',
      'quartz.quGiven': '90k',
      'filter.crystals': '6',
      'filter.bandwidth': '2400',
      'convert.span': '100k',
      'front.circuits': '3',
      'path.hour': '18h',
      'ends.sourceTuned': 'out',
      'ends.loadTuned': 'out',
      'yield.widthLeast': '2300',
      'yield.widthMost': '2500',
      'yield.rippleMost': '1',
    },
    {},
  ),
];
