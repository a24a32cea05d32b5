/** Links of a static site that lead nowhere: to a file that is not there, or to a heading that its page has not. */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { filesUnder } from './files.js';

export interface DeadLink {
  readonly page: string;
  readonly link: string;
}

const decoded = (text: string): string => {
  try {
    return decodeURIComponent(text.replaceAll('&amp;', '&'));
  } catch {
    return text;
  }
};

/** Every link of a page: where it leads, images and their wide and narrow forms included. Text inside a script is not a link. */
function linksOf(html: string): readonly string[] {
  const markup = html.replace(/<script\b[\s\S]*?<\/script>/g, (script) => script.slice(0, script.indexOf('>') + 1));
  const single = [...markup.matchAll(/\s(?:href|src)="([^"]*)"/g)].map(([, link]) => link ?? '');
  const sets = [...markup.matchAll(/\ssrcset="([^"]*)"/g)].flatMap(([, set]) =>
    (set ?? '').split(',').map((each) => each.trim().split(/\s+/)[0] ?? ''),
  );
  return [...single, ...sets];
}

const idsOf = (html: string): ReadonlySet<string> =>
  new Set([...html.matchAll(/\s(?:id|name)="([^"]*)"/g)].map(([, id]) => decoded(id ?? '')));

const leadsOut = (link: string): boolean => /^(?:[a-z][a-z+.-]*:|\/\/)/i.test(link);

/** Reads every page of a folder and follows what stays inside it. */
export function deadLinks(folder: string): readonly DeadLink[] {
  const texts = new Map<string, string>();
  const textOf = (file: string): string => {
    const known = texts.get(file) ?? readFileSync(join(folder, file), 'utf8');
    texts.set(file, known);
    return known;
  };
  const ids = new Map<string, ReadonlySet<string>>();
  const has = (file: string, id: string): boolean => {
    const known = ids.get(file) ?? idsOf(textOf(file));
    ids.set(file, known);
    return known.has(id);
  };
  const isDead = (page: string, link: string): boolean => {
    if (link === '' || leadsOut(link)) return false;
    const [path = '', anchor = ''] = link.split('#');
    const target =
      path === '' ? page : normalize(join(dirname(page), decoded(path.split('?')[0] ?? ''))).replaceAll('\\', '/');
    if (target.startsWith('..') || !existsSync(join(folder, target))) return true;
    if (!statSync(join(folder, target)).isFile()) return true;
    return anchor !== '' && target.endsWith('.html') && !has(target, decoded(anchor));
  };
  return filesUnder(folder, '.html').flatMap((page) =>
    [...new Set(linksOf(textOf(page)))].filter((link) => isDead(page, link)).map((link) => ({ page, link })),
  );
}
