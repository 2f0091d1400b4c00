import { create } from 'zustand';
import { type Entry, emptyRig, type Rig, withEntry } from '../engine/rig/document.ts';
import { examples } from '../engine/rig/examples.ts';
import { readRigFile } from '../engine/rig/file.ts';

/** One document of the past or future, and what was done to leave it. */
interface Step {
  readonly rig: Rig;
  readonly label: string;
  /** Edits of one field that follow each other are one step. */
  readonly path: string | null;
}

export type SheetKey =
  | 'plan'
  | 'quartz'
  | 'measure'
  | 'sweep'
  | 'bag'
  | 'filter'
  | 'ends'
  | 'yield'
  | 'compare'
  | 'carrier'
  | 'drift'
  | 'convert'
  | 'front'
  | 'products'
  | 'transmit'
  | 'amplifiers'
  | 'power'
  | 'supply'
  | 'output'
  | 'suggest'
  | 'mismatch'
  | 'windings'
  | 'transformers'
  | 'cores'
  | 'receive'
  | 'loudness'
  | 'strong'
  | 'path'
  | 'antenna'
  | 'feed'
  | 'day'
  | 'hear'
  | 'speech'
  | 'bench';

/** A message about opening, saving or losing something. */
export interface Notice {
  readonly weight: 'good' | 'bad';
  readonly says: string;
  readonly reasons?: readonly string[];
}

/** The document, its undo, and the state of the screen. Nothing here can be derived. */
export interface BenchState {
  /** Saved: the rig as it stands. */
  readonly rig: Rig;
  /** Not saved: the rig before the last change, for showing what moved. */
  readonly before: Rig;
  /** Not saved. */
  readonly past: readonly Step[];
  /** Not saved. */
  readonly future: readonly Step[];
  /** In the address: which sheet is open, and which leaf of it. */
  readonly sheet: SheetKey;
  /** Saved as a preference. */
  readonly view: 'desk' | 'projector';
  /** Saved as a preference. */
  readonly scheme: 'auto' | 'light' | 'dark';
  /** Not saved: whether whole expressions can be read yet. */
  readonly reader: 'plain' | 'full';
  /** Not saved. */
  readonly notice: Notice | null;
  /** Not saved: the leaves of a sheet, or of the whole rig, are on the page, for paper. */
  readonly printing: 'sheet' | 'rig' | null;
  /** Not saved: path of the result whose workings are open. */
  readonly open: { readonly path: string; readonly index: number } | null;

  say(path: string, label: string, text: string, from?: Entry['from']): void;
  /**
   * Several fields at once, as one step: what an answer offers and a person takes over. With the
   * path of one of them, edits that follow each other are one step, as those of a field are.
   */
  sayAll(texts: Readonly<Record<string, string>>, label: string, path?: string): void;
  rename(title: string): void;
  note(notes: string): void;
  undo(): void;
  redo(): void;
  openRig(rig: Rig, label: string): void;
  openText(text: string, name: string): void;
  newRig(): void;
  show(sheet: SheetKey): void;
  setView(view: BenchState['view']): void;
  setScheme(scheme: BenchState['scheme']): void;
  setReader(reader: BenchState['reader']): void;
  tell(notice: Notice | null): void;
  openWorking(path: string | null, index?: number): void;
  setPrinting(printing: 'sheet' | 'rig' | null): void;
}

const DEEPEST_UNDO = 200;

export const firstRig: Rig = examples[0] ?? emptyRig();

export const useBench = create<BenchState>()((set, get) => {
  const change = (rig: Rig, label: string, path: string | null) => {
    const { rig: old, past } = get();
    if (rig === old) return;
    const last = past.at(-1);
    const goesOn = path !== null && last?.path === path;
    const step: Step = { rig: old, label, path };
    set({
      rig,
      before: goesOn ? last.rig : old,
      past: goesOn ? past : [...past.slice(-DEEPEST_UNDO), step],
      future: [],
    });
  };
  return {
    rig: firstRig,
    before: firstRig,
    past: [],
    future: [],
    sheet: 'plan',
    view: 'desk',
    scheme: 'auto',
    reader: 'plain',
    notice: null,
    printing: null,
    open: null,

    say: (path, label, text, from) => change(withEntry(get().rig, path, text, from), label, path),
    sayAll: (texts, label, path) => {
      const says = Object.entries(texts);
      const rig = says.reduce((now, [path, text]) => withEntry(now, path, text), get().rig);
      change(rig, label, path ?? null);
    },
    rename: (title) => change({ ...get().rig, title: title.slice(0, 200) }, 'Title', 'title'),
    note: (notes) => change({ ...get().rig, notes: notes.slice(0, 20_000) }, 'Notes', 'notes'),
    undo: () => {
      const { rig, past, future } = get();
      const step = past.at(-1);
      if (!step) return;
      set({
        rig: step.rig,
        before: rig,
        past: past.slice(0, -1),
        future: [...future, { ...step, rig }],
      });
    },
    redo: () => {
      const { rig, past, future } = get();
      const step = future.at(-1);
      if (!step) return;
      set({
        rig: step.rig,
        before: rig,
        past: [...past, { ...step, rig }],
        future: future.slice(0, -1),
      });
    },
    openRig: (rig, label) => {
      change(rig, label, null);
      set({ before: rig, open: null });
    },
    openText: (text, name) => {
      const reading = readRigFile(text);
      if (!reading.ok) {
        const says = `“${name}” was not opened; nothing has changed.`;
        set({ notice: { weight: 'bad', says, reasons: reading.reasons } });
        return;
      }
      get().openRig(reading.rig, `Open ${name}`);
      set({ notice: { weight: 'good', says: `“${reading.rig.title}” is open.` } });
    },
    newRig: () => get().openRig(emptyRig(), 'New rig'),
    show: (sheet) => set({ sheet, open: null }),
    setView: (view) => set({ view }),
    setScheme: (scheme) => set({ scheme }),
    setReader: (reader) => set({ reader }),
    setPrinting: (printing) => set({ printing }),
    tell: (notice) => set({ notice }),
    openWorking: (path, index = 0) => set({ open: path === null ? null : { path, index } }),
  };
});
