/**
 * Which of our lengths, axles and tires carry this machine, and where must it stand? Every combination, a ranked table, a CSV.
 * All figures and names are invented.
 */

import { once } from 'node:events';
import { createWriteStream, mkdirSync } from 'node:fs';
import { orThrow } from '../src/errors.js';
import type { AxleInput, SpecInput } from '../src/spec/index.js';
import {
  alternatives,
  type Chunk,
  levels,
  range,
  type Summary,
  study,
  summaryText,
  toCsv,
  verdictCode,
} from '../src/study/index.js';

/** The trailer as a weighed whole, so that a longer deck brings its own weight, tongue load and axle places. */
const axle: AxleInput = {
  beam: '7,000 lb',
  brakes: { left: '4,000 lb', right: '4,000 lb' },
  tires: {
    designation: 'ST235/80R16 LRE',
    count: 2,
    fitment: 'single',
    molded: { single: '3,520 lb', pressure: '80 psi' },
    pressure: '80 psi',
  },
};
const base: SpecInput = {
  trailer: {
    hitch: 'ball',
    gvwr: '14,000 lb',
    curb: { weight: '3,650 lb', tongue: '520 lb' },
    sharing: 'equalised',
    axles: [
      { at: '187 in', ...axle },
      { at: '221 in', ...axle },
    ],
    coupler: { gross: '15,000 lb', tongue: '2,000 lb' },
  },
  cargo: [{ name: 'excavator', weight: '9,000 lb', front: '122 in', balancePoint: '60 in' }],
  tongueShare: '12 %',
};

const deck = (weight: string, tongue: string, front: string, rear: string): Record<string, unknown> => ({
  'trailer.curb.weight': weight,
  'trailer.curb.tongue': tongue,
  'trailer.axles.0.at': front,
  'trailer.axles.1.at': rear,
});
const both = (part: string, value: unknown): Record<string, unknown> => ({
  [`trailer.axles.0.${part}`]: value,
  [`trailer.axles.1.${part}`]: value,
});
const axles = (rating: string, gvwr: string): Record<string, unknown> => ({
  ...both('beam', rating),
  'trailer.gvwr': gvwr,
});
const tire = (designation: string, single: string, pressure: string): Record<string, unknown> =>
  both('tires', { designation, count: 2, fitment: 'single', molded: { single, pressure }, pressure });

let told: Summary | undefined;
const made = orThrow(
  study({
    base,
    design: { kind: 'grid' },
    vary: {
      deck: alternatives({
        '16 ft': deck('3,320 lb', '470 lb', '163 in', '197 in'),
        '18 ft': deck('3,480 lb', '495 lb', '175 in', '209 in'),
        '20 ft': deck('3,650 lb', '520 lb', '187 in', '221 in'),
        '22 ft': deck('3,840 lb', '550 lb', '199 in', '233 in'),
        '24 ft': deck('4,060 lb', '585 lb', '211 in', '245 in'),
      }),
      axles: alternatives({
        '5,200 lb': axles('5,200 lb', '10,400 lb'),
        '6,000 lb': axles('6,000 lb', '12,000 lb'),
        '7,000 lb': axles('7,000 lb', '14,000 lb'),
        '8,000 lb': axles('8,000 lb', '15,900 lb'),
      }),
      tires: alternatives({
        'ST225/75R15 D': tire('ST225/75R15 LRD', '2,540 lb', '65 psi'),
        'ST225/75R15 E': tire('ST225/75R15 LRE', '2,830 lb', '80 psi'),
        'ST235/80R16 E': tire('ST235/80R16 LRE', '3,520 lb', '80 psi'),
      }),
      'cargo.0.weight': levels('8,550 lb', '8,700 lb', '8,850 lb', '9,000 lb', '9,150 lb', '9,300 lb', '9,450 lb'),
      'cargo.0.front': range('80 in', '170 in', 361),
    },
    onEnd: (summary) => {
      told = summary;
    },
    onProgress: (done, of) => {
      if (done === of || done % 10_240 === 0)
        process.stderr.write(
          `\r${done.toLocaleString('en-US')} of ${of.toLocaleString('en-US')} combinations${done === of ? '\n' : ''}`,
        );
    },
  }),
);

/** One build: at each place, for how many machine weights everything is within and nothing asks attention. */
interface Build {
  readonly name: string;
  readonly fronts: Map<number, number>;
  readonly limits: Map<string, number>;
}
const builds = new Map<string, Build>();

function count(chunk: Chunk): void {
  for (let i = 0; i < chunk.rows; i += 1) {
    if (chunk.reasons[i] !== 0) continue;
    const name = made.choices
      .map(({ choices }, k) => (choices[chunk.choices[k]?.[i] ?? -1] ?? '').padEnd([7, 10, 15][k] ?? 0))
      .join('');
    const build = builds.get(name) ?? { name, fronts: new Map<number, number>(), limits: new Map<string, number>() };
    builds.set(name, build);
    const front = chunk.inputs[1]?.[i] as number;
    if (chunk.verdict[i] === verdictCode('within')) build.fronts.set(front, (build.fronts.get(front) ?? 0) + 1);
    const governs = chunk.governNames[chunk.governs[i] as number] as string;
    build.limits.set(governs, (build.limits.get(governs) ?? 0) + 1);
  }
}

const begun = performance.now();
for (const chunk of made.chunks()) count(chunk);
const seconds = (performance.now() - begun) / 1000;

const rows = [...builds.values()]
  .map(({ name, fronts, limits }) => {
    const window = [...fronts].filter(([, weights]) => weights === 7).map(([front]) => front);
    const [limit = ''] = [...limits].sort(([, a], [, b]) => b - a)[0] ?? [];
    return {
      name,
      from: Math.min(...window),
      to: Math.max(...window),
      wide: window.length === 0 ? -1 : Math.max(...window) - Math.min(...window),
      limit,
    };
  })
  .sort((a, b) => b.wide - a.wide || a.name.localeCompare(b.name));

console.log(`An excavator of 8,550 to 9,450 lb: ${made.count.toLocaleString('en-US')} combinations.\n`);
if (told !== undefined) console.log(`${summaryText(told)}.\n`);
console.log('Deck   Axles     Tires          Front face, in    Most often the limit');
for (const { name, from, to, wide, limit } of rows.slice(0, 20)) {
  console.log(
    `${name}${(wide < 0 ? 'nowhere within' : `${from.toFixed(2)} to ${to.toFixed(2)}`).padEnd(18)}${limit.split(' = ')[0]?.split(' against ').at(-1) ?? ''}`,
  );
}
const carrying = rows.filter(({ wide }) => wide >= 0).length;
console.log(
  `\n${carrying} of ${rows.length} builds have a place where every weight is within and nothing asks attention. Labels and makers govern; weigh the rig.`,
);

mkdirSync('out', { recursive: true });
const file = createWriteStream('out/demo-study.csv');
let page = '';
for (const lines of toCsv(made)) {
  page += lines;
  if (page.length > 1e6) {
    if (!file.write(page)) await once(file, 'drain');
    page = '';
  }
}
file.end(page);
await once(file, 'finish');
process.stderr.write(`judged in ${seconds.toFixed(2)} s; all rows in out/demo-study.csv\n`);
if (builds.size !== 60 || carrying === 0 || carrying === 60)
  throw new Error('the demo no longer says what it is meant to say');
