/** Parts that can be had with greater ratings. */
import type { Part } from './lever.js';

const rows: readonly Omit<Part, 'kind' | 'step'>[] = [
  { word: 'ramps', name: 'stronger ramps', who: 'yard', cost: 5, paths: ['trailer.ramps.rating'] },
  { word: 'chains', name: 'stronger safety chains', who: 'yard', cost: 5, paths: ['trailer.chains.each'] },
  { word: 'jack', name: 'another jack', who: 'shop', cost: 8, paths: ['trailer.jack.rating'] },
  { word: 'ball', name: 'another ball', who: 'shop', cost: 7, paths: ['tow.ball.gross'] },
  {
    word: 'ball mount',
    name: 'another ball mount',
    who: 'shop',
    cost: 7,
    paths: ['tow.ballMount.gross', 'tow.ballMount.tongue'],
  },
  {
    word: 'coupler',
    name: 'another coupler',
    who: 'shop',
    cost: 9,
    paths: ['trailer.coupler.gross', 'trailer.coupler.tongue'],
  },
  {
    word: 'receiver',
    name: 'another receiver',
    who: 'shop',
    cost: 10,
    paths: ['tow.receiver.gross', 'tow.receiver.tongue'],
  },
];

/** All of them, in steps of 50 lb. */
export const parts: readonly Part[] = rows.map((part) => ({ ...part, kind: 'part', step: 50 }));

/** Those of the hitch. */
export const hitchParts: readonly Part[] = parts.filter(({ paths }) =>
  paths.some((path) => /ball|coupler|receiver/i.test(path)),
);
