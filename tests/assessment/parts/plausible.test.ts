/** Implausible figures get an attention note with their keys; ambiguous figures are refused. */
import { describe, expect, it } from 'vitest';
import { type Assessment, assess } from '../../../src/assessment/index.js';
import { describeError } from '../../../src/errors.js';
import { report } from '../../../src/print/index.js';
import type { Note } from '../../../src/ratings/index.js';
import { show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { changed, tiltDeck, workingsIn } from '../../helpers/specs.js';
import { expectReplays } from '../../helpers/working.js';

type Changes = readonly (readonly [path: string, value: unknown])[];
const example = (...changes: Changes): Assessment =>
  rightOf(assess(changes.reduce((spec, [path, value]) => changed(spec, path, value), tiltDeck())));
const ours = ['GvwrHardToBelieve', 'MachineHardToBelieve', 'ReadWithDecimals'];
const doubts = (...changes: Changes): readonly Note[] =>
  example(...changes).attention.filter(({ tag }) => ours.includes(tag));
const told = (...changes: Changes): readonly string[] =>
  doubts(...changes).map(({ tag, paths = [] }) => `${tag} ${paths.join()}`);
const frame = (weight: unknown): unknown => ({
  items: [{ name: 'trailer', weight: '3,600 lb', at: '190 in' }],
  frame: [{ name: 'coupler', weight, at: '4 in' }],
});

describe('a figure that is hard to believe', () => {
  it('is none in the example', () => expect(told()).toEqual([]));
  it.each([
    ['499 lb', ['GvwrHardToBelieve trailer.gvwr']],
    ['14 lb', ['GvwrHardToBelieve trailer.gvwr']],
    ['226 kg', ['GvwrHardToBelieve trailer.gvwr']],
    ['500 lb', []],
    ['227 kg', []],
    [{ text: '499 lb', basis: 'label' }, ['GvwrHardToBelieve trailer.gvwr']],
    [{ value: '499', unit: 'lb' }, []],
    [{ value: '499', unit: 'lb', basis: 'label' }, []],
  ])('a GVWR of %j', (gvwr, expected) => expect(told(['trailer.gvwr', gvwr])).toEqual(expected));
  it.each([
    ['49.9 lb', ['MachineHardToBelieve cargo.0.weight']],
    ['9 kg', ['MachineHardToBelieve cargo.0.weight']],
    ['50 lb', []],
    [{ value: '9', unit: 'lb' }, []],
  ])('a machine of %j', (weight, expected) => expect(told(['cargo.0.weight', weight])).toEqual(expected));
  it('is asked of the heaviest piece: binders beside a machine are light', () => {
    const binders = { name: 'binders', weight: '30 lb', at: '100 in' };
    const machine = tiltDeck().cargo?.[0] as object;
    expect(told(['cargo', [binders, machine]])).toEqual([]);
    expect(told(['cargo', [binders, { ...machine, weight: '9 lb' }]])).toEqual([
      'MachineHardToBelieve cargo.0.weight',
      'MachineHardToBelieve cargo.1.weight',
    ]);
  });
  it('stands in the first lines of the report, and the decision goes with it', () => {
    const answer = example(['trailer.gvwr', '499 lb']);
    expect(report(answer).replace(/\s+/g, ' ')).toContain(
      'the GVWR (trailer.gvwr) is below 500 lb, which is hard to believe (GVWR 499 lb)',
    );
    expect(answer.decisions.some(({ right }) => right.symbol === 'least GVWR to be believed')).toBe(true);
    expectReplays(...workingsIn(answer));
  });
});

describe('three decimals in kg and kPa', () => {
  it('say how they were read', () => {
    const [note] = doubts(['cargo.0.weight', '4.100 kg']).filter(({ tag }) => tag === 'ReadWithDecimals');
    expect(note).toMatchObject({
      says: 'the excavator weight (cargo.0.weight), written "4.100 kg", is read as 4.1 kg and not as 4,100 kg',
      paths: ['cargo.0.weight'],
    });
    expect(note!.figures!.map(({ value }) => show(value))).toEqual(['4.1 kg']);
  });
  it.each([
    ['cargo.0.weight', '104.100 kg', true],
    ['cargo.0.weight', '104.100kg', true],
    ['cargo.0.weight', { text: '104.100 kg', basis: 'scale' }, true],
    ['trailer.axles.0.tires.pressure', '450.000 kPa', true],
    ['tow.receiver.tongue', '900.000 KG', true],
    ['trailer.curb', frame('35.125 kg'), true],
    ['trailer.curb', frame({ value: '35.125', unit: 'kg' }), false],
    ['cargo.0.weight', { value: '104.100', unit: 'kg' }, false],
    ['cargo.0.weight', '104.10 kg', false],
    ['cargo.0.weight', '104.1000 kg', false],
    ['cargo.0.weight', '4100.125 kg', false],
    ['cargo.0.weight', '4,100.125 kg', false],
    ['cargo.0.weight', '4 100.125 kg', false],
    ['cargo.0.weight', '4,100 kg', false],
    ['cargo.0.weight', '4.100 t', false],
    ['cargo.0.weight', '904.100 lb', false],
    ['trailer.axles.0.at', '4.750 m', false],
    ['trailer.axles.0.tires.pressure', '75.000 psi', false],
  ])('%s = %j: %s', (path, value, asked) => {
    const found = doubts([path, value]).filter(({ tag }) => tag === 'ReadWithDecimals');
    expect(found.length).toBe(asked ? 1 : 0);
    expect(found.every(({ paths }) => paths?.[0]?.startsWith(path) === true)).toBe(true);
  });
});

describe('refused with words that say why', () => {
  it.each([
    ['tongueShare', '12', 'a percentage: 12 is 1,200 %; write 12 %'],
    ['tongueShare', '12.5', 'a percentage: 12.5 is 1,250 %; write 12.5 %'],
    ['tongueShare', '1', 'a percentage: 1 is 100 %; write 1 %'],
    ['tongueShare', '0', 'a figure from 0.1 % to 99.9 %'],
    ['trailer.jack.margin', '12', 'a figure from 100 % to 500 %'],
    ['trailer.axles.0.at', '15 lb', 'a unit of length; lb is a unit of weight'],
    [
      'trailer.axles.0.at',
      '31/2"',
      'one meaning: is it 3 1/2 or 31/2? Write a space before the fraction, or 15 1/2 at character 1',
    ],
    [
      'cargo.0.weight',
      '7K',
      'the thousands written out with a unit, such as "7,000 lb": K has more than one meaning at character 2',
    ],
    ['cargo.0.weight', '7 T', expect.stringContaining('a word that says which ton: "7 t" for tonnes of 1,000 kg')],
    ['cargo.0.weight', '7 tons', expect.stringContaining('which ton')],
  ])('%s = %s', (path, text, needed) => {
    expect(leftOf(assess(changed(tiltDeck(), path, text)))).toMatchObject({
      tag: 'UndecodableSpec',
      problems: [{ path, got: JSON.stringify(text).replaceAll('\\"', '"'), needed }],
    });
  });
  it('in a cut list too', () => {
    expect(describeError(leftOf(assess(changed(tiltDeck(), 'trailer.curb', frame('7K')))))).toContain('"7,000 lb"');
  });
});
