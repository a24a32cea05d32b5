/** Materials and woods as they stand in JSON. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import * as t from 'io-ts';
import type { AnyDensity, Derived } from '../trace/index.js';
import { aluminiumDensity, steelDensity, steelDensityByPlate } from './constants.js';
import type { MembersError } from './errors.js';
import { closed, decodeAt, measure, oneOf, placed, undecodable, under } from './measure-codec.js';
import type { Wood } from './stock/wood.js';

const density = measure('density');
const materials: Readonly<Record<string, Derived<'lb/ft3'> | Derived<'lb/in3'>>> = {
  steel: steelDensity,
  'steel at 40.8 lb/ft2 per inch': steelDensityByPlate,
  aluminium: aluminiumDensity,
};

/** `steel`, `aluminium`, or a density. */
export function readMaterial(input: unknown, path: string): Either<MembersError, AnyDensity> {
  if (typeof input === 'string' && Object.hasOwn(materials, input)) return right(materials[input] as Derived<'lb/ft3'>);
  const read = decodeAt(density, input, path);
  return isLeft(read)
    ? left(undecodable(input, `${Object.keys(materials).join(', ')}, or a density such as "72 lb/ft3"`, path))
    : right(placed('density', read.right, path));
}

const woods = {
  'NDS gravity': closed('a wood by NDS gravity', { by: t.string, species: t.string, moisture: measure('ratio') }),
  'handbook gravity at 12 %': closed('a wood by handbook gravity', { by: t.string, species: t.string }),
  'air-dry range': closed('a wood by its air-dry range', {
    by: t.string,
    species: t.string,
    end: oneOf('low', 'high'),
  }),
  treated: closed('a treated wood', {
    by: t.string,
    state: oneOf('freshly treated', 'treated, dried'),
    end: oneOf('low', 'high'),
  }),
  density: closed('a wood by density', { by: t.string, density }),
} as const;

/** A wood: `{"by": "NDS gravity", "species": "Southern Pine", "moisture": "19 %"}` and the other ways of `Wood`. */
export function readWood(input: unknown, path: string): Either<MembersError, Wood> {
  const read = decodeAt(
    t.type({ by: oneOf('NDS gravity', 'handbook gravity at 12 %', 'air-dry range', 'treated', 'density') }),
    input,
    path,
  );
  if (isLeft(read)) return read;
  const { by } = read.right;
  switch (by) {
    case 'NDS gravity': {
      const wood = decodeAt(woods[by], input, path);
      return isLeft(wood)
        ? wood
        : right({
            by,
            species: wood.right.species,
            moisture: placed('moisture', wood.right.moisture, under(path, 'moisture')),
          });
    }
    case 'handbook gravity at 12 %': {
      const wood = decodeAt(woods[by], input, path);
      return isLeft(wood) ? wood : right({ by, species: wood.right.species });
    }
    case 'air-dry range': {
      const wood = decodeAt(woods[by], input, path);
      return isLeft(wood) ? wood : right({ by, species: wood.right.species, end: wood.right.end });
    }
    case 'treated': {
      const wood = decodeAt(woods[by], input, path);
      return isLeft(wood) ? wood : right({ by, state: wood.right.state, end: wood.right.end });
    }
    case 'density': {
      const wood = decodeAt(woods[by], input, path);
      return isLeft(wood)
        ? wood
        : right({ by, density: placed('wood density', wood.right.density, under(path, 'density')) });
    }
  }
}
