/** Class names, without the ones that do not apply. */
export function joined(...names: (string | false | undefined)[]): string {
  return names.filter(Boolean).join(' ');
}
