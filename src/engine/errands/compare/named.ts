/** The same reads under other names, where two sheets have names in common. */
type Named<P extends string, R> = { readonly [K in keyof R & string as `${P}${K}`]: R[K] };

export const named = <const P extends string, R extends Readonly<Record<string, string>>>(
  prefix: P,
  reads: R,
): Named<P, R> =>
  Object.fromEntries(
    Object.entries(reads).map(([name, path]) => [`${prefix}${name}`, path]),
  ) as Named<P, R>;

/** What stands under a prefix, with its own names again. */
export const under = (prefix: string, seen: object) =>
  Object.fromEntries(
    Object.entries(seen).flatMap(([name, value]) =>
      name.startsWith(prefix) ? [[name.slice(prefix.length), value]] : [],
    ),
  );
