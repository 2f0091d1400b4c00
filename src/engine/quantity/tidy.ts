const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/**
 * The many characters that people's keyboards, phones and PDF files have for one thing, brought to
 * one: spaces, minus, apostrophe, micro, ohm, powers of ten, full-width digits.
 */
export function tidy(text: string): string {
  return (
    text
      // Powers of ten first: the next step would lower the exponent to plain digits.
      .replace(/\s*[×·x*]\s*10([⁻⁺]?)([⁰¹²³⁴⁵⁶⁷⁸⁹]+)/g, (_, sign: string, digits: string) => {
        const plain = [...digits].map((digit) => raised.indexOf(digit)).join('');
        return `e${sign === '⁻' ? '-' : ''}${plain}`;
      })
      .replace(/(?<=[\d)])([²³])/g, (_, power: string) => (power === '²' ? '^2' : '^3'))
      .normalize('NFKC')
      .replace(/μ/g, 'µ')
      .replace(/[\u2010-\u2015\u2212]/g, '-')
      .replace(/[\u2018\u2019\u02bc\u00b4`]/g, "'")
      .replace(/\u2044/g, '/')
      .replace(/[×·⋅]/g, '*')
      .replace(/∥/g, '||')
      .replace(/(?<=[\d\p{L}]) ?x ?(?=\d)/gu, '*')
      .replace(/[\u200b\u200e\u200f\ufeff]/g, '')
      .replace(/\s+/g, ' ')
      .trim()
  );
}
