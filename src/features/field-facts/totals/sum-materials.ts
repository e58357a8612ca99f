import { Decimal } from '../../../domain/decimal.js';
import type { MaterialTotalView } from './totals.dto.js';
import type { UseSums } from './totals.repository.js';

/** What a quote's line says of a part: all that anybody may see. */
export interface QuotedPart {
  readonly partId: string | null;
  readonly description: string;
  readonly unit: string | null;
  readonly quantity: Decimal | null;
}

/** Parts by part and unit: a unit that the catalog changed since is not added to the one that was quoted. */
export function sumMaterials(uses: readonly UseSums[], lines: readonly QuotedPart[]): MaterialTotalView[] {
  const rows = new Map<string, MaterialTotalView>();
  for (const { partId, description, unit, quantity } of lines) {
    if (partId === null || unit === null || quantity === null) continue;
    const key = `${partId} ${unit}`;
    const before = rows.get(key);
    rows.set(key, { partId, description: before?.description ?? description, unit, used: '0', quoted: quantity.plus(before?.quoted ?? 0).toFixed() });
  }
  const others: MaterialTotalView[] = [];
  for (const { partId, description, unit, quantity: used } of uses) {
    const quoted = partId === null ? undefined : rows.get(`${partId} ${unit}`);
    if (quoted === undefined) others.push({ partId, description, unit, used, quoted: null });
    else quoted.used = used;
  }
  return [...rows.values(), ...others];
}
