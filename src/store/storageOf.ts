/** The browser's storage for this page, or null where it is forbidden or missing. */
export function storageOf(view: { readonly localStorage: Storage }): Storage | null {
  try {
    const { localStorage } = view;
    localStorage.setItem('monoband-bench.probe', '1');
    localStorage.removeItem('monoband-bench.probe');
    return localStorage;
  } catch {
    return null;
  }
}
