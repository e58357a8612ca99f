interface Ordered {
  readonly id: string;
  readonly counter: number;
  readonly dependsOn: readonly string[];
}

/**
 * The mutations in the order of the phone's counter, but each after those that it depends on, as far as they are here.
 * A circle is cut where it is met first; who then comes before what it depends on is refused later.
 */
export function inOrder<T extends Ordered>(mutations: readonly T[]): T[] {
  const byId = new Map(mutations.map((mutation) => [mutation.id, mutation]));
  const met = new Set<string>();
  const order: T[] = [];
  for (const mutation of mutations.toSorted((a, b) => a.counter - b.counter)) {
    // A chain may be as long as the push, so it is followed with a list instead of recursion.
    const path = [{ mutation, next: 0 }];
    if (met.has(mutation.id)) continue;
    met.add(mutation.id);
    for (let top = path.at(-1); top !== undefined; top = path.at(-1)) {
      const needed = byId.get(top.mutation.dependsOn[top.next] ?? '');
      if (top.next < top.mutation.dependsOn.length) {
        top.next += 1;
        if (needed === undefined || met.has(needed.id)) continue;
        met.add(needed.id);
        path.push({ mutation: needed, next: 0 });
      } else {
        order.push(top.mutation);
        path.pop();
      }
    }
  }
  return order;
}
