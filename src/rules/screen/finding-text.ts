/** A finding in one line of text. */
import { distanceText } from './compare.js';
import { type Finding, hasEffect } from './finding.js';

/** A finding in one line. @example findingText(finding).startsWith('commercial motor vehicle: cannot be told') // true */
export function findingText(finding: Finding): string {
  const { rule, topic, outcome, answers, missing, verify } = finding;
  const compared = answers.map(({ text, distance }) =>
    distance === undefined ? text : `${text} (${distanceText(distance)})`,
  );
  const parts = [
    `${topic}: ${outcome}${hasEffect(finding) ? `: ${rule.effect}` : ''}`,
    ...(compared.length === 0 ? [] : [compared.join('; ')]),
    ...(missing.length === 0 ? [] : [`not given: ${missing.join(', ')}`]),
  ];
  return `${parts.join('. ')}. [${rule.clause}; read ${rule.read}${verify ? '; verify' : ''}]`;
}
