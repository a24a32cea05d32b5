/** Contradictions of the trailer as a whole: the ends of its deck, its tongue, its band, what grows, where its ramps can be set. */
import { inInches } from '../../trace/index.js';
import { collected, editDistance, nearestKeys, orNone } from '../../units/internal.js';
import type { Problem } from '../errors.js';
import type { DecodedCurb } from '../types/curb.js';
import type { DecodedTrailer } from '../types/trailer.js';
import { type Found, gathered, inOrder, nothingFound, type Partly } from './found.js';

/** Names of lines that grow and that no line of frame or deck has. */
function growsWithout({ grows, frame, deck }: Partly<DecodedCurb>): readonly Problem[] {
  if (frame === undefined || deck === undefined) return [];
  const lines = [...frame, ...deck];
  if (lines.some((line) => line?.name === undefined)) return [];
  const names = lines.map((line) => line?.name ?? '');
  return collected(grows ?? [], (name, i): readonly Problem[] => {
    if (name === undefined || names.includes(name)) return [];
    const near = nearestKeys(names, (other) => editDistance(name, other)).map((other) => `"${other}"`);
    const needed =
      near.length === 0
        ? 'the name of a line of frame or deck'
        : `the name of a line of frame or deck: ${near.join(', ')}`;
    return [{ path: `trailer.curb.grows.${i}`, fault: 'contradiction', got: `"${name.slice(0, 60)}"`, needed }];
  });
}

/** With none at either end there are pieces only where they stand closer than the run is long. */
function spacedWithin({ frame = [] }: Partly<DecodedCurb>): readonly Found[] {
  return frame.map((line, i) => {
    if (line === undefined || !('spacing' in line) || line.rule !== 'none at either end') return nothingFound;
    const { spacing, over } = line;
    const path = `trailer.curb.frame.${i}`;
    return inOrder([`${path}.spacing`, 'the spacing', spacing && inInches('spacing', spacing)], '<', [
      `${path}.over`,
      'the run, with none at either end',
      over && inInches('run', over),
    ]);
  });
}

/** Contradictions of the trailer. */
export function trailerContradictions({ curb, deck, guideline, ramps }: Partly<DecodedTrailer>): Found {
  const setting = ramps?.setting;
  const found = [
    ...spacedWithin(orNone(curb)),
    inOrder(['trailer.curb.tongue', 'the tongue load', curb?.tongue], '<=', [
      'trailer.curb.weight',
      'the weight of the empty trailer',
      curb?.weight,
    ]),
    inOrder(['trailer.curb.tongueByLever.beamTare', 'the beam alone', curb?.tongueByLever?.beamTare], '<=', [
      'trailer.curb.tongueByLever.reading',
      'the reading with the tongue on it',
      curb?.tongueByLever?.reading,
    ]),
    inOrder(['trailer.deck.front', 'the front end', deck?.front], '<', [
      'trailer.deck.rear',
      'the rear end',
      deck?.rear,
    ]),
    inOrder(['trailer.guideline.low', 'the least share', guideline?.low], '<=', [
      'trailer.guideline.high',
      'the greatest share',
      guideline?.high,
    ]),
    inOrder(['trailer.ramps.setting.closest', 'the closest setting', setting?.closest], '<=', [
      'trailer.ramps.setting.widest',
      'the widest setting',
      setting?.widest,
    ]),
  ];
  return gathered([...found, { problems: growsWithout(orNone(curb)), decisions: [] }]);
}
