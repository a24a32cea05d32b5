import type { KeyRows } from '../key-row.js';

export const curbKeys = [
  { type: 'Curb', about: 'Weighed, or built up from parts. When both are there the scale governs, and the difference is told.', rows: [
    ['weight', 'the whole empty trailer, tongue in it, options fitted', 'scale, all wheels and the tongue', { text: '3,650 lb', basis: 'scale' }, 'the built-up weight is used; with neither, gross and payload'],
    ['tongue', 'what the empty trailer puts on the hitch', 'tongue scale, trailer level', { text: '520 lb', basis: 'scale' }, 'with a weighed trailer: axle loads and tongue'],
    ['tongueByLever', 'the same by a bathroom scale and a beam, coupler on the beam; `tongue` outranks it', '`tongue` must be given'],
    ['added', 'what was fitted after the trailer was weighed: options by weight and place', 'the weighed trailer is taken as it stands'],
    ['items', 'its parts, when it is built up', 'it must be weighed'],
    ['frame', 'its steel, as a cut list', 'it is not in the built-up weight'],
    ['deck', 'its deck, area by area', 'it is not in the built-up weight'],
    ['grows', 'names of the lines of `frame` and `deck` that get longer, or more, with the deck', 'drawing', ['main rails', 'deck boards'], 'what more deck costs is not answered'],
    ['tolerance', 'how far the built-up weight may be from the scale, as a share of it', 'your practice', '3 %', 'the difference is told and not judged'],
  ] },
  { type: 'TongueByLever', rows: [
    ['reading', 'what the scale shows, beam and tongue on it', 'scale', '220 lb', ''],
    ['beamTare', 'what it shows under the beam alone', 'scale', '20 lb', ''],
    ['pipeToTongue', 'along the beam, fixed support to the coupler', 'tape', '1 ft', ''],
    ['tongueToScale', 'along the beam, coupler to the scale', 'tape', '2 ft', ''],
  ] },
  { type: 'AddedPart', rows: [
    ['name', 'what was added', 'you choose it', 'winch on a post', ''],
    ['weight', 'what it weighs', 'scale or sheet', '120 lb', ''],
    ['at', 'where its middle stands', 'tape', '58 in', ''],
  ] },
  { type: 'Item', rows: [
    ['name', 'what it is', 'you choose it', 'left rail', ''],
    ['weight', 'the weight of one', 'scale or sheet', '164 lb', ''],
    ['at', 'where its middle stands', 'drawing or tape', '168 in', ''],
    ['count', 'how many, all at that place on average', 'count them', 2, 'one'],
  ] },
] as const satisfies readonly KeyRows[];
