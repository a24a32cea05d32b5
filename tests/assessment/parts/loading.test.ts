/** Which of several pieces the ramps and the tail are asked of: the one that asks most of them, in whatever order they are listed. */
import { describe, expect, it } from 'vitest';
import { answerTo, checksById } from '../../helpers/facts.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const machine = (name: string, at: string, more: object): object => ({ name, weight: '5,000 lb', at, ...more });
const even = machine('loader', '120 in', { axles: ['2,500 lb', '2,500 lb'] });
const heavyBehind = machine('lift truck', '220 in', { axles: ['1,400 lb', '3,600 lb'] });
const untold = machine('roller', '220 in', {});

const rated = (rating: string, cargo: readonly object[], basis = 'axle') =>
  answerTo(
    changed(changed(changed(tiltDeck(), 'cargo', cargo), 'trailer.ramps.rating', rating), 'trailer.ramps.basis', basis),
  );

const orders = [
  ['as listed', (list: readonly object[]) => list],
  ['turned round', (list: readonly object[]) => [...list].reverse()],
] as const;

describe.each(orders)('two machines of one weight, %s', (_, order) => {
  it('are held to the rating of the ramps by the heavier axle', () => {
    const answer = rated('3,500 lb', order([even, heavyBehind]));
    expect(checksById(answer!).get('ramps/axle')).toMatchObject({ verdict: 'over' });
    expect(checksById(answer!).get('ramps/axle')!.load.value.value.toFixed()).toBe('3600');
  });
  it('leave open the axles of the one that tells none, and ask the other', () => {
    const answer = rated('3,500 lb', order([heavyBehind, untold]));
    expect(checksById(answer!).get('ramps/axle')).toMatchObject({ verdict: 'over' });
    expect(answer!.notChecked.map(({ missing }) => missing)).toContain('axle loads of roller, which the rating is by');
  });
  it('lift the ball as the one that comes on last from the front does', () => {
    const ball = rated('9,000 lb', order([even, heavyBehind]))!.loading.tailLift!.ball.value.value;
    const alone = rated('9,000 lb', [{ ...even, weight: '0.001 lb' }, heavyBehind])!.loading.tailLift!.ball.value.value;
    expect(ball.lt(alone)).toBe(true);
  });
});
