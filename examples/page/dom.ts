/** Elements made without markup text, so that typed text is never read as HTML. */

type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/** An element with attributes and children; `true` sets an attribute, `false` and `undefined` leave it out. */
export function h<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes))
    if (value !== undefined && value !== false) made.setAttribute(name, value === true ? '' : String(value));
  made.append(...children);
  return made;
}

/** An element of the page by its id. */
export function byId(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no ${id}`);
  return found;
}

const reader = new DOMParser();

/** A figure as an element: read as XML, in which a script would not run and a typed name is text. */
export function figure(svg: string): Element {
  const read = reader.parseFromString(svg, 'image/svg+xml').documentElement;
  return document.importNode(read, true);
}

/** Puts children in place of what was there. */
export const fill = (parent: Element, ...children: readonly (Node | string)[]): void =>
  parent.replaceChildren(...children);
