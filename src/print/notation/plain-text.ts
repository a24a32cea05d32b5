/** Text from outside on its way into a notation: one line, and no sign that a page cannot hold. */

/** Control signs, line ends and the two signs that XML forbids become a space; half of a pair becomes the sign for what cannot be shown. */
export const plainText = (text: string): string =>
  text
    .replace(/\p{Surrogate}/gu, '\ufffd')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
    .replace(/[\u0000-\u001f\u007f-\u009f\u2028\u2029\ufffe\uffff]+/g, ' ');
