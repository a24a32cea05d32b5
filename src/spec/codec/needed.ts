/** What to write in a place, in words, from what its codec says of itself. */
import type * as t from 'io-ts';
import type { Kind } from './kind.js';

/** A figure of each kind as people write it. */
export const writtenFigures: Readonly<Record<string, string>> = {
  mass: '"9,200 lb"',
  length: '"187 in"',
  pressure: '"80 psi"',
  ratio: '"12 %"',
  angle: '"15 deg"',
  'weight per length': '"2,200 lb/in"',
  'weight per area': '"4.75 lb/ft2"',
  density: '"38 lb/ft3"',
};

/** A figure that somebody may write, with its unit. */
export const writtenFigure = (dimension: string): string =>
  `a figure with its unit as text, such as ${writtenFigures[dimension] ?? '"9,200 lb"'}`;

const quoted = (words: readonly string[]): string => words.map((word) => `"${word}"`).join(', ');

/** What to write, by kind. */
export function neededByKind(says: Kind): string {
  switch (says.kind) {
    case 'figure': {
      const figure = `${writtenFigure(says.dimension)}: ${says.dimension}`;
      return says.orWords === undefined ? figure : `${quoted(says.orWords)}, or ${figure}`;
    }
    case 'pieces':
    case 'count':
      return `a whole number from ${says.least} to ${says.most}`;
    case 'choice':
      return `one of ${quoted(says.words)}`;
    case 'text':
      return `a text of 1 to ${says.most} characters, on one line`;
    case 'yes or no':
      return 'true or false';
    case 'record':
    case 'forms':
      return `a record: ${says.title}`;
    case 'list':
      return `a list: ${says.of}`;
  }
}

/** What to write where this codec reads. */
export const neededFor = (codec: t.Mixed): string =>
  Object.hasOwn(codec, 'says') ? neededByKind((codec as t.Mixed & { readonly says: Kind }).says) : codec.name;
