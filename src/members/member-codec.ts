/** Members as they stand in JSON. */
import { type Either, isLeft } from 'fp-ts/lib/Either.js';
import * as t from 'io-ts';
import type { MembersError } from './errors.js';
import { type Member, statedMember } from './frame/member.js';
import { at, closed, decodeAt, measure, onlyKey, placed, under } from './measure-codec.js';
import { publishedSection } from './sections/published-section.js';
import { sectionProperties } from './shapes/section-properties.js';
import { type Board, board, flatBar, roundBar } from './stock/board.js';
import { readMaterial, readWood } from './wood-codec.js';

const length = measure('length');
const barParts = closed('a flat bar', { thickness: length, width: length, material: t.unknown });
const round = closed('a round bar', { diameter: length, material: t.unknown });
const formed = closed('a formed channel', {
  depth: length,
  flangeWidth: length,
  thickness: length,
  insideRadius: length,
  material: t.unknown,
});
const boardShape = closed('a board', { size: t.string, wood: t.unknown });
const own = closed('a member of its own weight', { name: t.string, weightPerFoot: measure('weight per length') });

/** A member: a designation as text, or a record with one of `flatBar`, `roundBar`, `formedChannel`, `board`, `own`. @example readMember('C5X6.7', 'frame.0.member') // Right 6.7 lb/ft */
export function readMember(input: unknown, path: string): Either<MembersError, Member> {
  if (typeof input === 'string') return at(path, publishedSection(input));
  const chosen = onlyKey(input, ['flatBar', 'roundBar', 'formedChannel', 'board', 'own'], path);
  if (isLeft(chosen)) return chosen;
  const { kind, inside, path: here } = chosen.right;
  const figure = (symbol: string, key: string, written: t.TypeOf<typeof length>) =>
    placed(symbol, written, under(here, key));
  switch (kind) {
    case 'flatBar': {
      const read = decodeAt(barParts, inside, here);
      if (isLeft(read)) return read;
      const material = readMaterial(read.right.material, under(here, 'material'));
      return isLeft(material)
        ? material
        : at(
            here,
            flatBar(
              figure('bar thickness', 'thickness', read.right.thickness),
              figure('bar width', 'width', read.right.width),
              material.right,
            ),
          );
    }
    case 'roundBar': {
      const read = decodeAt(round, inside, here);
      if (isLeft(read)) return read;
      const material = readMaterial(read.right.material, under(here, 'material'));
      return isLeft(material)
        ? material
        : at(here, roundBar(figure('bar diameter', 'diameter', read.right.diameter), material.right));
    }
    case 'formedChannel': {
      const read = decodeAt(formed, inside, here);
      if (isLeft(read)) return read;
      const material = readMaterial(read.right.material, under(here, 'material'));
      if (isLeft(material)) return material;
      const { depth, flangeWidth, thickness, insideRadius } = read.right;
      return at(
        here,
        sectionProperties(
          {
            kind: 'formed channel',
            depth: figure('depth', 'depth', depth),
            flangeWidth: figure('flange width', 'flangeWidth', flangeWidth),
            thickness: figure('thickness', 'thickness', thickness),
            insideRadius: figure('inside bend radius', 'insideRadius', insideRadius),
          },
          material.right,
        ),
      );
    }
    case 'board':
      return readBoard(inside, here);
    case 'own': {
      const read = decodeAt(own, inside, here);
      return isLeft(read)
        ? read
        : at(
            here,
            statedMember(
              read.right.name,
              placed(`${read.right.name} weight per foot`, read.right.weightPerFoot, under(here, 'weightPerFoot')),
            ),
          );
    }
  }
}

/** A board: `{"size": "2x8", "wood": {...}}`. */
export function readBoard(input: unknown, path: string): Either<MembersError, Board> {
  const read = decodeAt(boardShape, input, path);
  if (isLeft(read)) return read;
  const wood = readWood(read.right.wood, under(path, 'wood'));
  return isLeft(wood) ? wood : at(path, board(read.right.size, wood.right));
}
