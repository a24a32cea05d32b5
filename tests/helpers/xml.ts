/** Is this text well-formed, as far as the figures use XML: tags that close in order, quoted attributes, known entities, no forbidden sign. */

const entity = /&(?!(?:amp|lt|gt|quot|#39);)/;
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the signs that XML forbids
const forbidden = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|\p{Cs}/u;

/** Reads one tag at the start of a text, keeps what is open, and gives back how long it was; nothing where there is no tag. */
function readTag(rest: string, open: string[], faults: string[]): number | undefined {
  const tag = /^<(\/?)([A-Za-z][\w-]*)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>/.exec(rest);
  if (tag === null) return undefined;
  const [whole, closes, name = '', attributes = '', alone] = tag;
  if (entity.test(attributes)) faults.push(`a bare ampersand in <${name}>`);
  if (closes === '/' && open.pop() !== name) faults.push(`</${name}> closes nothing`);
  if (closes !== '/' && alone !== '/') open.push(name);
  return whole.length;
}

/** What is wrong with it; nothing when it is well-formed. */
export function faultsOfXml(text: string): readonly string[] {
  const faults: string[] = [];
  const open: string[] = [];
  if (forbidden.test(text)) faults.push('a sign that XML forbids');
  for (let at = 0; at < text.length; ) {
    const next = text.indexOf('<', at);
    const words = next === -1 ? text.slice(at) : text.slice(at, next);
    if (entity.test(words) || words.includes('>')) faults.push(`not escaped: ${words.slice(0, 40)}`);
    if (next === -1) break;
    const length = readTag(text.slice(next), open, faults);
    if (length === undefined) return [...faults, `no tag: ${text.slice(next, next + 40)}`];
    at = next + length;
  }
  return open.length === 0 ? faults : [...faults, `<${open.at(-1)}> stays open`];
}
