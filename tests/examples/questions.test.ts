/**
 * Every customer question, run: its own assertions hold, and it prints what is kept beside it to the letter.
 *
 * `UPDATE=1 npx vitest run tests/examples` writes the kept prints anew; read the difference before committing it.
 */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { excavator, excavatorOnDeck, pickup, trailer, yardTruck } from '../../examples/questions/yard.js';
import { decodeSpec } from '../../src/spec/index.js';
import { asDerived, type Known } from '../../src/trace/index.js';
import { convert, show, type Unit } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';

const folder = fileURLToPath(new URL('../../examples/questions/', import.meta.url));
const kept = `${folder}expected/`;
const update = process.env.UPDATE === '1';
const names = readdirSync(folder)
  .filter((file) => file.endsWith('.ts') && file !== 'yard.ts')
  .map((file) => file.replace(/\.ts$/, ''))
  .sort();
const textOf = (path: string): string => readFileSync(path, 'utf8');

/** What the program prints when it is run. */
async function printed(name: string): Promise<string> {
  const lines: string[] = [];
  vi.spyOn(console, 'log').mockImplementation((...parts: unknown[]) => void lines.push(parts.join(' ')));
  await import(pathToFileURL(`${folder}${name}.ts`).href);
  return `${lines.join('\n')}\n`;
}

afterEach(() => void vi.restoreAllMocks());

describe('the customer questions', () => {
  it('are twenty-five, numbered without a gap', () => {
    expect(names.map((name) => name.slice(0, 3))).toEqual(
      Array.from({ length: 25 }, (_, i) => `${String(i + 1).padStart(2, '0')}-`),
    );
  });

  it.each(names)('%s prints what is kept', async (name) => {
    const out = await printed(name);
    if (update) {
      mkdirSync(kept, { recursive: true });
      writeFileSync(`${kept}${name}.txt`, out);
    }
    expect(out).toBe(textOf(`${kept}${name}.txt`));
    expect(out).toMatch(/\n\nWORKING\n\S/);
    expect(out).not.toMatch(/NaN|Infinity|undefined|\[object/);
    expect(out.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });

  it('keep no print of a question that is gone', () => {
    expect(readdirSync(kept).sort()).toEqual(names.map((name) => `${name}.txt`));
  });

  it('read as programs: a question in quotes, an assertion at the end, 20 to 90 lines', () => {
    for (const name of names) {
      const lines = textOf(`${folder}${name}.ts`).trimEnd().split('\n');
      expect(lines.slice(0, 4).join(' '), name).toMatch(/^\/\*\* {2}\* ".*\?"?/);
      expect(lines.filter((line) => /^\w/.test(line)).at(-1), name).toMatch(/^assert\./);
      expect(lines.length, name).toBeGreaterThanOrEqual(20);
      expect(lines.length, name).toBeLessThanOrEqual(90);
    }
  });

  it('stand in the guide, in order, each with its answer and a link to program and print', () => {
    const guide = textOf(fileURLToPath(new URL('../../docs/guide/questions.md', import.meta.url)));
    const links = [...guide.matchAll(/\]\(\.\.\/\.\.\/examples\/questions\/(\d[^)]+)\.ts\)/g)].map(([, name]) => name);
    expect(links).toEqual(names);
    const prints = [...guide.matchAll(/\]\(\.\.\/\.\.\/examples\/questions\/expected\/([^)]+)\.txt\)/g)].map(
      ([, name]) => name,
    );
    expect(prints).toEqual(names);
    const rows = guide.split('\n').filter((line) => /^\| \d/.test(line));
    rows.forEach((row, i) => {
      const figures = (row.split(' | ')[2] ?? '').match(/\d[\d,.]*\d (lb\/ft|lb|in|%|deg|times)/g) ?? [];
      const print = textOf(`${kept}${names[i]}.txt`).replaceAll(/\s+/g, ' ');
      expect(
        figures.filter((figure) => !print.includes(figure)),
        names[i],
      ).toEqual([]);
    });
    expect(rows).toHaveLength(names.length);
  });
});

describe('the yard', () => {
  const spec = rightOf(
    decodeSpec(JSON.parse(textOf(fileURLToPath(new URL('../../examples/tilt-deck.json', import.meta.url))))),
  );
  const figures = (...all: readonly (Known<Unit> | undefined)[]): readonly string[] =>
    all.map((one) => (one === undefined ? 'not given' : show(asDerived('figure', one).value)));

  it('has the trailer of the example spec', () => {
    const { gvwr, axles, curb, coupler, chains, jack, deck, ramps } = spec.trailer;
    expect(figures(trailer.gvwr, ...trailer.gawrs, trailer.empty, trailer.emptyTongue)).toEqual(
      figures(gvwr, axles[0]?.gawr, axles[1]?.gawr, curb?.weight, curb?.tongue),
    );
    expect(
      figures(
        trailer.coupler.gross,
        trailer.coupler.tongue,
        trailer.chains.each,
        trailer.deck.front,
        trailer.deck.rear,
      ),
    ).toEqual(figures(coupler?.gross, coupler?.tongue, chains?.each, deck?.front, deck?.rear));
    expect(figures(trailer.jack.rating, trailer.jack.at, convert(trailer.jack.margin, 'ratio'))).toEqual(
      figures(jack?.rating, jack?.at, jack?.margin),
    );
    expect(figures(trailer.ramps.length, trailer.ramps.height, trailer.ramps.rated.limit)).toEqual(
      figures(ramps?.length, ramps?.height, ramps?.rating),
    );
    expect(axles.map(({ at }) => at?.value.value.toNumber())).toEqual([204 - 17, 204 + 17]);
    expect(figures(trailer.axlesAt, trailer.axleSpacing)).toEqual(['204 in', '34 in']);
  });

  it('has its cargo and its truck', () => {
    const [machine] = spec.cargo ?? [];
    expect(
      figures(excavator.weight, excavator.length, excavator.balancePoint, excavator.uncertainty, excavator.front),
    ).toEqual(figures(machine?.weight, machine?.length, machine?.balancePoint, machine?.uncertainty, machine?.front));
    expect(figures(excavatorOnDeck.at)).toEqual(['182 in']);
    const { tow } = spec;
    const keys = [
      'front',
      'rear',
      'gvwr',
      'frontGawr',
      'rearGawr',
      'gcwr',
      'wheelbase',
      'hitchHardware',
      'trailerRating',
      'tongueRating',
    ] as const;
    expect(figures(...keys.map((key) => yardTruck[key]))).toEqual(figures(...keys.map((key) => tow?.[key])));
    const parts = (truck: typeof yardTruck): readonly string[] =>
      figures(
        truck.receiver?.gross,
        truck.receiver?.tongue,
        truck.ballMount?.gross,
        truck.ballMount?.tongue,
        truck.ball?.gross,
        truck.placard?.limit,
        truck.placard?.people,
        truck.placard?.cargo,
      );
    expect(parts(yardTruck)).toEqual(parts({ ...tow, hitch: 'ball behind' }));
    expect(
      [yardTruck.overhang, tow?.overhang].map((one) =>
        typeof one === 'object' && !('ofWheelbase' in one) ? show(asDerived('overhang', one).value) : one,
      ),
    ).toEqual(['54 in', '54 in']);
  });

  it('has a pickup whose brochure promises more than its door does', () => {
    expect(figures(pickup.trailerRating, pickup.placard.limit)).toEqual(['11,000 lb', '1,400 lb']);
  });
});
