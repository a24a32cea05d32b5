/** Where an expression can be changed into another that a test should tell from it, and how. */
import ts from 'typescript';

/** Another form of an expression: what is written in its place, made of its unchanged parts. */
export interface Change {
  readonly what: string;
  readonly write: (part: (node: ts.Node) => string) => string;
}

const operators: Readonly<Record<string, readonly string[]>> = {
  '<': ['<=', '>='],
  '<=': ['<', '>'],
  '>': ['>=', '<='],
  '>=': ['>', '<'],
  '===': ['!=='],
  '!==': ['==='],
  '&&': ['||'],
  '||': ['&&'],
  '+': ['-'],
  '-': ['+'],
  '*': ['/'],
  '/': ['*'],
};

/** Calls that have a counterpart of the same form; used only where both names are in reach. */
const counterparts: Readonly<Record<string, string>> = {
  plus: 'minus',
  minus: 'plus',
  times: 'over',
  over: 'times',
  leastOf: 'greatestOf',
  greatestOf: 'leastOf',
  sum: 'difference',
  some: 'every',
  every: 'some',
};

/** Words that decide: the comparison of a decision, a verdict. */
const words: Readonly<Record<string, string>> = {
  '<': '<=',
  '<=': '<',
  '>': '>=',
  '>=': '>',
  within: 'over',
  over: 'within',
};

function ofBinary(node: ts.BinaryExpression): readonly Change[] {
  const sign = node.operatorToken.getText();
  const isText = [node.left, node.right].some((side) => ts.isStringLiteralLike(side) || ts.isTemplateExpression(side));
  if (sign === '+' && isText) return [];
  return (operators[sign] ?? []).map((other) => ({
    what: `${sign} into ${other}`,
    write: (part) => `(${part(node.left)}) ${other} (${part(node.right)})`,
  }));
}

function ofCall(node: ts.CallExpression, names: ReadonlySet<string>): readonly Change[] {
  const callee = node.expression;
  const rest = (part: (node: ts.Node) => string): string => node.arguments.map(part).join(', ');
  if (ts.isIdentifier(callee)) {
    const other = counterparts[callee.text];
    return other === undefined || !names.has(other)
      ? []
      : [{ what: `${callee.text} into ${other}`, write: (part) => `${other}(${rest(part)})` }];
  }
  if (!ts.isPropertyAccessExpression(callee) || callee.questionDotToken !== undefined) return [];
  const other = counterparts[callee.name.text];
  return other === undefined || (callee.name.text !== 'some' && callee.name.text !== 'every')
    ? []
    : [
        {
          what: `${callee.name.text} into ${other}`,
          write: (part) => `(${part(callee.expression)}).${other}(${rest(part)})`,
        },
      ];
}

/** A list without one of what is put together in it: a decision that gets lost, a check that is not asked. */
function ofList(node: ts.ArrayLiteralExpression): readonly Change[] {
  const isDecisions = ts.isPropertyAssignment(node.parent) && node.parent.name.getText() === 'decisions';
  if (!isDecisions && !node.elements.some(ts.isSpreadElement)) return [];
  return node.elements.map((gone) => ({
    what: `a list without ${gone.getText().slice(0, 60).replace(/\s+/g, ' ')}`,
    write: (part) =>
      `[${node.elements
        .filter((each) => each !== gone)
        .map(part)
        .join(', ')}]`,
  }));
}

function ofLiteral(node: ts.Node): readonly Change[] {
  if (node.kind === ts.SyntaxKind.TrueKeyword) return [{ what: 'true into false', write: () => 'false' }];
  if (node.kind === ts.SyntaxKind.FalseKeyword) return [{ what: 'false into true', write: () => 'true' }];
  if (ts.isNumericLiteral(node) && !ts.isElementAccessExpression(node.parent))
    return [{ what: `${node.text} into ${Number(node.text) + 1}`, write: () => String(Number(node.text) + 1) }];
  const other = ts.isStringLiteral(node) && ts.isCallExpression(node.parent) ? words[node.text] : undefined;
  return other === undefined
    ? []
    : [{ what: `'${node.getText().slice(1, -1)}' into '${other}'`, write: () => `'${other}'` }];
}

/** Every change of one expression; none of types, names and imports. */
export function changesOf(node: ts.Node, names: ReadonlySet<string>): readonly Change[] {
  if (ts.isBinaryExpression(node)) return ofBinary(node);
  if (ts.isCallExpression(node)) return ofCall(node, names);
  if (ts.isArrayLiteralExpression(node)) return ofList(node);
  if (ts.isConditionalExpression(node))
    return [
      {
        what: 'the other branch',
        write: (part) => `(${part(node.condition)}) ? (${part(node.whenFalse)}) : (${part(node.whenTrue)})`,
      },
    ];
  if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.ExclamationToken)
    return [{ what: 'without !', write: (part) => `(${part(node.operand)})` }];
  return ofLiteral(node);
}
