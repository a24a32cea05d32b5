/** Figures that cannot be so leave their own question open and ask attention at their keys; the rest is answered, and never as within. */
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson, ruleFindings } from '../../../src/assessment/index.js';
import { brief } from '../../../src/print/index.js';
import { plain, rightOf } from '../../helpers/either.js';
import { changed, tiltDeck, workingsIn } from '../../helpers/specs.js';
import { expectReplays } from '../../helpers/working.js';

type Changes = readonly (readonly [path: string, value: unknown])[];

/** The example on a truck that holds the ball down while the machine comes on: nothing asks attention. */
const sound: Changes = [
  ['tow.rear', '7,000 lb'],
  ['tow.gvwr', '14,000 lb'],
];
const run = (...changes: Changes): Assessment =>
  rightOf(
    assessJson([...sound, ...changes].reduce<unknown>((spec, [path, value]) => changed(spec, path, value), tiltDeck())),
  );
const ids = ({ checks, partChecks }: Assessment): readonly string[] => [...checks, ...partChecks].map(({ id }) => id);
const open = ({ notChecked }: Assessment): readonly string[] => notChecked.map(({ id }) => id);
const told = ({ attention }: Assessment): readonly string[] =>
  attention.map(({ tag, paths = [] }) => `${tag} ${paths.join()}`);
const whole = run();

it('are none in the example', () => expect([whole.verdict, told(whole)]).toEqual(['within', []]));

describe('a load so far ahead that the axles leave the ground', () => {
  const ahead: Changes = [
    ['cargo.0.front', '-110 in'],
    ['cargo.0.balancePoint', '5 in'],
  ];
  // T = W - sum of w x / a: 12,650 - ((3,650 - 520) 204 - 9,000 x 105) / 204.
  const tongue = 12650 - (3130 * 204 - 9000 * 105) / 204;
  it.each([
    ['behind a truck', ahead],
    ['with no truck told', [...ahead, ['tow', undefined]] as Changes],
    ['on bars', [...ahead, ['tow.bars', { restore: '50 %' }]] as Changes],
  ])('is over, says what lifts and asks everything else, %s', (_, changes) => {
    const answer = run(...changes);
    expect([answer.verdict, answer.uplift.lifted.map(({ what }) => what)]).toEqual([
      'over',
      expect.arrayContaining(['axle group']),
    ]);
    expect(plain(answer.tongue!.load)).toBeCloseTo(tongue, 6);
    expect(plain(answer.uplift.lifted.find(({ what }) => what === 'axle group')!.load)).toBeCloseTo(12650 - tongue, 6);
    const same = ids(whole).filter((id) => !id.startsWith('tow/') || answer.spec.tow !== undefined);
    expect(ids(answer)).toEqual(expect.arrayContaining(same.filter((id) => !/heavier-side/.test(id))));
    expect(brief(answer)).toMatch(/^Lifts +axle group: -1,50\d lb/m);
    expect(answer.notes.map(({ tag }) => tag)).toContain('TongueAboveGross');
    expectReplays(...workingsIn(answer).slice(0, 200));
  });
  it('leaves the bars open and the rules on axle weights untold', () => {
    const answer = run(...ahead, ['tow.bars', { restore: '50 %' }]);
    expect(open(answer)).toContain('bars');
    expect(ruleFindings(answer.rules).find(({ id }) => id === 'brake-3000')?.outcome).toBe('does not apply');
  });
});

describe('a tongue load of the empty trailer above its weight', () => {
  const lever = { reading: '3,000 lb', beamTare: '10 lb', pipeToTongue: '12 in', tongueToScale: '24 in' };
  it.each([
    [
      'by beam and scale',
      [
        ['trailer.curb.tongue', undefined],
        ['trailer.curb.tongueByLever', lever],
      ],
      'tongueByLever',
      'weight',
    ],
    [
      'against the list of parts',
      [
        ['trailer.curb.weight', undefined],
        ['trailer.curb.tongue', '9,000 lb'],
      ],
      'tongue',
      'items',
    ],
    [
      'by options ahead of the ball',
      [
        ['trailer.curb.weight', '600 lb'],
        ['trailer.curb.added', [{ name: 'winch', weight: '2,000 lb', at: '-100 in' }]],
      ],
      'tongue',
      'added',
    ],
  ] as const)('%s leaves the balance open and is told at its keys', (_, changes, key, other) => {
    const answer = run(...changes);
    expect(answer.weights.balance).toBeUndefined();
    const note = answer.attention.find(({ tag }) => tag === 'TongueAboveWeight');
    expect(note?.paths).toEqual(expect.arrayContaining([`trailer.curb.${key}`, `trailer.curb.${other}`]));
    expect(ids(answer)).toEqual(
      expect.arrayContaining(['gvwr', 'coupler/gross', 'tow/gcwr', 'ramps/machine', 'axle-1/parts/tires']),
    );
    expect([answer.verdict, open(answer)]).toEqual(['attention', expect.arrayContaining(['balance'])]);
    expect(brief(answer)).toContain('the tongue load of the empty trailer is above its weight');
  });
});

describe('gear that cannot be so', () => {
  const machine = { wheelbase: '90 in', lowPoint: { behindFrontAxle: '45 in', height: '12 in' } };
  const withMachine = [
    ['cargo.0.wheelbase', machine.wheelbase],
    ['cargo.0.lowPoint', machine.lowPoint],
  ] as const;
  const pass = { steer: '5,000 lb', drive: '5,500 lb', trailer: '11,000 lb' };
  it.each([
    ['ramps too short to reach', [['trailer.ramps.height', '70 in']], 'RampTooShort trailer.ramps.length', 'ramps'],
    [
      'a dovetail steeper than the ramps',
      [...withMachine, ['trailer.ramps.dovetail', { angle: '30 deg', length: '36 in' }]],
      'OutsideItsRange trailer.ramps.dovetail',
      'edges',
    ],
    [
      'a machine axle heavier than the machine',
      [['cargo.0.axles', ['9,500 lb', '4,000 lb']]],
      'OutsideItsRange cargo.0.weight',
      'ramps/rating',
    ],
    ['a jack behind the axles', [['trailer.jack.at', '300 in']], 'JackBehindAxles trailer.jack', 'jack'],
    [
      'a section that is not for this weight',
      [
        ['cargo.0.section', 'light vehicle'],
        ['cargo.0.weight', '10,001 lb'],
        ['tow', undefined],
        ['trailer.rearLegs', '9,000 lb'],
      ],
      'SectionNotForThisWeight cargo.0.section',
      'tiedowns',
    ],
    [
      'tickets of one rig that do not agree',
      [['tickets', { division: '20 lb', barsOn: pass, barsOff: { ...pass, drive: '9,000 lb' } }]],
      'TicketsDoNotClose tickets',
      'tickets',
    ],
  ] as const)('%s', (_, changes, said, id) => {
    const answer = run(...(changes as Changes));
    expect(told(answer)).toContain(said);
    expect([answer.verdict, open(answer)]).toEqual(['attention', expect.arrayContaining([id])]);
    expect(ids(answer)).toEqual(expect.arrayContaining(['gvwr', 'axle-1/gawr', 'axle-1/tire', 'coupler/tongue']));
    expect(answer.payload?.best).toBeDefined();
  });
});
