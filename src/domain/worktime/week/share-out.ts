import { type Decimal, sumDecimals } from '../../decimal.js';
import { allocate } from '../../money/index.js';

/**
 * Hands an amount out level by level (jobs, then their cost codes, then their entries), so that every level adds up to
 * the one above and a job is never more than a minor unit off its exact part, however many entries it has.
 * @param total whole minor units of `currency`
 * @param weights one an item, none negative
 * @param levels from the widest down; each names the group of an item
 * @returns one share an item, in their order
 */
export function shareOut<T>(total: Decimal, items: readonly T[], weights: readonly Decimal[], levels: readonly ((item: T) => string)[], currency: string): Decimal[] {
  const shares: Decimal[] = [];
  hand(total, [...items.keys()], 0);
  return shares;

  function hand(amount: Decimal, indexes: readonly number[], depth: number): void {
    const level = levels[depth];
    const groups = level === undefined ? indexes.map((index) => [index]) : grouped(indexes, level);
    // Most weeks have one job a level down, which takes all of it.
    const parts = groups.length === 1 ? [amount] : allocate(amount, groups.map((group) => sumDecimals(group.map(weightAt))), currency);
    groups.forEach((group, place) => {
      const part = parts[place] ?? amount;
      if (level !== undefined) return hand(part, group, depth + 1);
      for (const index of group) shares[index] = part;
    });
  }

  function grouped(indexes: readonly number[], level: (item: T) => string): number[][] {
    const groups = new Map<string, number[]>();
    for (const index of indexes) {
      const key = level(items[index] as T);
      const group = groups.get(key);
      if (group === undefined) groups.set(key, [index]);
      else group.push(index);
    }
    return [...groups.values()];
  }

  function weightAt(index: number): Decimal {
    return weights[index] as Decimal;
  }
}
