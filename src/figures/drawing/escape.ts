/** Text made safe for an SVG: total, whatever a name in a spec contains. */

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Control characters, lone surrogates, noncharacters and marks that turn the reading direction around: no XML text may hold the first three, no label needs the last. */
const unprintable = /[\p{Cc}\p{Cs}\uFFFE\uFFFF\u202A-\u202E\u2066-\u2069]/gu;

/** Replaces what XML cannot hold and escapes what it reads as markup; fit for text and for attributes in double quotes. */
export const escaped = (text: string): string =>
  text.replace(unprintable, ' ').replace(/[&<>"']/g, (sign) => entities[sign] ?? sign);

/** A name allowed in an `id`: letters, digits, hyphen, underscore, a letter first. */
export function safeId(prefix: string): string {
  const kept = prefix.replace(/[^A-Za-z0-9_-]/g, '');
  return /^[A-Za-z]/.test(kept) ? kept : `figure${kept}`;
}
