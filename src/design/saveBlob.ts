/** Hands a file to the person: it goes where the browser puts what is saved. */
export function saveBlob(name: string, what: Blob): void {
  const link = document.createElement('a');
  const address = URL.createObjectURL(what);
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** A file's name from words: letters and digits of any script, dashes between. */
export const fileName = (words: string, ending: string): string =>
  `${words.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || 'rig'}.${ending}`;
