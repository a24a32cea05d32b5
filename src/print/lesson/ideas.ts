/** One sentence for each kind of figure: what to hold in mind while reading its steps. */

const ideas: readonly (readonly [pattern: RegExp, idea: string])[] = [
  [
    /tongue load|load at the ball|axle (group )?load/,
    'Take the coupler as a hinge: every weight times its distance behind it must be held up by the axles times theirs; what the axles do not carry stands on the tongue.',
  ],
  [
    /payload/,
    'Every limit allows some gross weight. The least of them counts, and the empty trailer has to come off it; the tongue load is part of that gross weight and no extra.',
  ],
  [/reserve/, 'A reserve is the limit less the load: zero is just within, anything below zero is over.'],
  [/share used|tongue share/, 'A share compares two weights of one kind: the part over the whole.'],
  [
    /gross weight|combination/,
    'A gross weight is everything that stands on the wheels and on the coupler, counted once.',
  ],
  [
    /front axle|rear axle|hitched/,
    'The truck is a lever over its rear axle: what presses down behind it lifts the front.',
  ],
  [
    /place|position|window|front of/,
    'A tongue limit is a place limit: an inch further back takes the same weight off the tongue everywhere on the deck.',
  ],
  [/jack/, 'The jack stands behind the ball, nearer to the axles, and so it takes more than the tongue load.'],
  [/brak/, 'A brake capacity belongs to a brake: all of them together must hold what the axles may carry.'],
  [/moment/, 'A moment is a weight times its distance from the hinge.'],
];

/** The sentence for a figure of this name, where there is one. */
export const ideaFor = (symbol: string): string | undefined => ideas.find(([pattern]) => pattern.test(symbol))?.[1];
