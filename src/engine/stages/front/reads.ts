/** What the band-pass reads: the frequencies to keep and to part with, and its own entries. */
export const frontReads = {
  scheme: 'plan.scheme',
  nominal: 'plan.nominal?',
  carrier: 'carrier.frequency?',
  oscillator: 'convert.oscillator?',
  image: 'convert.image?',
  halfway: 'convert.halfway?',
  carrierLeft: 'convert.carrierLeft?',
  oscillatorLeft: 'convert.oscillatorLeft?',
  circuits: 'front.circuits',
  widthGiven: 'front.widthGiven?',
  coilGiven: 'front.coilGiven?',
  coilQ: 'front.coilQ',
  end: 'front.end',
  fitted: 'front.fitted',
  wanted: 'front.wanted',
} as const;
