/** Beams on two supports: textbook and handbook cases. The source stands beside each check. */
import { describe, expect, it } from 'vitest';
import { allowableStress, type BeamAnswer, type BeamMember, beam, type Load } from '../../src/members/index.js';
import { foot, inch3, inch4, ksi, lbfPerFt, type Quantity, quantity, type UnitOf } from '../../src/units/index.js';
import { plain, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

type Place = Quantity<UnitOf<'length'>>;
const steel: BeamMember = {
  E: ksi(29000),
  I: inch4(100),
  S: inch3(20),
  allowable: rightOf(allowableStress('ASD 1989, non-compact, braced', 'A36')),
};
const spread = (perFoot: number, from: Place, to: Place): Load => ({
  kind: 'spread',
  name: `${perFoot} lbf/ft`,
  perLength: lbfPerFt(perFoot),
  from,
  to,
});
const point = (force: number, at: Place): Load => ({
  kind: 'point',
  name: `${force} lbf`,
  force: quantity(force, 'lbf'),
  at,
});

function solve(
  overhangs: readonly [Place, Place, Place],
  loads: readonly Load[],
  member: BeamMember = steel,
): BeamAnswer {
  const [leftOverhang, span, rightOverhang] = overhangs;
  const solved = rightOf(beam({ leftOverhang, span, rightOverhang }, loads, member));
  expectReplays(
    solved.reactions.left,
    solved.reactions.right,
    solved.greatestMoment.moment,
    solved.bending.stress,
    ...solved.stations.flatMap(({ shearLeft, shearRight, moment, deflection }) => [
      shearLeft,
      shearRight,
      moment,
      deflection,
    ]),
  );
  return solved;
}
/** Figures at a place, in lbf, lbf ft and in. */
function at(solved: BeamAnswer, place: number) {
  const station = solved.stations.find(({ at: x }) => Math.abs(plain(x) - place) < 1e-9);
  if (station === undefined) throw new Error(`no station at ${place}`);
  return { V: plain(station.shearRight), M: plain(station.moment) / 12, y: plain(station.deflection) };
}

describe('Gere, Mechanics of Materials, prob. 4.3-5', () => {
  it('supports at 0 and 20 ft, free end 32 ft: RA 2,460, RB 2,740; at 16 ft V -1,540 lb, M -4,640 lb ft', () => {
    const solved = solve(
      [foot(0), foot(20), foot(12)],
      [spread(400, foot(0), foot(10)), spread(200, foot(26), foot(32))],
      { ...steel, alsoAt: [foot(16)] },
    );
    expect([plain(solved.reactions.left), plain(solved.reactions.right)]).toEqual([2460, 2740]);
    expect(at(solved, 192)).toMatchObject({ V: -1540 });
    expect(at(solved, 192).M).toBeCloseTo(-4640, 9);
  });
});

describe('Timoshenko, Strength of Materials I, 3rd ed. 1956 p. 98, via a program verification manual', () => {
  it('10 ft overhangs, 20 ft span, 10,000 lb/ft on the overhangs: 11,404 psi, 0.182 in (depth 30 in from memory of the problem)', () => {
    const solved = solve(
      [foot(10), foot(20), foot(10)],
      [spread(10000, foot(0), foot(10)), spread(10000, foot(30), foot(40))],
      { ...steel, E: ksi(30000), I: inch4(7892), S: inch3('526.133333333333333333') },
    );
    expect(plain(solved.bending.stress)).toBeCloseTo(11404, 0);
    expect(at(solved, 240).y).toBeCloseTo(-0.182463, 6);
  });
});

describe('worked web solution, recomputed', () => {
  it('8 kip/ft on both 10 ft overhangs, S 414 in3: 80 kips each, -400 kip ft, 11.59 ksi', () => {
    const solved = solve(
      [foot(10), foot(20), foot(10)],
      [spread(8000, foot(0), foot(10)), spread(8000, foot(30), foot(40))],
      { ...steel, S: inch3(414) },
    );
    expect([plain(solved.reactions.left), plain(solved.reactions.right)]).toEqual([80000, 80000]);
    expect(at(solved, 120).M).toBeCloseTo(-400000, 6);
    expect(plain(solved.bending.stress)).toBeCloseTo(11594, 0);
  });
});

describe('AISC Design Examples v15.0, F.7B', () => {
  it('0.55 kip/ft on 21 ft: 30.3 kip ft', () => {
    expect(
      plain(solve([foot(0), foot(21), foot(0)], [spread(550, foot(0), foot(21))]).greatestMoment.moment) / 12000,
    ).toBeCloseTo(30.319, 3);
  });
});

describe('machine-written web answer, wrong in print: the right figures are ours', () => {
  it('M is -37.5 at the support and 0 under the end load, not -46.5 and -198.75', () => {
    const metre = (x: number) => quantity(x, 'm');
    const kilo = (force: number, x: number): Load => ({
      kind: 'point',
      name: `${force} kN at ${x}`,
      force: quantity(force, 'kN'),
      at: metre(x),
    });
    const solved = solve(
      [metre(0), metre(8), quantity('1.5', 'm')],
      [
        kilo(25, 2.5),
        kilo(20, 5.5),
        kilo(25, 9.5),
        { kind: 'spread', name: '6 kN/m', perLength: quantity(6, 'kN/m'), from: metre(2.5), to: metre(5.5) },
      ],
    );
    const kN = 4.4482216152605 / 1000;
    const kNm = (x: number): number => (at(solved, x / 0.0254).M * 1.3558179483314) / 1000;
    expect(plain(solved.reactions.left) * kN).toBeCloseTo(27.75, 9);
    expect(plain(solved.reactions.right) * kN).toBeCloseTo(60.25, 9);
    expect(kNm(2.5)).toBeCloseTo(69.375, 9);
    expect(kNm(5.5)).toBeCloseTo(50.625, 9);
    expect(kNm(8)).toBeCloseTo(-37.5, 9);
    expect(kNm(9.5)).toBeCloseTo(0, 9);
  });
});

describe('handbook cases: formulas checked symbolically, numbers of AISC Table 3-23 from memory', () => {
  // l span, a right overhang, w per foot, P; lengths in ft, EI in lbf ft2; deflections in ft
  const [l, a, c, w, P] = [16, 5, 3, 300, 2000];
  const EI = (29e6 * 100) / 144;
  const feet = (x: number): Place => foot(x.toFixed(12));
  const simple = [foot(0), foot(l), foot(0)] as const;
  const over = [foot(0), foot(l), foot(a)] as const;
  const y = (solved: BeamAnswer, x: number): number => at(solved, x * 12).y / 12;
  const R = (solved: BeamAnswer): readonly number[] => [plain(solved.reactions.left), plain(solved.reactions.right)];
  const near = (found: readonly number[], wanted: readonly number[]): void => {
    for (const [i, value] of wanted.entries()) expect(found[i]).toBeCloseTo(value, 8);
  };
  const greatest = (solved: BeamAnswer): number => plain(solved.greatestMoment.moment) / 12;

  it('S1 simple span, spread load', () => {
    const s = solve(simple, [spread(w, foot(0), foot(l))]);
    near(R(s), [(w * l) / 2, (w * l) / 2]);
    near([greatest(s), y(s, l / 2)], [(w * l ** 2) / 8, (5 * w * l ** 4) / (384 * EI)]);
    expect(s.greatestMoment.at).toEqual(['midspan']);
  });
  it('S2 simple span, load at the centre', () => {
    const s = solve(simple, [point(P, foot(l / 2))]);
    near([...R(s), greatest(s), y(s, l / 2)], [P / 2, P / 2, (P * l) / 4, (P * l ** 3) / (48 * EI)]);
  });
  it('S3 simple span, load anywhere', () => {
    const [u, v] = [5, l - 5];
    const s = solve(simple, [point(P, foot(u))]);
    near(
      [...R(s), greatest(s), y(s, u)],
      [(P * v) / l, (P * u) / l, (P * u * v) / l, (P * u ** 2 * v ** 2) / (3 * EI * l)],
    );
  });
  it('O1 overhang, spread over all', () => {
    const peak = (l / 2) * (1 - a ** 2 / l ** 2);
    const x = 4;
    const s = solve(over, [spread(w, foot(0), foot(l + a))], { ...steel, alsoAt: [foot(x)] });
    near(R(s), [(w * (l ** 2 - a ** 2)) / (2 * l), (w * (l + a) ** 2) / (2 * l)]);
    near([at(s, peak * 12).M, at(s, l * 12).M], [(w * (l + a) ** 2 * (l - a) ** 2) / (8 * l ** 2), (-w * a ** 2) / 2]);
    near(
      [y(s, x)],
      [
        (w * x * (l ** 4 - 2 * l ** 2 * x ** 2 + l * x ** 3 - 2 * a ** 2 * l ** 2 + 2 * a ** 2 * x ** 2)) /
          (24 * EI * l),
      ],
    );
    near([y(s, l + a)], [(w * a * (4 * a ** 2 * l - l ** 3 + 3 * a ** 3)) / (24 * EI)]);
  });
  it('O2 spread on the overhang only: hold-down, uplift between', () => {
    const x = l / Math.sqrt(3);
    const s = solve(over, [spread(w, foot(l), foot(l + a))], { ...steel, alsoAt: [feet(x)] });
    near(R(s), [(-w * a ** 2) / (2 * l), (w * a * (2 * l + a)) / (2 * l)]);
    near(
      [at(s, l * 12).M, y(s, l + a), y(s, x)],
      [
        (-w * a ** 2) / 2,
        (w * a ** 3 * (4 * l + 3 * a)) / (24 * EI),
        (-w * a ** 2 * l ** 2) / (18 * Math.sqrt(3) * EI),
      ],
    );
    expect(s.notes.map(({ tag }) => tag)).toEqual(['StaticCheckOnly', 'HoldDown']);
  });
  it('O3 load at the tip', () => {
    const x = l / Math.sqrt(3);
    const s = solve(over, [point(P, foot(l + a))], { ...steel, alsoAt: [feet(x)] });
    near(R(s), [(-P * a) / l, (P * (l + a)) / l]);
    near(
      [at(s, l * 12).M, y(s, l + a), y(s, x)],
      [-P * a, (P * a ** 2 * (l + a)) / (3 * EI), (-P * a * l ** 2) / (9 * Math.sqrt(3) * EI)],
    );
  });
  it('O4 spread between the supports: the tip rises', () => {
    const s = solve(over, [spread(w, foot(0), foot(l))]);
    near(
      [...R(s), greatest(s), y(s, l / 2), y(s, l + a)],
      [(w * l) / 2, (w * l) / 2, (w * l ** 2) / 8, (5 * w * l ** 4) / (384 * EI), (-w * l ** 3 * a) / (24 * EI)],
    );
  });
  it('O5 load between the supports', () => {
    const [u, v] = [6, l - 6];
    const s = solve(over, [point(P, foot(u))]);
    near(
      [...R(s), greatest(s), y(s, l + a)],
      [(P * v) / l, (P * u) / l, (P * u * v) / l, (-P * u * v * (l + u) * a) / (6 * EI * l)],
    );
  });
  it('D1 two overhangs, spread over all', () => {
    const L = c + l + a;
    const s = solve([foot(c), foot(l), foot(a)], [spread(w, foot(0), foot(L))]);
    const left = (w * L * (L - 2 * a)) / (2 * l);
    near(R(s), [left, (w * L * (L - 2 * c)) / (2 * l)]);
    near(
      [at(s, c * 12).M, at(s, (c + l) * 12).M, at(s, (left / w) * 12).M],
      [(-w * c ** 2) / 2, (-w * a ** 2) / 2, left * (left / w - c) - (w * (left / w) ** 2) / 2],
    );
  });
  it('D2 equal overhangs, spread over all', () => {
    const s = solve([foot(c), foot(l), foot(c)], [spread(w, foot(0), foot(l + 2 * c))]);
    near(R(s), [(w * (l + 2 * c)) / 2, (w * (l + 2 * c)) / 2]);
    near([at(s, (c + l / 2) * 12).M, at(s, c * 12).M], [(w * l ** 2) / 8 - (w * c ** 2) / 2, (-w * c ** 2) / 2]);
    near(
      [y(s, c + l / 2), y(s, 0)],
      [
        (w * l ** 2 * (5 * l ** 2 - 24 * c ** 2)) / (384 * EI),
        (w * c * (3 * c ** 2 * (c + 2 * l) - l ** 3)) / (24 * EI),
      ],
    );
  });
  it('D3 equal moments at overhangs of 0.20711 of the length (derived); less or more overhang is worse', () => {
    const L = 20;
    const greatestFor = (share: number): number => {
      const [overhang, span] = [(share * L).toFixed(6), (L - 2 * Number((share * L).toFixed(6))).toFixed(6)];
      const solved = rightOf(
        beam(
          { leftOverhang: foot(overhang), span: foot(span), rightOverhang: foot(overhang) },
          [spread(w, foot(0), foot(L))],
          steel,
        ),
      );
      expectReplays(solved.greatestMoment.moment);
      return greatest(solved);
    };
    const best = (Math.SQRT2 - 1) / 2;
    expect(greatestFor(best)).toBeCloseTo((w * (best * L) ** 2) / 2, 2);
    for (const share of [best - 0.01, best + 0.01]) expect(greatestFor(share)).toBeGreaterThan(greatestFor(best));
  });
  it('G pieces of spread load and points anywhere: the general sums', () => {
    const [xa, xb] = [c, c + l];
    const pieces = [
      [100, 1, 7],
      [250, 5, 20],
      [80, 19, 24],
    ] as const;
    const points = [
      [900, 0],
      [1500, 11],
      [700, 23],
    ] as const;
    const s = solve(
      [foot(c), foot(l), foot(a)],
      [...pieces.map(([q, from, to]) => spread(q, foot(from), foot(to))), ...points.map(([p, x]) => point(p, foot(x)))],
    );
    const total =
      pieces.reduce((sum, [q, from, to]) => sum + q * (to - from), 0) + points.reduce((sum, [p]) => sum + p, 0);
    const RB =
      (pieces.reduce((sum, [q, from, to]) => sum + q * (to - from) * ((from + to) / 2 - xa), 0) +
        points.reduce((sum, [p, x]) => sum + p * (x - xa), 0)) /
      (xb - xa);
    near(R(s), [total - RB, RB]);
    // an independent search: the largest |M| of 24,001 places is not above the one found
    const M = (x: number): number =>
      (total - RB) * Math.max(x - xa, 0) +
      RB * Math.max(x - xb, 0) -
      points.reduce((sum, [p, at]) => sum + p * Math.max(x - at, 0), 0) -
      pieces.reduce((sum, [q, from, to]) => sum + (q / 2) * (Math.max(x - from, 0) ** 2 - Math.max(x - to, 0) ** 2), 0);
    const searched = Math.max(...Array.from({ length: 24001 }, (_, i) => Math.abs(M(i / 1000))));
    expect(greatest(s)).toBeGreaterThanOrEqual(searched - 1e-6);
    expect(greatest(s) / searched).toBeLessThan(1.000001);
  });
});
