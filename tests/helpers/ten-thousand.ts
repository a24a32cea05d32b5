/** A 10,000 lb trailer on two axles, invented: the scenario of the trade's own figures. */

interface Build {
  readonly gvwr?: string;
  readonly gawr?: string;
  readonly beam?: string;
  readonly tires?: Record<string, unknown>;
  readonly curb?: string;
  readonly tongueShare?: string;
  readonly cargo?: string;
  readonly cargoAt?: string;
}

/** Axles at 180 and 214 in; empty tongue a tenth of the empty weight given in pounds. */
export function twoAxles({
  gvwr = '10,000 lb',
  gawr,
  beam,
  tires,
  curb = '2,450 lb',
  tongueShare = '15 %',
  cargo,
  cargoAt = '160 in',
}: Build): unknown {
  const axle = (at: string) => ({
    at,
    ...(gawr !== undefined && { gawr }),
    ...(beam !== undefined && { beam }),
    ...(tires !== undefined && { tires }),
  });
  return {
    name: 'invented two-axle deck',
    tongueShare,
    trailer: {
      hitch: 'ball',
      gvwr,
      sharing: 'equalised',
      axles: [axle('180 in'), axle('214 in')],
      curb: { weight: curb, tongue: '245 lb' },
    },
    cargo: cargo === undefined ? [] : [{ name: 'load', weight: cargo, at: cargoAt }],
  };
}
