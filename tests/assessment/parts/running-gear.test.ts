/** The place of an unrated axle group: the middle of its known places, where the axles share equally (statics). */
import { expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import { plain, rightOf } from '../../helpers/either.js';

const told = (axles: readonly object[], sharing?: string) =>
  rightOf(
    assessJson({
      trailer: { hitch: 'ball', axles, ...(sharing && { sharing }), curb: { weight: '3,000 lb', tongue: '400 lb' } },
      cargo: [{ name: 'machine', weight: '5,000 lb', at: '150 in' }],
    }),
  );
const [front, rear] = [{ at: '180 in' }, { at: '216 in' }];
/** Without the machine 400 lb; of the machine what its place leaves to the ball. */
const tongueAt = (axlesAt: number): number => 400 + 5000 * (1 - 150 / axlesAt);

it.each([
  ['two that share alike', [front, rear], 'equalised', tongueAt(198)],
  ['one', [front], undefined, tongueAt(180)],
  ['the second without a place', [front, {}], 'equalised', undefined],
  ['the first without a place', [{}, rear], 'equalised', undefined],
  ['none with a place', [{}, {}], 'equalised', undefined],
  ['two on their own springs', [front, rear], 'independent', undefined],
  ['two, and nobody says how they share', [front, rear], undefined, undefined],
] as const)('%s', (_, axles, sharing, tongue) => {
  const { weights, notChecked } = told(axles, sharing);
  const found = weights.balance?.tongue;
  if (tongue === undefined) expect(found).toBeUndefined();
  else expect(found && plain(found)).toBeCloseTo(tongue, 6);
  expect(notChecked.some(({ id }) => id === 'axle-places')).toBe(axles.some((axle) => !('at' in axle)));
});

it('says what else is open where nobody says how the axles share', () => {
  const rated = { ...front, gawr: '3,500 lb', beam: '3,500 lb' };
  const asked = (sharing: string | undefined) => told([rated, rear], sharing).notChecked.map(({ id }) => id);
  const ofParts = asked('equalised').filter((id) => id.startsWith('axle-1/') || id.startsWith('axle-2/'));
  expect(ofParts.length).toBeGreaterThan(1);
  expect(asked(undefined)).toEqual(expect.arrayContaining(['sharing', ...ofParts]));
});
