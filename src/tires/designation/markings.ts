/** The parts behind the size as they are found, and the load range among them. */

import { letterOf, plyOf } from '../load/ply.js';
import type { Designation, TireSize } from './designation.js';
import { fail, type Scan } from './scan.js';

/** The parts as they are found; each may be found once. */
export interface Markings {
  readonly prefix: Designation['prefix'];
  readonly size: TireSize;
  suffix: Designation['suffix'];
  service: Designation['service'];
  second: Designation['second'];
  range: Designation['range'];
  /** The ply rating as printed, to be held against a printed load range. */
  plyRating: number | undefined;
  version: Designation['version'];
  setAside: string[];
}

/** A load range letter, wherever it stood. */
export function readRange(scan: Scan, found: Markings, letter: string, at: number): void {
  const plyRating = plyOf(letter);
  const known = plyRating === undefined ? undefined : letterOf(plyRating);
  if (plyRating === undefined || known === undefined) {
    fail(scan, 'UnknownLoadRange', 'load range', 'a letter A to N without I and K', at);
    return;
  }
  if (found.range?.from === 'load range') {
    fail(scan, 'RepeatedPart', 'load range', 'one load range', at);
    return;
  }
  if (found.plyRating !== undefined && found.plyRating !== plyRating) {
    conflict(scan, 'load range', at);
    return;
  }
  found.range = { letter: known, plyRating, from: 'load range' };
}

/** A ply rating; alone it means its letter. */
export function readPlyRating(scan: Scan, found: Markings, plyRating: number, at: number): void {
  const letter = letterOf(plyRating);
  if (letter === undefined) {
    fail(scan, 'UnknownPlyRating', 'ply rating', 'an even ply rating of 2 to 24', at);
    return;
  }
  if (found.plyRating !== undefined) {
    fail(scan, 'RepeatedPart', 'ply rating', 'one ply rating', at);
    return;
  }
  if (found.range !== undefined && found.range.plyRating !== plyRating) {
    conflict(scan, 'ply rating', at);
    return;
  }
  found.plyRating = plyRating;
  found.range ??= { letter, plyRating, from: 'ply rating' };
}

const conflict = (scan: Scan, part: 'load range' | 'ply rating', at: number): undefined =>
  fail(scan, 'LoadRangePlyConflict', part, 'a load range and a ply rating that say the same', at);
