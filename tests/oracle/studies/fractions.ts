/**
 * The verdict of the round trailer in whole numbers and fractions of whole numbers, from the formulas of statics alone: no line of
 * the library stands behind it.
 *
 * `axles carry L = ((W0 - T0) A + w x) / A`, `A` midway between two axles that share alike; `tongue T = W0 + w - L`; each axle
 * carries `L / 2`, each of its two tires `L / 4`. A load is within when it is not above its limit; the tightest checks are those of
 * the greatest `load / limit`. All shares are compared by cross-multiplying.
 */

/** Loads in lb, places in in. */
export interface RoundTrailer {
  readonly gvwr: bigint;
  readonly curb: bigint;
  readonly curbTongue: bigint;
  readonly couplerGross: bigint;
  readonly couplerTongue: bigint;
  readonly axles: readonly { readonly at: bigint; readonly gawr: bigint; readonly tire: bigint }[];
  readonly weight: bigint;
  readonly at: bigint;
}

/** A load as a fraction beside its limit. */
interface Asked {
  readonly what: string;
  readonly load: bigint;
  readonly per: bigint;
  readonly limit: bigint;
}

export interface Judged {
  readonly over: boolean;
  /** The checks that tie for the greatest share, in the order of the checks. */
  readonly governs: string;
  /** Tongue below a tenth or above 15 hundredths of the gross weight: the usual band of a ball hitch. */
  readonly tongueOutside: boolean;
}

/** What the statics say of a trailer. The names are those of the library's checks. */
export function judged(t: RoundTrailer): Judged {
  const [first, second] = t.axles as readonly [RoundTrailer['axles'][number], RoundTrailer['axles'][number]];
  const twice = first.at + second.at;
  const gross = t.curb + t.weight;
  // Times `twice`: L = load / twice.
  const load = (t.curb - t.curbTongue) * twice + t.weight * 2n * t.at;
  const tongue = gross * twice - load;
  const onAxles = t.axles.map(
    ({ gawr }, i): Asked => ({ what: `axle load against axle ${i + 1} GAWR`, load, per: 2n * twice, limit: gawr }),
  );
  const onTires = t.axles.map(
    ({ tire }, i): Asked => ({ what: `tire load against axle ${i + 1} tire`, load, per: 4n * twice, limit: tire }),
  );
  const checks: readonly Asked[] = [
    { what: 'gross against GVWR', load: gross, per: 1n, limit: t.gvwr },
    ...onAxles,
    ...onTires,
    { what: 'gross against coupler gross', load: gross, per: 1n, limit: t.couplerGross },
    { what: 'tongue against coupler tongue', load: tongue, per: twice, limit: t.couplerTongue },
  ];
  const order = (a: Asked, b: Asked): bigint => a.load * b.per * b.limit - b.load * a.per * a.limit;
  const worst = checks.reduce((best, next) => (order(next, best) > 0n ? next : best));
  return {
    over: tongue < 0n || checks.some((each) => each.load > each.limit * each.per),
    governs: checks
      .filter((each) => order(each, worst) === 0n)
      .map(({ what }) => what)
      .join(' = '),
    tongueOutside: tongue * 100n < gross * twice * 10n || tongue * 100n > gross * twice * 15n,
  };
}
