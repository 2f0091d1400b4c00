import { readRigFile, writeRigFile } from '../engine/rig/file.ts';
import { type BenchState, useBench } from './store.ts';

const RIG = 'monoband-bench.rig';
const PREFERENCES = 'monoband-bench.preferences';
const UNREADABLE = 'monoband-bench.unreadable';

/**
 * Opens what was kept last time and keeps every change from now on.
 * What cannot be read is put aside under another name, and the user is told: it is never overwritten.
 * Answers a function that writes at once, for when the page goes away.
 */
export function keepRig(storage: Storage | null): () => void {
  if (!storage) {
    useBench.getState().tell({
      weight: 'bad',
      says: 'This browser keeps nothing for this page. Save the rig as a file before you leave.',
    });
    return () => {};
  }
  if (!restore(storage)) return () => {};
  let kept = useBench.getState().rig;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const write = () => {
    clearTimeout(timer);
    timer = undefined;
    const { rig } = useBench.getState();
    if (rig === kept) return;
    if (attempt(() => storage.setItem(RIG, writeRigFile(rig)))) kept = rig;
    else {
      useBench.getState().tell({
        weight: 'bad',
        says: 'The browser has no room to keep this rig. Save it as a file.',
      });
    }
  };
  useBench.subscribe((now, old) => {
    if (now.rig !== old.rig) timer ??= setTimeout(write, 300);
    if (now.view !== old.view || now.scheme !== old.scheme) {
      const { view, scheme } = now;
      attempt(() => storage.setItem(PREFERENCES, JSON.stringify({ view, scheme })));
    }
  });
  return write;
}

/** Opens what was kept; false where nothing may be written, lest it destroy what could not be read. */
function restore(storage: Storage): boolean {
  const state = useBench.getState();
  const preferences = readPreferences(storage);
  if (preferences.view) state.setView(preferences.view);
  if (preferences.scheme) state.setScheme(preferences.scheme);

  const text = storage.getItem(RIG);
  if (text === null) return true;
  const reading = readRigFile(text);
  if (reading.ok) {
    useBench.setState({ rig: reading.rig, before: reading.rig });
    return true;
  }
  const aside = `${UNREADABLE}.${Date.now()}`;
  const safe = attempt(() => storage.setItem(aside, text));
  state.tell({
    weight: 'bad',
    says: safe
      ? `The rig kept here last time could not be read. It is put aside as “${aside}”, untouched.`
      : 'The rig kept here last time could not be read. It stays as it is, so nothing else is kept: save your work as a file.',
    reasons: reading.reasons,
  });
  return safe;
}

function readPreferences(storage: Storage): Partial<Pick<BenchState, 'view' | 'scheme'>> {
  const found: { view?: BenchState['view']; scheme?: BenchState['scheme'] } = {};
  attempt(() => {
    const data: unknown = JSON.parse(storage.getItem(PREFERENCES) ?? '{}');
    if (typeof data !== 'object' || data === null) return;
    const { view, scheme } = data as Record<string, unknown>;
    if (view === 'desk' || view === 'projector') found.view = view;
    if (scheme === 'auto' || scheme === 'light' || scheme === 'dark') found.scheme = scheme;
  });
  return found;
}

function attempt(act: () => void): boolean {
  try {
    act();
    return true;
  } catch {
    return false;
  }
}
