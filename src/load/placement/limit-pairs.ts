/** At which machine weight does a front limit meet a rear limit? */
import { type Decision, type Derived, decide, difference, quotient, statics, zeroIn } from '../../trace/index.js';
import type { PlacementLimit } from './limits.js';

/** A front limit and a rear limit, and the machine weight at which their lines cross. */
export interface LimitPair {
  readonly front: string;
  readonly rear: string;
  /** `most`: no heavier. `least`: no lighter. `always`: they never meet. `never`: no weight meets both. */
  readonly allows: 'most' | 'least' | 'always' | 'never';
  readonly crossing?: Derived<'lb'>;
}

/** `base_f + m_f/P <= base_r + m_r/P`, multiplied by P: `(base_f - base_r) P <= m_r - m_f`. */
export function pairOf(front: PlacementLimit, rear: PlacementLimit, decisions: Decision[]): LimitPair {
  const pair = (allows: LimitPair['allows']): LimitPair => ({ front: front.name, rear: rear.name, allows });
  const closing = difference(`closing of ${front.name} on ${rear.name}`, front.base, rear.base);
  const room = difference(`room between ${front.name} and ${rear.name}`, rear.moment, front.moment);
  const closes = decide(closing, '>', zeroIn('in'));
  decisions.push(closes);
  const meeting = (allows: LimitPair['allows']): LimitPair => ({
    front: front.name,
    rear: rear.name,
    allows,
    crossing: quotient(`machine weight between ${front.name} and ${rear.name}`, room, closing, statics),
  });
  if (closes.holds) return meeting('most');
  const roomy = decide(room, '>=', zeroIn('lb*in'));
  decisions.push(roomy);
  if (roomy.holds) return pair('always');
  const opens = decide(closing, '<', zeroIn('in'));
  decisions.push(opens);
  return opens.holds ? meeting('least') : pair('never');
}
