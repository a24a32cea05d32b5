/** From a JSON value to a plain answer, or the first place where it is none. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import { inShort, isRecord, own } from '../../units/internal.js';
import type { NotAnAnswer, OtherAnswerVersion } from '../errors.js';
import { answerShape, nodeShapes, type Shape, step } from './form.js';
import { type Answer, answerFormat, answerVersion } from './shape.js';

type Fault = { readonly path: string; readonly found: unknown; readonly needed: string } | undefined;
const at = (path: string, key: string | number): string => (path === '' ? `${key}` : `${path}.${key}`);

function faultIn(value: unknown, shape: Shape, path: string): Fault {
  const fault = (needed: string): Fault => ({ path, found: value, needed });
  if (shape === 'a JSON value') return undefined;
  if (shape === 'a text') return typeof value === 'string' ? undefined : fault(shape);
  if (typeof shape === 'string') return Number.isSafeInteger(value) && Number(value) >= 0 ? undefined : fault(shape);
  if ('oneOf' in shape)
    return shape.oneOf.some((each) => each === value) ? undefined : fault(`one of ${shape.oneOf.join(', ')}`);
  if ('listOf' in shape) {
    if (!Array.isArray(value)) return fault('a list');
    const count = own(shape, 'count');
    if (count !== undefined && value.length !== count) return fault(`a list of ${count}`);
    return firstFault(value.entries(), ([i, part]) => faultIn(part, shape.listOf, at(path, i)));
  }
  if (!isRecord(value)) return fault('a record');
  const { record, maybe = {} } = shape;
  const lacking = Object.keys(record).find((key) => !Object.hasOwn(value, key));
  if (lacking !== undefined) return { path: at(path, lacking), found: undefined, needed: 'a value' };
  return firstFault(Object.entries(value), ([key, part]) => {
    const known = Object.hasOwn(record, key) ? record[key] : Object.hasOwn(maybe, key) && maybe[key];
    return known ? faultIn(part, known, at(path, key)) : { path: at(path, key), found: part, needed: 'no such key' };
  });
}

function firstFault<A>(parts: Iterable<A>, ask: (part: A) => Fault): Fault {
  for (const part of parts) {
    const fault = ask(part);
    if (fault !== undefined) return fault;
  }
  return undefined;
}

const shapeOfNode = (node: unknown): Shape => {
  const is = isRecord(node) && typeof node.is === 'string' ? node.is : '';
  return Object.hasOwn(nodeShapes, is) ? (nodeShapes[is] as Shape) : step;
};

/** Reads the form only; whether the figures follow from each other is another question. */
export function readAnswer(json: unknown): Either<NotAnAnswer | OtherAnswerVersion, Answer> {
  const refuse = (path: string, found: unknown, needed: string) =>
    left({ chapter: 'assessment', tag: 'NotAnAnswer', path, found: inShort(found), needed } as const);
  if (!isRecord(json)) return refuse('the answer', json, 'a record, as JSON gives it');
  if (json.format !== answerFormat) return refuse('format', json.format, `"${answerFormat}"`);
  if (json.version !== answerVersion)
    return left({
      chapter: 'assessment',
      tag: 'OtherAnswerVersion',
      path: 'version',
      found: inShort(json.version),
      known: answerVersion,
    });
  const nodes = isRecord(json.working) && Array.isArray(json.working.nodes) ? json.working.nodes : [];
  const fault =
    faultIn(json, answerShape, '') ??
    firstFault(nodes.entries(), ([i, node]) => faultIn(node, shapeOfNode(node), `working.nodes.${i}`));
  return fault === undefined ? right(json as unknown as Answer) : refuse(fault.path, fault.found, fault.needed);
}
