/** The checks that a load on the ball decides, asked for another way of standing. */
import { expect, it } from 'vitest';
import { tongueChecks } from '../../../src/towing/index.js';
import { asDerived } from '../../../src/trace/index.js';
import { inch, lb } from '../../../src/units/index.js';
import { plain, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const tongue = asDerived('tongue load', lb(964));
const truck = { front: lb(3200), rear: lb(2800), wheelbase: inch(140), rearGawr: lb(4300) };

it('asks the coupler alone where nothing tows, and names the way of standing', () => {
  const { checks, notChecked } = rightOf(tongueChecks({ tongue, coupler: { tongue: lb(900) }, how: 'off level' }));
  expect(checks.map(({ what, verdict, reserve }) => [what, verdict, plain(reserve), reserve.why.symbol])).toEqual([
    ['tongue against coupler tongue, off level', 'over', -64, 'reserve, tongue against coupler tongue, off level'],
  ]);
  expect(notChecked).toEqual([]);
});

it('asks the axles as that load makes them: 2,800 + 964 x (1 + 70 / 140) lb on the rear one', () => {
  const { checks, hitched } = rightOf(
    tongueChecks({ tongue, vehicle: { ...truck, hitch: 'ball behind', overhang: inch(70) }, how: 'off level' }),
  );
  expect(checks.map(({ what, load }) => [what, plain(load)])).toEqual([
    ['tow vehicle rear axle against tow vehicle rear GAWR, off level', 4246],
  ]);
  expect([hitched?.front, hitched?.rear, hitched?.offFront, hitched?.ontoRear].map((each) => each?.why.symbol)).toEqual(
    [
      'front axle, hitched, off level',
      'rear axle, hitched, off level',
      'taken off the front axle, hitched, off level',
      'put on the rear axle, hitched, off level',
    ],
  );
  expectReplays(...checks.flatMap(({ load, reserve, used }) => [load, reserve, used]), hitched!.front, hitched!.rear);
});

it('asks no receiver and no ball mount of a gooseneck, and names what is wanting', () => {
  const { notChecked } = rightOf(
    tongueChecks({ tongue, vehicle: { ...truck, hitch: 'gooseneck', overhang: inch(-4) }, how: 'off level' }),
  );
  expect(notChecked.map(({ what }) => what)).toEqual([
    'tow vehicle hitched against tow vehicle GVWR, off level',
    'tow vehicle front axle against tow vehicle front GAWR, off level',
    'tongue against coupler tongue, off level',
    'tongue against tow vehicle tongue, off level',
    'tow vehicle load against occupant and cargo placard, off level',
  ]);
});

it('asks every part that the tongue presses on, in their order', () => {
  const parts = { receiver: { tongue: lb(1000) }, ballMount: { tongue: lb(900) }, tongueRating: lb(1200) };
  const asked = (vehicle: object) =>
    rightOf(
      tongueChecks({
        tongue,
        vehicle: { ...truck, hitch: 'ball behind', overhang: inch(70), ...vehicle },
        coupler: { tongue: lb(964) },
        how: 'off level',
      }),
    ).checks.map(({ what, verdict, reserve }) => [what.replace(', off level', ''), verdict, plain(reserve)]);
  const placard = { limit: lb(1500), people: lb(300), cargo: lb(100) };
  expect(asked({ ...parts, gvwr: lb(7000), frontGawr: lb(3000), placard, hitchHardware: lb(0) })).toEqual([
    ['tow vehicle hitched against tow vehicle GVWR', 'within', 7000 - 6000 - 964],
    ['tow vehicle front axle against tow vehicle front GAWR', 'within', 3000 - (3200 - 482)],
    ['tow vehicle rear axle against tow vehicle rear GAWR', 'within', 4300 - 4246],
    ['tongue against receiver tongue', 'within', 36],
    ['tongue against ball mount tongue', 'over', -64],
    ['tongue against coupler tongue', 'within', 0],
    ['tongue against tow vehicle tongue', 'within', 236],
    ['tow vehicle load against occupant and cargo placard', 'within', 1500 - 400 - 964],
  ]);
});
