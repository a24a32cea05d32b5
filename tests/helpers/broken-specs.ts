/** Edits of valid specs that must be refused, each at the path of what was edited. */
import { type Chance, chanceOf } from './random/chance.js';
import { digitsAndUnit, figuresIn, type Leaf, recordsIn } from './random/leaves.js';
import { type JsonSpec, randomSpec } from './random-specs.js';
import { changed } from './specs.js';

export interface BrokenSpec {
  /** What was done to it. */
  readonly edit: string;
  readonly spec: JsonSpec;
  /** Where it must be refused. */
  readonly path: string;
}

/** Cut lists and local rules are files of their own inside a spec. */
const ownForms = /^(trailer\.curb\.(frame|deck)|rules\.local)\b/;
const ofSpec = ({ path }: Leaf): boolean => !ownForms.test(path);

type Edit = (spec: JsonSpec, chance: Chance) => { readonly path: string; readonly value: unknown } | undefined;

/** An edit of one figure, picked at random. */
const onFigure =
  (make: (figure: { readonly digits: string; readonly unit: string }) => unknown): Edit =>
  (spec, chance) => {
    const [first, ...more] = figuresIn(spec).filter(ofSpec);
    if (first === undefined) return undefined;
    const { path, value } = chance.pick([first, ...more]);
    return { path, value: make(digitsAndUnit(value)) };
  };

/** A key of a record whose path fits, replaced. */
const onKey =
  (where: RegExp, key: string, value: unknown): Edit =>
  (spec, chance) => {
    const [first, ...more] = recordsIn(spec).filter((each) => where.test(each.path) && ofSpec(each));
    if (first === undefined) return undefined;
    const { path } = chance.pick([first, ...more]);
    return { path: path === '' ? key : `${path}.${key}`, value };
  };

const otherDimension = (unit: string): string => (unit === 'psi' || unit === 'kPa' ? '12 lb' : '12 psi');

const edits: Readonly<Record<string, Edit>> = {
  'a figure without its unit': onFigure(({ digits }) => digits),
  'a figure of another dimension': onFigure(({ unit }) => otherDimension(unit)),
  'a number in place of text': onFigure(({ digits }) => Number(digits)),
  'a figure far too large': onFigure(({ unit }) => `900000000 ${unit}`),
  'a figure that is no number': onFigure(({ unit }) => `NaN ${unit}`),
  'a figure with a tail': onFigure(({ digits, unit }) => `${digits} ${unit} or so`),
  'an unknown unit': onFigure(({ digits }) => `${digits} stone`),
  'an unknown basis': onFigure(({ digits, unit }) => ({ text: `${digits} ${unit}`, basis: 'hearsay' })),
  'an unknown key of a figure': onFigure(({ digits, unit }) => ({ text: `${digits} ${unit}`, bassis: 'label' })),
  null: onFigure(() => null),
  'a list in place of a figure': onFigure(() => ['12 lb']),
  'an unknown key': onKey(/./, 'colour', 'red'),
  'an unknown key of the spec': onKey(/^$/, 'trailler', {}),
  'an unknown hitch': onKey(/^trailer$/, 'hitch', 'bumper'),
  'an unknown way of sharing': onKey(/^trailer$/, 'sharing', 'by luck'),
  'axles that are no list': onKey(/^trailer$/, 'axles', { 0: {} }),
  'cargo that is no list': onKey(/^$/, 'cargo', 'a machine'),
  'a piece without a name': onKey(/^cargo\.\d+$/, 'name', ''),
  'a name over two lines': onKey(/^cargo\.\d+$/, 'name', 'two\nlines'),
  'half a tire': onKey(/\.tires$/, 'count', 2.5),
  'an unknown fitment': onKey(/\.tires$/, 'fitment', 'triple'),
  'three tires on one axle': onKey(/\.tires$/, 'count', 3),
  'a wheel too few': onKey(/\.wheels$/, 'count', 1),
  'a word in place of yes or no': onKey(/^rules$/, 'commercial', 'yes'),
  'a trailer that is a text': onKey(/^$/, 'trailer', 'TD-14'),
};

/** A wheel is only too few where the tires are told. */
const applies = (edit: string, spec: JsonSpec, path: string): boolean =>
  edit !== 'a wheel too few' ||
  recordsIn(spec).some((record) => record.path === path.replace(/wheels\.count$/, 'tires'));

/** The broken spec of a seed; undefined where the edit finds nothing to edit in that spec. */
export function brokenSpec(seed: number): BrokenSpec | undefined {
  const names = Object.keys(edits);
  const edit = names[seed % names.length] as string;
  const spec = randomSpec(seed);
  const made = (edits[edit] as Edit)(spec, chanceOf(seed + 0x5eed));
  return made === undefined || !applies(edit, spec, made.path)
    ? undefined
    : { edit, spec: changed(spec, made.path, made.value), path: made.path };
}

/** So many broken specs, from a seed on. */
export function brokenSpecs(count: number, from = 0): readonly BrokenSpec[] {
  const found: BrokenSpec[] = [];
  for (let seed = from; found.length < count; seed += 1) {
    const broken = brokenSpec(seed);
    if (broken !== undefined) found.push(broken);
  }
  return found;
}
