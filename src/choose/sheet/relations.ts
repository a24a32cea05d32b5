/** What must hold between the figures of a sheet. */
import type { Row } from './feasible.js';
import { inPrint, type ReadFigure, type Sheet } from './sheet.js';

/** One relation: `sum of factor x figure` is zero, or not above zero. */
export interface Relation {
  /** What must hold, in words. */
  readonly says: string;
  /** Why. */
  readonly source: string;
  readonly factors: ReadonlyMap<string, number>;
  readonly kind: 'equal' | 'not above';
  readonly unit: 'lb' | 'in';
}

const own = 'the words of the sheet';
const practice = 'common practice, no source';

/** Every relation that can be between figures of a sheet; a figure that is not printed may be anything. */
export function relationsOf({ axles = [], tires }: Sheet, tongueShare: number): readonly Relation[] {
  const axlePaths = axles.map((_, i) => `axles.${i}`);
  const percent = `${Math.round(tongueShare * 1000) / 10} %`;
  const relation = (
    says: string,
    source: string,
    kind: Relation['kind'],
    factors: readonly (readonly [string, number])[],
    unit: Relation['unit'] = 'lb',
  ): Relation => ({ says, source, kind, factors: new Map(factors), unit });
  const minusAll = axlePaths.map((path) => [path, -1] as const);
  return [
    relation('empty weight and payload make the GVWR', `${own}; 49 CFR 567.4(g)(3), from memory`, 'equal', [
      ['emptyWeight', 1],
      ['payload', 1],
      ['gvwr', -1],
    ]),
    ...(axles.length === 0
      ? []
      : [
          relation(
            `axles bear the GVWR less at most ${percent} of it on the tongue`,
            'statics; the share is guidance, editable',
            'not above',
            [['gvwr', 1 - tongueShare], ...minusAll],
          ),
          relation('the axles together make the capacity of all axles', own, 'equal', [
            ['axleCapacity', 1],
            ...minusAll,
          ]),
        ]),
    ...(tires === undefined
      ? []
      : [
          ...axlePaths.map((path, i) =>
            relation(
              `the ${tires.count} tires of axle ${i + 1} bear its rating`,
              '49 CFR 571.120 S5.1.2, from memory',
              'not above',
              [
                [path, 1],
                ['tires.each', -tires.count],
              ],
            ),
          ),
          ...(axles.length === 0
            ? []
            : [
                relation(`${tires.count * axles.length} tires make the capacity of all tires`, own, 'equal', [
                  ['tireCapacity', 1],
                  ['tires.each', -tires.count * axles.length],
                ]),
              ]),
        ]),
    relation('the coupler is rated for the GVWR', practice, 'not above', [
      ['gvwr', 1],
      ['coupler', -1],
    ]),
    relation(
      'tongue and deck make the overall length',
      own,
      'equal',
      [
        ['tongueLength', 1],
        ['deckLength', 1],
        ['overallLength', -1],
      ],
      'in',
    ),
    relation(
      'flat part and dovetail make the deck',
      own,
      'equal',
      [
        ['flatLength', 1],
        ['dovetailLength', 1],
        ['deckLength', -1],
      ],
      'in',
    ),
    relation(
      'the deck is no wider than the trailer',
      own,
      'not above',
      [
        ['deckWidth', 1],
        ['overallWidth', -1],
      ],
      'in',
    ),
  ];
}

/** A relation as rows. */
export function rowsOf({ factors, kind }: Relation): readonly Row[] {
  const row = { factors, atMost: 0 };
  return kind === 'not above'
    ? [row]
    : [row, { factors: new Map([...factors].map(([name, factor]) => [name, -factor])), atMost: 0 }];
}

/** A printed figure as rows: between the least and the most that print so. Lengths and weights are above zero. */
export const boundsOf = ({ path, low, high }: ReadFigure): readonly Row[] => [
  { factors: new Map([[path, 1]]), atMost: high },
  { factors: new Map([[path, -1]]), atMost: -low },
];

/** The arithmetic of a relation, as far as its figures are printed: `3,650 lb + 10,500 lb = 14,150 lb; GVWR 14,000 lb`. */
export function arithmeticOf({ says, factors, unit, kind }: Relation, figures: readonly ReadFigure[]): string {
  const at = new Map(figures.map((figure) => [figure.path, figure]));
  const side = (sign: 1 | -1): string => {
    const terms = [...factors].filter(([, factor]) => factor * sign > 0);
    const written = terms.map(([path, factor]) => {
      const figure = at.get(path);
      const size = Math.round(Math.abs(factor) * 1e4) / 1e4;
      const name = figure === undefined ? `${path} (not printed)` : `${figure.name} ${figure.printed}`;
      return size === 1 ? name : `${size} x ${name}`;
    });
    const known = terms.every(([path]) => at.has(path));
    const sum = terms.reduce((all, [path, factor]) => all + Math.abs(factor) * (at.get(path)?.at ?? 0), 0);
    const plain = terms.length === 1 && Math.abs(terms[0]?.[1] ?? 0) === 1;
    return known && !plain ? `${written.join(' + ')} = ${inPrint(sum, unit)}` : written.join(' + ');
  };
  return `${says}: ${side(1)} ${kind === 'equal' ? 'must be' : 'must not be above'} ${side(-1)}`;
}
