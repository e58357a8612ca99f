import type { MoneyBody } from '../../platform/http/fields/index.js';

export interface AskedLabor {
  readonly costCode: string;
  readonly ruleId?: string | null;
  /** How many, for a rule that counts; decimal string. */
  readonly quantity?: string | null;
  readonly description?: string | null;
  /** The key of its section; without one it is taken in any case. */
  readonly section?: string | null;
}

export interface AskedPart {
  readonly partId: string;
  /** In the part's unit, before whole packs; decimal string. */
  readonly quantity: string;
  readonly costCode: string;
  readonly section?: string | null;
}

export interface AskedOther {
  readonly description: string;
  readonly quantity: string;
  readonly unitPrice: MoneyBody;
  readonly unitCost?: MoneyBody | null;
  readonly taxCategory?: string | null;
  readonly costCode: string;
  readonly section?: string | null;
}

export interface AskedSection {
  readonly key: string;
  readonly title: string;
  readonly phase?: number | null;
  readonly optional?: boolean | null;
}

/** What is to be priced, as the estimator gave it: kept with the revision, so that it can be priced again. */
export interface Asked {
  readonly surveyId?: string | null;
  readonly featureId?: string | null;
  readonly title: string;
  /** YYYY-MM-DD; none leaves it to the issue. */
  readonly validUntil?: string | null;
  readonly sections?: readonly AskedSection[] | null;
  readonly labor?: readonly AskedLabor[] | null;
  readonly parts?: readonly AskedPart[] | null;
  readonly other?: readonly AskedOther[] | null;
}

/**
 * Only what is priced, as plain JSON without the fields left out: what `asked` stores and a patch is merged into.
 * No sections leave no trace: a draft stored before there were any must still look the same as its request repeated.
 */
export function askedOf({ surveyId, featureId, title, validUntil, sections, labor, parts, other }: Asked): Asked {
  const lists = { labor: labor ?? [], parts: parts ?? [], other: other ?? [], ...(sections?.length ? { sections } : {}) };
  return JSON.parse(JSON.stringify({ surveyId, featureId, title, validUntil, ...lists }, (_, value: unknown) => value ?? undefined)) as Asked;
}
