/** The types of facts for rules, and the rules of a State, as written and as read. Made by `npm run keys` from the table of keys. */
import type { Derived } from '../../trace/index.js';
import type { LengthInput, WeightInput } from './figures.js';
import type { DecodedLocalRule, DecodedLocalRules, DecodedRuleCondition, DecodedStepTable } from './made.js';

/** Facts for rules. */
export interface RulesInput {
  /**
   * Whether the trip is commerce. Where: the work you do. Example: `true`. Without it: rules for carriers cannot be
   * told.
   */
  readonly commercial?: boolean | undefined;
  /**
   * Whether it crosses a State line, or is part of such a trip. Where: the trip. Example: `true`. Without it: rules for
   * carriers cannot be told.
   */
  readonly interstate?: boolean | undefined;
  /**
   * That nobody is loaded above a GVWR; stands in for gross weights that are not known. Where: scale. Example: `true`.
   * Without it: some rules cannot be told where a gross weight is not known.
   */
  readonly actualWithinRatings?: boolean | undefined;
  /**
   * The combination rating on the truck's certification label, or `"not shown"` when somebody has looked. Where:
   * certification label. Example: `"not shown"`. Without it: rules on the combination rating that would turn on it
   * cannot be told.
   */
  readonly labelGcwr?: 'not shown' | WeightInput | undefined;
  /**
   * Whether the brakes of the trailer are surge brakes, worked by its push on the coupler. Where: look at the coupler.
   * Example: `false`. Without it: the limit on surge brakes cannot be told.
   */
  readonly surgeBrakes?: boolean | undefined;
  /**
   * How far the trailer strays from the path of the truck on a straight and level road, to either side. Where: chalk
   * line or wet road. Example: `"1 in"`. Without it: the limit on tracking cannot be told.
   */
  readonly pathDeviation?: LengthInput | undefined;
  /**
   * What was put on the trailer between its certification and its first sale. Where: scale or sheets. Example: `"60
   * lb"`. Without it: the weight of `curb.added` is taken; without that the duty to correct the label cannot be told.
   */
  readonly addedWeight?: WeightInput | undefined;
  /**
   * Rules of your own State: text, date and source of that State, in the form of `examples/local-rules.json`. Without
   * it: federal rules only.
   */
  readonly local?: LocalRulesInput | undefined;
  /** How axle groups are counted: choices the formula leaves to the State. Without it: axle groups are not counted. */
  readonly axleGroups?: AxleGroupRuleInput | undefined;
}

/** Facts for rules, as it was read. */
export interface DecodedRules {
  /** Whether the trip is commerce. */
  readonly commercial?: boolean | undefined;
  /** Whether it crosses a State line, or is part of such a trip. */
  readonly interstate?: boolean | undefined;
  /** That nobody is loaded above a GVWR; stands in for gross weights that are not known. */
  readonly actualWithinRatings?: boolean | undefined;
  /** The combination rating on the truck's certification label, or `"not shown"` when somebody has looked. */
  readonly labelGcwr?: 'not shown' | Derived<'lb'> | undefined;
  /** Whether the brakes of the trailer are surge brakes, worked by its push on the coupler. */
  readonly surgeBrakes?: boolean | undefined;
  /** How far the trailer strays from the path of the truck on a straight and level road, to either side. */
  readonly pathDeviation?: Derived<'in'> | undefined;
  /** What was put on the trailer between its certification and its first sale. */
  readonly addedWeight?: Derived<'lb'> | undefined;
  /** Rules of your own State: text, date and source of that State, in the form of `examples/local-rules.json`. */
  readonly local?: DecodedLocalRules | undefined;
  /** How axle groups are counted: choices the formula leaves to the State. */
  readonly axleGroups?: DecodedAxleGroupRule | undefined;
}

/**
 * Rules of a State. No local rule is shipped: brake lines run from 1,500 to 5,000 lb with different operators, and
 * change.
 */
export interface LocalRulesInput {
  /** The places its rules may name. A list. */
  readonly jurisdictions: readonly JurisdictionInput[];
  /** Its rules. A list. */
  readonly rules: readonly LocalRuleInput[];
  /** Its registration classes and fee steps. A list. */
  readonly stepTables: readonly StepTableInput[];
  /**
   * What the file is, for people. Where: you write it. Example: `"Invented; no State has these rules."`. Without it:
   * nothing is said.
   */
  readonly notice?: string | undefined;
}

/** Rules of a State, as it was read. */
export interface LocalRulesForm {
  /** The places its rules may name. */
  readonly jurisdictions: readonly DecodedJurisdiction[];
  /** Its rules. */
  readonly rules: readonly DecodedLocalRule[];
  /** Its registration classes and fee steps. */
  readonly stepTables: readonly DecodedStepTable[];
  /** What the file is, for people. */
  readonly notice?: string | undefined;
}

/** A place. */
export interface JurisdictionInput {
  /** What rules call it; not `federal`. Where: you choose it. Example: `"northmark"`. */
  readonly id: string;
  /** Its name. Where: you choose it. Example: `"Northmark (invented)"`. */
  readonly name: string;
}

/** A place, as it was read. */
export interface DecodedJurisdiction {
  /** What rules call it; not `federal`. */
  readonly id: string;
  /** Its name. */
  readonly name: string;
}

/** A rule of a State. */
export interface LocalRuleInput {
  /** What programs call it; no two alike. Where: you choose it. Example: `"northmark-brakes"`. */
  readonly id: string;
  /** What it is about. Where: heading of the rule. Example: `"trailer brakes (invented)"`. */
  readonly topic: string;
  /** The place where it holds. Where: title of the code. Example: `"northmark"`. */
  readonly jurisdiction: string;
  /** Conditions that must hold together. A list. */
  readonly all: readonly RuleConditionInput[];
  /**
   * `duty` for what must be done where the conditions hold, `limit` for conditions that must be kept. Where: text of
   * the rule. Example: `"duty"`.
   */
  readonly kind: 'duty' | 'limit';
  /**
   * What follows of a duty that applies, or of a limit that is crossed. Where: text of the rule. Example: `"brakes on
   * all wheels of the trailer"`.
   */
  readonly effect: string;
  /** What it excepts, in words. Where: text of the rule. Example: `["trailers of farmers"]`. */
  readonly exceptions: readonly string[];
  /** Where it stands. Where: text of the rule. Example: `"Invented Road Code 7-1"`. */
  readonly clause: string;
  /**
   * How sure the copy is: `A` an official text, `B` a good copy, `C` a web list, `derived`, `memory`. Where: what you
   * read. Example: `"memory"`.
   */
  readonly grade: 'A' | 'B' | 'C' | 'derived' | 'memory';
  /** When you read it. Where: your calendar. Example: `"2026-11"`. */
  readonly read: string;
  /** What you read. Where: title of the copy. Example: `"invented for the examples"`. */
  readonly source: string;
  /**
   * The id of the duty whose reach it shares: it binds only where that one applies. Where: text of the rule. Example:
   * `"cmv-390"`. Without it: it binds by its own conditions.
   */
  readonly bindsWhere?: string | undefined;
  /** Questions that must be answered yes. Where: text of the rule. Example: `["commercial"]`. Without it: none. */
  readonly when?:
    | readonly ('commercial' | 'interstate' | 'full trailer' | 'surge brakes' | 'actual weights within ratings')[]
    | undefined;
  /** Questions that must be answered no. Where: text of the rule. Example: `["full trailer"]`. Without it: none. */
  readonly unless?:
    | readonly ('commercial' | 'interstate' | 'full trailer' | 'surge brakes' | 'actual weights within ratings')[]
    | undefined;
  /**
   * The same figure in the other unit as the rule prints it; shown, never compared. Where: text of the rule. Example:
   * `"1,452 kg"`. Without it: nothing is shown.
   */
  readonly alsoPrinted?: string | undefined;
  /**
   * The date that the copy itself carries. Where: the copy. Example: `"2026-01-01"`. Without it: the date of reading is
   * shown.
   */
  readonly dated?: string | undefined;
  /** What to say beside it. Where: you write it. Example: `"Invented; verify."`. Without it: nothing is said. */
  readonly caution?: string | undefined;
}

/** A rule of a State, as it was read. */
export interface LocalRuleForm {
  /** What programs call it; no two alike. */
  readonly id: string;
  /** What it is about. */
  readonly topic: string;
  /** The place where it holds. */
  readonly jurisdiction: string;
  /** Conditions that must hold together. */
  readonly all: readonly DecodedRuleCondition[];
  /** `duty` for what must be done where the conditions hold, `limit` for conditions that must be kept. */
  readonly kind: 'duty' | 'limit';
  /** What follows of a duty that applies, or of a limit that is crossed. */
  readonly effect: string;
  /** What it excepts, in words. */
  readonly exceptions: readonly string[];
  /** Where it stands. */
  readonly clause: string;
  /** How sure the copy is: `A` an official text, `B` a good copy, `C` a web list, `derived`, `memory`. */
  readonly grade: 'A' | 'B' | 'C' | 'derived' | 'memory';
  /** When you read it. */
  readonly read: string;
  /** What you read. */
  readonly source: string;
  /** The id of the duty whose reach it shares: it binds only where that one applies. */
  readonly bindsWhere?: string | undefined;
  /** Questions that must be answered yes. */
  readonly when?:
    | readonly ('commercial' | 'interstate' | 'full trailer' | 'surge brakes' | 'actual weights within ratings')[]
    | undefined;
  /** Questions that must be answered no. */
  readonly unless?:
    | readonly ('commercial' | 'interstate' | 'full trailer' | 'surge brakes' | 'actual weights within ratings')[]
    | undefined;
  /** The same figure in the other unit as the rule prints it; shown, never compared. */
  readonly alsoPrinted?: string | undefined;
  /** The date that the copy itself carries. */
  readonly dated?: string | undefined;
  /** What to say beside it. */
  readonly caution?: string | undefined;
}

/** A condition of a rule. Either `value`, or `times` and `of`. */
export interface RuleConditionInput {
  /** The weight or length that is compared. Where: text of the rule. Example: `"trailer gross"`. */
  readonly test:
    | 'trailer GVWR'
    | 'trailer gross'
    | 'trailer unloaded'
    | 'tow vehicle GVWR'
    | 'tow vehicle gross'
    | 'label GCWR'
    | 'weight on tow vehicle'
    | 'towing axle weights'
    | 'trailer axle weights'
    | 'added weight'
    | 'safety device strength'
    | 'cargo article weight'
    | 'lightest article not tied as heavy equipment'
    | 'heaviest single axle'
    | 'heaviest tandem'
    | 'tow vehicle GVWR or gross'
    | 'towed GVWR or gross'
    | 'GCWR'
    | 'combined gross'
    | 'greatest of GVWR, gross, GCWR'
    | 'overall width'
    | 'overall length'
    | 'path deviation';
  /** How, as printed. Where: text of the rule. Example: `">"`. */
  readonly operator: '<' | '<=' | '>' | '>=';
  /** The unit the rule prints. Where: text of the rule. Example: `"lb"`. */
  readonly unit: 'lb' | 'kg' | 't' | 'in' | 'ft' | 'mi' | 'mm' | 'cm' | 'm';
  /**
   * The printed figure: digits, as text. Where: text of the rule. Example: `"3200"`. Without it: `times` and `of` must
   * say it.
   */
  readonly value?: string | undefined;
  /**
   * The printed share of another weight: digits, as text. Where: text of the rule. Example: `"0.5"`. Without it:
   * `value` must say it.
   */
  readonly times?: string | undefined;
  /** That other weight. Where: text of the rule. Example: `"tow vehicle gross"`. Without it: `value` must say it. */
  readonly of?:
    | 'trailer GVWR'
    | 'trailer gross'
    | 'trailer unloaded'
    | 'tow vehicle GVWR'
    | 'tow vehicle gross'
    | 'label GCWR'
    | 'weight on tow vehicle'
    | 'towing axle weights'
    | 'trailer axle weights'
    | 'added weight'
    | 'safety device strength'
    | 'cargo article weight'
    | 'lightest article not tied as heavy equipment'
    | 'heaviest single axle'
    | 'heaviest tandem'
    | 'tow vehicle GVWR or gross'
    | 'towed GVWR or gross'
    | 'GCWR'
    | 'combined gross'
    | 'greatest of GVWR, gross, GCWR'
    | undefined;
}

/** A condition of a rule, as it was read. */
export interface RuleConditionForm {
  /** The weight or length that is compared. */
  readonly test:
    | 'trailer GVWR'
    | 'trailer gross'
    | 'trailer unloaded'
    | 'tow vehicle GVWR'
    | 'tow vehicle gross'
    | 'label GCWR'
    | 'weight on tow vehicle'
    | 'towing axle weights'
    | 'trailer axle weights'
    | 'added weight'
    | 'safety device strength'
    | 'cargo article weight'
    | 'lightest article not tied as heavy equipment'
    | 'heaviest single axle'
    | 'heaviest tandem'
    | 'tow vehicle GVWR or gross'
    | 'towed GVWR or gross'
    | 'GCWR'
    | 'combined gross'
    | 'greatest of GVWR, gross, GCWR'
    | 'overall width'
    | 'overall length'
    | 'path deviation';
  /** How, as printed. */
  readonly operator: '<' | '<=' | '>' | '>=';
  /** The unit the rule prints. */
  readonly unit: 'lb' | 'kg' | 't' | 'in' | 'ft' | 'mi' | 'mm' | 'cm' | 'm';
  /** The printed figure: digits, as text. */
  readonly value?: string | undefined;
  /** The printed share of another weight: digits, as text. */
  readonly times?: string | undefined;
  /** That other weight. */
  readonly of?:
    | 'trailer GVWR'
    | 'trailer gross'
    | 'trailer unloaded'
    | 'tow vehicle GVWR'
    | 'tow vehicle gross'
    | 'label GCWR'
    | 'weight on tow vehicle'
    | 'towing axle weights'
    | 'trailer axle weights'
    | 'added weight'
    | 'safety device strength'
    | 'cargo article weight'
    | 'lightest article not tied as heavy equipment'
    | 'heaviest single axle'
    | 'heaviest tandem'
    | 'tow vehicle GVWR or gross'
    | 'towed GVWR or gross'
    | 'GCWR'
    | 'combined gross'
    | 'greatest of GVWR, gross, GCWR'
    | undefined;
}

/** A step table of a State. */
export interface StepTableInput {
  /** What programs call it; no two alike. Where: you choose it. Example: `"northmark-registration"`. */
  readonly id: string;
  /** What it is about. Where: heading of the table. Example: `"registration class by combined weight (invented)"`. */
  readonly topic: string;
  /** The place where it holds. Where: title of the code. Example: `"northmark"`. */
  readonly jurisdiction: string;
  /** The weight that falls in a class. Where: text of the table. Example: `"combined gross"`. */
  readonly test:
    | 'trailer GVWR'
    | 'trailer gross'
    | 'trailer unloaded'
    | 'tow vehicle GVWR'
    | 'tow vehicle gross'
    | 'label GCWR'
    | 'weight on tow vehicle'
    | 'towing axle weights'
    | 'trailer axle weights'
    | 'added weight'
    | 'safety device strength'
    | 'cargo article weight'
    | 'lightest article not tied as heavy equipment'
    | 'heaviest single axle'
    | 'heaviest tandem'
    | 'tow vehicle GVWR or gross'
    | 'towed GVWR or gross'
    | 'GCWR'
    | 'combined gross'
    | 'greatest of GVWR, gross, GCWR';
  /**
   * `<=` when a weight on a step belongs to it, `<` when it belongs to the next. Where: text of the table. Example:
   * `"<="`.
   */
  readonly operator: '<' | '<=';
  /** The unit the table prints. Where: text of the table. Example: `"lb"`. */
  readonly unit: 'lb' | 'kg' | 't';
  /** Its steps, rising. A list. */
  readonly steps: readonly StepInput[];
  /** Since when. Where: text of the table. Example: `"2026-01-01"`. */
  readonly effective: string;
  /** Where it stands. Where: text of the table. Example: `"Invented Fee Schedule B"`. */
  readonly clause: string;
  /** What you read. Where: title of the copy. Example: `"invented for the examples"`. */
  readonly source: string;
  /** How sure the copy is, as for a rule. Where: what you read. Example: `"memory"`. */
  readonly grade: 'A' | 'B' | 'C' | 'derived' | 'memory';
  /** When you read it. Where: your calendar. Example: `"2026-11"`. */
  readonly read: string;
  /**
   * The class above the last step. Where: text of the table. Example: `"class 5"`. Without it: a weight above the last
   * step is refused.
   */
  readonly above?: string | undefined;
}

/** A step table of a State, as it was read. */
export interface StepTableForm {
  /** What programs call it; no two alike. */
  readonly id: string;
  /** What it is about. */
  readonly topic: string;
  /** The place where it holds. */
  readonly jurisdiction: string;
  /** The weight that falls in a class. */
  readonly test:
    | 'trailer GVWR'
    | 'trailer gross'
    | 'trailer unloaded'
    | 'tow vehicle GVWR'
    | 'tow vehicle gross'
    | 'label GCWR'
    | 'weight on tow vehicle'
    | 'towing axle weights'
    | 'trailer axle weights'
    | 'added weight'
    | 'safety device strength'
    | 'cargo article weight'
    | 'lightest article not tied as heavy equipment'
    | 'heaviest single axle'
    | 'heaviest tandem'
    | 'tow vehicle GVWR or gross'
    | 'towed GVWR or gross'
    | 'GCWR'
    | 'combined gross'
    | 'greatest of GVWR, gross, GCWR';
  /** `<=` when a weight on a step belongs to it, `<` when it belongs to the next. */
  readonly operator: '<' | '<=';
  /** The unit the table prints. */
  readonly unit: 'lb' | 'kg' | 't';
  /** Its steps, rising. */
  readonly steps: readonly DecodedStep[];
  /** Since when. */
  readonly effective: string;
  /** Where it stands. */
  readonly clause: string;
  /** What you read. */
  readonly source: string;
  /** How sure the copy is, as for a rule. */
  readonly grade: 'A' | 'B' | 'C' | 'derived' | 'memory';
  /** When you read it. */
  readonly read: string;
  /** The class above the last step. */
  readonly above?: string | undefined;
}

/** A step of a table. */
export interface StepInput {
  /** The class. Where: the table. Example: `"class 1"`. */
  readonly class: string;
  /** The weight it goes up to: digits, as text. Where: the table. Example: `"10000"`. */
  readonly upTo: string;
}

/** A step of a table, as it was read. */
export interface DecodedStep {
  /** The class. */
  readonly class: string;
  /** The weight it goes up to: digits, as text. */
  readonly upTo: string;
}

/** How axle groups are counted. */
export interface AxleGroupRuleInput {
  /**
   * Which way a limit halfway between two steps of 500 lb goes, `down` or `up`. Where: the State's rule. Example:
   * `"down"`.
   */
  readonly tie: 'down' | 'up';
  /**
   * How a length between axles is rounded: `none`, `nearest foot, halves up`, or `nearest foot, halves down`. Where:
   * the State's rule. Example: `"nearest foot, halves up"`.
   */
  readonly lengthRounding: 'none' | 'nearest foot, halves up' | 'nearest foot, halves down';
}

/** How axle groups are counted, as it was read. */
export interface DecodedAxleGroupRule {
  /** Which way a limit halfway between two steps of 500 lb goes, `down` or `up`. */
  readonly tie: 'down' | 'up';
  /** How a length between axles is rounded: `none`, `nearest foot, halves up`, or `nearest foot, halves down`. */
  readonly lengthRounding: 'none' | 'nearest foot, halves up' | 'nearest foot, halves down';
}
