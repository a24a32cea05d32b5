/** Ready-made changes: pressure, tires, tiedowns, legs under the tail. */
import type { Assessment } from '../../assessment/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { shown } from './figures.js';
import type { Choice } from './lever.js';

/** Tires at the pressure that is molded on them, where they run with less. */
export function pressure({ trailer: { axles } }: DecodedSpec): readonly Choice[] {
  const changes: Record<string, unknown> = {};
  axles.forEach(({ tires }, i) => {
    const [run, molded] = [tires?.pressure, tires?.molded?.pressure];
    if (run === undefined || molded === undefined) return;
    if (run.value.value.lt(molded.value.value))
      changes[`trailer.axles.${i}.tires.pressure`] = `${molded.value.value.toFixed()} ${molded.value.unit}`;
  });
  return Object.keys(changes).length === 0
    ? []
    : [
        {
          kind: 'choice',
          word: 'pressure',
          name: 'tire pressure',
          who: 'driver',
          cost: 1,
          options: [{ says: 'bring the tires, cold, to the pressure molded on them', changes }],
        },
      ];
}

/** The same size of tire in the next load ranges, on every axle. Their wheels are checked unchanged. */
export function tires({ trailer: { axles } }: DecodedSpec): readonly Choice[] {
  const letters = ['C', 'D', 'E', 'F', 'G', 'H'];
  const designation = axles[0]?.tires?.designation;
  const range = designation === undefined ? undefined : /\bLR([C-G])$/.exec(designation)?.[1];
  if (designation === undefined || range === undefined) return [];
  const options = letters.slice(letters.indexOf(range) + 1).map((letter) => {
    const next = designation.replace(/LR[C-G]$/, `LR${letter}`);
    return {
      says: `fit tires ${next} on wheels and valves rated for their pressure`,
      changes: Object.fromEntries(
        axles.flatMap(({ tires: fitted }, i) =>
          fitted === undefined
            ? []
            : [
                [
                  `trailer.axles.${i}.tires`,
                  { designation: next, count: fitted.count, fitment: fitted.fitment },
                ] as const,
              ],
        ),
      ),
    };
  });
  return [{ kind: 'choice', word: 'tires', name: 'tires', who: 'shop', cost: 8, options }];
}

/** More tiedowns like the last one, for a piece whose tiedowns are not enough. */
export function moreTiedowns({ spec: { cargo = [] }, attention }: Assessment, base: unknown): readonly Choice[] {
  if (!attention.some(({ tag }) => tag === 'Tiedowns')) return [];
  const written = (base as { readonly cargo?: readonly { readonly tiedowns?: readonly unknown[] }[] }).cargo;
  return cargo.flatMap(({ name }, i): readonly Choice[] => {
    const fitted = written?.[i]?.tiedowns;
    const last = fitted?.at(-1);
    if (fitted === undefined || last === undefined) return [];
    return [
      {
        kind: 'choice',
        word: 'tiedowns',
        name: `tiedowns of ${name}`,
        settles: { tags: ['Tiedowns'], word: `tiedowns of ${name} ` },
        who: 'yard',
        cost: 2,
        options: [1, 2, 3, 4].map((more) => ({
          says: `tie ${name} down with ${more} more of the last kind: ${fitted.length + more} in all`,
          changes: { [`cargo.${i}.tiedowns`]: [...fitted, ...Array.from({ length: more }, () => last)] },
        })),
      },
    ];
  });
}

/** Legs under the tail, strong enough for what pulls the ball up while loading. */
export function rearLegs({ loading: { tailLift }, spec }: Assessment): readonly Choice[] {
  if (tailLift === undefined || tailLift.verdict === 'presses on the ball' || spec.trailer.rearLegs !== undefined)
    return [];
  const rated = Math.max(50, Math.ceil(tailLift.legs.value.value.toNumber() / 50 - 1e-9) * 50);
  return [
    {
      kind: 'choice',
      word: 'legs',
      name: 'rear legs',
      settles: { tags: ['LoadingPullsBallUp', 'LoadingLiftsTruck'], word: '' },
      who: 'driver',
      cost: 1,
      options: [
        {
          says: `set legs under the tail before loading, rated for at least ${shown(rated)} lb together`,
          changes: { 'trailer.rearLegs': `${rated} lb` },
        },
      ],
    },
  ];
}
