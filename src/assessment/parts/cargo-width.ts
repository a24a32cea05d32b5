/** Cargo against the width of the deck and of the gap between the fenders. */
import { type Note, note } from '../../ratings/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { type Decision, decide, inInches } from '../../trace/index.js';
import type { OnDeck } from './cargo-footprint.js';
import type { OpenQuestion } from './open-questions.js';

/** A piece wider than the deck, or than the clear width between the fenders where it may not sit over them. */
export function tooWide({ trailer: { deck }, cargo = [] }: DecodedSpec): OnDeck {
  const attention: Note[] = [];
  const notChecked: OpenQuestion[] = [];
  const decisions: Decision[] = [];
  const bounds = [
    ...(deck?.width === undefined
      ? []
      : [['width', 'the deck', inInches('deck width', deck.width), 'trailer.deck.width'] as const]),
    ...(deck?.betweenFenders === undefined || deck.overFenders === true
      ? []
      : [
          [
            'width/fenders',
            'the room between the fenders',
            inInches('width between the fenders', deck.betweenFenders),
            'trailer.deck.betweenFenders',
          ] as const,
        ]),
  ];
  for (const [index, { name, width }] of cargo.entries())
    for (const [id, what, bound, path] of bounds) {
      if (width === undefined) {
        notChecked.push({
          id,
          what: `whether ${name} is wider than ${what}`,
          missing: 'its width',
          paths: [`cargo.${index}.width`],
          piece: index,
        });
        continue;
      }
      const wide = inInches(`${name} width`, width);
      const fits = decide(wide, '<=', bound);
      decisions.push(fits);
      if (!fits.holds)
        attention.push({
          ...note('PieceTooWide', `${name} is wider than ${what}`, [wide, bound]),
          paths: [`cargo.${index}.width`, path],
        });
    }
  return { attention, notChecked, decisions };
}
