/** What can be wrong with a tire designation: plain data. */

/** The parts of a designation, as an error names them. */
export type DesignationPart =
  | 'whole text'
  | 'prefix'
  | 'width'
  | 'diameter'
  | 'aspect'
  | 'construction'
  | 'rim'
  | 'suffix'
  | 'load index'
  | 'speed symbol'
  | 'load range'
  | 'ply rating'
  | 'markings';
/** Why a part could not be read. */
export type DesignationFault =
  | 'TooLong'
  | 'BadPrefix'
  | 'MissingWidth'
  | 'WidthOutOfRange'
  | 'DiameterOutOfRange'
  | 'MissingAspect'
  | 'AspectOutOfRange'
  | 'UnknownSize'
  | 'MissingConstruction'
  | 'MissingRim'
  | 'RimOutOfRange'
  | 'LetterOInNumber'
  | 'BadDecimalSeparator'
  | 'AmbiguousNumeric'
  | 'AmbiguousLetter'
  | 'LoadIndexOutOfRange'
  | 'DualAboveSingle'
  | 'UnknownSpeedSymbol'
  | 'UnknownLoadRange'
  | 'UnknownPlyRating'
  | 'LoadRangePlyConflict'
  | 'RepeatedPart'
  | 'UnclosedBracket'
  | 'UnexpectedText';
/** The text is not a tire designation. `at` counts characters from 0. */
export interface UnreadableDesignation {
  readonly chapter: 'tires';
  readonly tag: 'UnreadableDesignation';
  readonly fault: DesignationFault;
  readonly part: DesignationPart;
  readonly text: string;
  readonly at: number;
  readonly found: string;
  readonly needed: string;
  /** Printed rows of sizes with the same numbers, where a part of the size is missing. */
  readonly nearest?: readonly string[];
  readonly path?: string;
}
