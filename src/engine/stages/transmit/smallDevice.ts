import { type Transistor, type TransistorKey, transistors } from '../../data/devices.ts';
import type { Look } from '../../fields/workings.ts';
import { ownSmallInputs } from './ownSmallInputs.ts';

/** A small stage's transistor: one of the list, or the user's own. */
export type SmallKey = TransistorKey | 'own';

type OwnKey = keyof typeof ownSmallInputs;
export type OwnSheet = Readonly<Record<OwnKey, number>>;

const keys = Object.keys(ownSmallInputs) as OwnKey[];

/** Reverse voltage of the emitter at which its capacitance is asked for, V. */
const CIB_AT = 0.5;
/** Junction that silicon in plastic bears, K: a limit of nearly all data sheets. */
const JUNCTION = 273.15 + 150;

/** The transistor of a small stage; the same object for the same figures. */
export function smallDevice(key: SmallKey, own: OwnSheet): Transistor {
  if (key !== 'own') return transistors[key];
  if (!last || keys.some((one) => last?.sheet[one] !== own[one])) {
    last = {
      sheet: Object.fromEntries(keys.map((one) => [one, own[one]])) as OwnSheet,
      made: made(own),
    };
  }
  return last.made;
}

let last: { readonly sheet: OwnSheet; readonly made: Transistor } | null = null;

/** The same for a working. */
export function deviceAt(look: Look, path: string): Transistor {
  const key = (look(path) as SmallKey | null) ?? 'n2222';
  if (key !== 'own') return transistors[key];
  const own = Object.fromEntries(keys.map((one) => [one, Number(look(`transmit.${one}`))]));
  return smallDevice(key, own as OwnSheet);
}

const made = (own: OwnSheet): Transistor => ({
  name: 'My own',
  package: '',
  vceo: own.ownSmallVceo,
  ic: Number.POSITIVE_INFINITY,
  powerAmbient: (JUNCTION - 298.15) / own.ownSmallToAmbient,
  powerCase: null,
  junction: JUNCTION,
  toAmbient: own.ownSmallToAmbient,
  toCase: null,
  ft: own.ownSmallTransit,
  hfe: [own.ownSmallHfeLeast, own.ownSmallHfe],
  cob: own.ownSmallCob,
  base: own.ownSmallBase,
  small: {
    hfeMost: own.ownSmallHfeMost,
    ftAt: [own.ownSmallTransitAmps, own.ownSmallTransitVolts],
    cobAt: own.ownSmallCobVolts,
    cib: [own.ownSmallCib, CIB_AT],
    vbe: [own.ownSmallVbe, own.ownSmallVbeAmps],
    early: own.ownSmallEarly,
    source: 'your own data sheet, as typed',
  },
  source: 'your own data sheet, as typed',
});
