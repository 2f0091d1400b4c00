import { useEffect } from 'react';
import { allLeaves, leafOf } from '../../engine/rig/leaves.ts';
import { stages } from '../../engine/rig/stages.ts';
import { type SheetKey, useBench } from '../../store/store.ts';

/**
 * Ties the address to the sheet shown: `#filter` opens a sheet, `#filter.bandwidth` also leads to
 * that field or result.
 */
export function useAddress(): void {
  const sheet = useBench((s) => s.sheet);
  useEffect(() => {
    followAddress();
    window.addEventListener('hashchange', followAddress);
    return () => window.removeEventListener('hashchange', followAddress);
  }, []);
  useEffect(() => {
    if (sheet !== useBench.getState().sheet || sheetIn(window.location.hash) === sheet) return;
    window.history.pushState(null, '', `#${sheet}`);
  }, [sheet]);
}

/** The leaf that an address names, or on which the field that it names stands; or null. */
function sheetIn(hash: string): SheetKey | null {
  const key = leafOf(decodeURIComponent(hash.slice(1)));
  return allLeaves.includes(key) ? (key as SheetKey) : null;
}

function followAddress(): void {
  const key = sheetIn(window.location.hash);
  if (key === null) return;
  const target = decodeURIComponent(window.location.hash.slice(1));
  const pointed = target.includes('.');
  if (useBench.getState().sheet !== key) {
    useBench.getState().show(key);
    if (!pointed) window.scrollTo(0, 0);
  }
  if (!pointed) return;
  if (isResult(target)) useBench.getState().openWorking(target);
  requestAnimationFrame(() => {
    const place = document.getElementById(target);
    for (
      let fold = place?.closest('details');
      fold;
      fold = fold.parentElement?.closest('details')
    ) {
      fold.open = true;
    }
    place?.scrollIntoView({ block: 'center' });
    place?.focus({ preventScroll: true });
  });
}

/** Does a path name a result, which opens to its workings, and not an entry? */
function isResult(path: string): boolean {
  const [key, name = ''] = path.split('.');
  return stages.some(({ fields }) => fields.key === key && name in fields.results);
}
