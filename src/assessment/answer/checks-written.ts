/** The checks of a plain answer, each in one form: an object that grows keys costs more than what is put into it. */
import type { Check } from '../../ratings/index.js';
import { capacityText, loadText, usedText } from './edge.js';
import type { NodeList } from './node-list.js';
import type { AnswerCheck } from './shape.js';

/** A check without its working. Keys are written in order, as the checksum reads them. */
const bareCheck = ({ id, load, limit, reserve, used, verdict, what }: Check): AnswerCheck => ({
  ...(reserve.why.basis !== 'stated' && { basis: reserve.why.basis }),
  id,
  load: loadText(load),
  name: what,
  rating: capacityText(limit),
  reserve: capacityText(reserve),
  used: usedText(used),
  verdict,
});

/** A check and where its figures stand in the working. */
const checkOf = (nodes: NodeList, { id, load, limit, reserve, used, verdict, what }: Check): AnswerCheck => ({
  basis: reserve.why.basis,
  id,
  load: loadText(load),
  name: what,
  nodes: [nodes.placeOf(load.why), nodes.placeOf(limit.why), nodes.placeOf(reserve.why), nodes.placeOf(used.why)],
  rating: capacityText(limit),
  reserve: capacityText(reserve),
  used: usedText(used),
  verdict,
});

/** The checks of an answer, with their places in the working where it has one. */
export const checksOf = (nodes: NodeList | undefined, checks: readonly Check[]): readonly AnswerCheck[] =>
  checks.map((each) => (nodes === undefined ? bareCheck(each) : checkOf(nodes, each)));
