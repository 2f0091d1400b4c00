/** The old value where the new one equals it, so that what is unchanged stays the same object. */
export function keep<T>(old: unknown, fresh: T): T {
  return same(old, fresh) ? (old as T) : fresh;
}

function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (a instanceof Float64Array || b instanceof Float64Array) {
    return a instanceof Float64Array && b instanceof Float64Array && sameArray(a, b);
  }
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const left = a as Record<string, unknown>;
  const right = b as Record<string, unknown>;
  const keys = Object.keys(left);
  if (keys.length !== Object.keys(right).length) return false;
  for (const key of keys) if (!same(left[key], right[key])) return false;
  return true;
}

function sameArray(a: Float64Array, b: Float64Array): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i += 1) if (!Object.is(a[i], b[i])) return false;
  return true;
}
