/** The words for what can go wrong with a spec. */
import type { AskedFoundNeeded } from '../units/index.js';
import type { SpecError } from './errors.js';

/** How many further places the words name; the data has them all. */
const mostTold = 8;

export function wordsForSpec(error: SpecError): AskedFoundNeeded {
  switch (error.tag) {
    case 'MalformedJson':
      return { asked: 'a spec', found: error.says, needed: 'a text in JSON' };
    case 'UndecodableSpec': {
      const [first, ...others] = error.problems;
      const told = others
        .slice(0, mostTold)
        .map(({ path, needed }) => `; ${path} needs ${needed}`)
        .join('');
      const more = others.length > mostTold ? `${told}; and ${others.length - mostTold} places more` : told;
      return {
        asked: 'a spec that can be read',
        found: first?.got ?? 'nothing',
        needed: `${first?.needed ?? 'a spec'}${more}`,
      };
    }
  }
}
