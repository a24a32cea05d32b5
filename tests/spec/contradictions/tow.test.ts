/** Contradictions between the trailer and the truck, and between places of one piece or tool. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { decodeSpec } from '../../../src/spec/index.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

type Changes = readonly (readonly [path: string, value: unknown])[];

const problems = (...changes: Changes): readonly string[] => {
  const read = decodeSpec(changes.reduce((so, [path, value]) => changed(so, path, value), tiltDeck()));
  return isLeft(read) ? read.left.problems.map(({ path, got, needed }) => `${path}: ${got}; ${needed}`) : [];
};
const paths = (...changes: Changes): readonly string[] =>
  problems(...changes).map((told) => told.split(':')[0] as string);

describe('told at both of their keys', () => {
  it('a beam that weighs more without the tongue on it, and a low point behind the rear axle', () => {
    const lever = { reading: '9 lb', beamTare: '10 lb', pipeToTongue: '12 in', tongueToScale: '24 in' };
    const at = 'trailer.curb.tongueByLever';
    expect(paths([at, lever])).toEqual([`${at}.beamTare`, `${at}.reading`]);
    const low = ['cargo.0.lowPoint', { behindFrontAxle: '90 in', height: '9 in' }] as const;
    expect(paths(['cargo.0.wheelbase', '90 in'], low)).toEqual([
      'cargo.0.lowPoint.behindFrontAxle',
      'cargo.0.wheelbase',
    ]);
    expect(paths(['cargo.0.wheelbase', '90.1 in'], low)).toEqual([]);
  });
  it('a ball on the wrong side of its axle, and a combination rating below the GVWR', () => {
    expect(problems(['tow.overhang', '-1 in'])).toEqual([
      'tow.overhang: -1 in; at least 0 in, the rear axle',
      'trailer.hitch: "ball"; "gooseneck" for a ball ahead of the rear axle',
    ]);
    expect(paths(['tow.overhang', '0 in'])).toEqual([]);
    const gooseneck = ['trailer.hitch', 'gooseneck'] as const;
    expect(paths(gooseneck)).toEqual(['tow.overhang', 'trailer.hitch']);
    expect(paths(gooseneck, ['tow.overhang', '-176 in'])).toEqual(['tow.overhang', 'tow.wheelbase']);
    expect(paths(gooseneck, ['tow.overhang', '-4 in'])).toEqual([]);
    expect(paths(['rules.labelGcwr', '11,799 lb'])).toEqual(['tow.gvwr', 'rules.labelGcwr']);
    expect(paths(['rules.labelGcwr', '11,800 lb'])).toEqual([]);
  });
  it('crossmembers further apart than their run, with none at either end', () => {
    const line = {
      name: 'crossmembers',
      member: 'C3X4.1',
      length: '82 in',
      over: '10 ft',
      from: '62 in',
      rule: 'none at either end',
    };
    const at = 'trailer.curb.frame.3';
    expect(paths([at, { ...line, spacing: '120 in' }])).toEqual([`${at}.spacing`, `${at}.over`]);
    expect(paths([at, { ...line, spacing: '119 in' }])).toEqual([]);
  });
});
