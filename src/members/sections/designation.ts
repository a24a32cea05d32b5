/** Designations as people type them: `C5x6.7`, `c 5 X 6.7`, `HSS 3x2x3/16`, `L 2-1/2 x 2 x 1/4`, `2" sch 40 pipe`. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import { type Quantity, quantity } from '../../units/index.js';
import { Decimal } from '../../units/internal.js';
import type { UnreadableDesignation } from '../errors.js';

/** What a designation says: the letters, the figures in their order, and for pipe the weight class. */
export interface ReadDesignation {
  readonly letters: 'C' | 'MC' | 'W' | 'S' | 'M' | 'L' | 'HSS' | 'PIPE';
  readonly figures: readonly Quantity<'ratio'>[];
  readonly weightClass?: 'STD' | 'XS';
}

const needed = 'letters and figures such as C5x6.7, W8x10, L2x2x1/4, HSS 3x2x3/16, HSS 2.375x0.154 or Pipe 2 STD';
const unreadable = (text: string): Either<UnreadableDesignation, never> =>
  left({ chapter: 'members', tag: 'UnreadableDesignation', text: text.slice(0, 60), needed });

/** One spelling for the many: capitals, x for every sign of multiplication, a dash in mixed numbers, no spaces or inch marks. */
function plainSpelling(text: string): string {
  return text
    .trim()
    .toUpperCase()
    .replaceAll(/[\u00d7*]/g, 'X')
    .replaceAll(/["\u2033]/g, '')
    .replaceAll(/(\d)\s+(\d{1,2}\/\d)/g, '$1-$2')
    .replaceAll(/\s+/g, '');
}

/** `5`, `6.7`, `1/4`, `2-1/2` as a plain number. */
function readFigure(word: string): Quantity<'ratio'> | undefined {
  if (/^\d{0,4}(\.\d{1,6})?$/.test(word) && /\d/.test(word)) return quantity(new Decimal(word), 'ratio');
  const parts = /^(?:(\d{1,4})-)?(\d{1,2})\/(2|4|8|16|32|64)$/.exec(word);
  if (parts === null) return undefined;
  const [, whole = '0', top = '0', bottom = '1'] = parts;
  return quantity(new Decimal(top).div(bottom).plus(whole), 'ratio');
}

function readFigures(words: readonly string[]): readonly Quantity<'ratio'>[] | undefined {
  const figures = words.map(readFigure);
  return figures.every((figure) => figure !== undefined) ? figures : undefined;
}

/** Schedule 40 is the standard weight up to NPS 10 and schedule 80 the extra strong up to NPS 8 (ASME B36.10, from memory). */
const weightClasses = { STD: 'STD', SCH40: 'STD', SCHEDULE40: 'STD', XS: 'XS', SCH80: 'XS', SCHEDULE80: 'XS' } as const;

function readPipe(plain: string): ReadDesignation | undefined {
  const bare = plain
    .replace('PIPE', '')
    .replace('SCH.', 'SCH')
    .replace(/^NPS/, '')
    .replace(/^(\d[\d/-]*)IN\.?(?=[SX])/, '$1');
  const found = Object.entries(weightClasses).find(([word]) => bare.endsWith(word));
  if (found === undefined) return undefined;
  const figures = readFigures([bare.slice(0, -found[0].length)]);
  return figures && { letters: 'PIPE', figures, weightClass: found[1] };
}

const figuresAfter = { C: [2], MC: [2], W: [2], S: [2], M: [2], L: [3], HSS: [2, 3] } as const;

/**
 * What does this designation say?
 *
 * @param text letters, then figures parted by x; fractions as 3/16 or 2-1/2; pipe by nominal size and weight class or schedule
 * @returns Left `UnreadableDesignation` when the text is not one
 * @example readSectionName('c 5 X 6.7') // Right letters C, figures 5 and 6.7
 * @source common practice, no source
 */
export function readSectionName(text: string): Either<UnreadableDesignation, ReadDesignation> {
  if (text.length > 60) return unreadable(text);
  const plain = plainSpelling(text);
  if (plain.includes('PIPE')) {
    const pipe = readPipe(plain);
    return pipe === undefined ? unreadable(text) : right(pipe);
  }
  const letters = /^(HSS|MC|C|W|S|M|L)(?=[\d.])/.exec(plain)?.[1] as keyof typeof figuresAfter | undefined;
  if (letters === undefined) return unreadable(text);
  const figures = readFigures(plain.slice(letters.length).split('X'));
  if (figures === undefined || !(figuresAfter[letters] as readonly number[]).includes(figures.length))
    return unreadable(text);
  return right({ letters, figures });
}
