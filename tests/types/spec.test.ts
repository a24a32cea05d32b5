/** What the types of a spec let through, and what must not compile. Never run: the type check is the test. */
import { expect, it } from 'vitest';
import { assess } from '../../src/assessment/index.js';
import type { AxleInput, SpecInput } from '../../src/spec/index.js';
import { inch, lb, psi } from '../../src/units/index.js';

const axle: AxleInput = { at: '187 in', gawr: lb(6800), tires: { designation: 'ST235/80R16 LRE', count: 2, fitment: 'single', pressure: psi(80) } };
const spec: SpecInput = {
  trailer: {
    hitch: 'ball',
    gvwr: { text: '14,000 lb', basis: 'label' },
    axles: [axle, { at: inch(221), gawr: { value: '7000', unit: 'lb' } }],
    sharing: 'equalised',
    curb: { frame: [{ name: 'rails', member: 'C6x8.2', length: '20 ft', count: 2, from: '48 in' }] },
  },
  tow: { overhang: 'unknown' },
};

export const wrong = (): void => {
  // @ts-expect-error a misspelt key
  assess({ trailer: { hitch: 'ball', gvrw: '14,000 lb', axles: [axle] } });
  // @ts-expect-error a key of another record
  assess({ trailer: { hitch: 'ball', gawr: '7,000 lb', axles: [axle] } });
  // @ts-expect-error no hitch
  assess({ trailer: { axles: [axle] } });
  // @ts-expect-error a word that is not on the list
  assess({ trailer: { hitch: 'fifth wheel', axles: [axle] } });
  // @ts-expect-error a number without its unit
  assess({ trailer: { hitch: 'ball', gvwr: 14000, axles: [axle] } });
  // @ts-expect-error inches for pounds
  assess({ trailer: { hitch: 'ball', gvwr: inch(14000), axles: [axle] } });
  // @ts-expect-error a unit of another kind
  assess({ trailer: { hitch: 'ball', gvwr: { value: '14000', unit: 'in' }, axles: [axle] } });
  // @ts-expect-error a basis that is none
  assess({ trailer: { hitch: 'ball', gvwr: { text: '14,000 lb', basis: 'hearsay' }, axles: [axle] } });
  // @ts-expect-error JSON of which nothing is known goes through assessJson
  assess(JSON.parse('{}') as unknown);
};

it('a typed spec is answered', () => expect(assess(spec)._tag).toBe('Right'));
