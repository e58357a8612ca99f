import fc from 'fast-check';
import { inOrder } from '../../src/features/sync/push/order.js';

/** Mutations whose counters and dependencies are arbitrary, circles and strangers among them. */
const mutations = fc
  .uniqueArray(fc.integer({ min: 0, max: 40 }), { maxLength: 25 })
  .chain((ids) => fc.tuple(...ids.map((id) => fc.record({ id: fc.constant(`m${id}`), counter: fc.integer({ min: 0, max: 9 }), dependsOn: fc.array(fc.integer({ min: 0, max: 45 }).map((other) => `m${other}`), { maxLength: 4 }) }))));

describe('the order of a push', () => {
  it('has every mutation once, whatever depends on what', () => {
    fc.assert(fc.property(mutations, (list) => expect(inOrder(list).map(({ id }) => id).sort()).toEqual(list.map(({ id }) => id).sort())));
  });

  it('puts each after what it depends on, where there is no circle', () => {
    // Who depends only on smaller ids can't be in a circle.
    const straight = mutations.map((list) => list.map((one) => ({ ...one, dependsOn: one.dependsOn.filter((other) => Number(other.slice(1)) < Number(one.id.slice(1))) })));
    fc.assert(
      fc.property(straight, (list) => {
        const order: string[] = inOrder(list).map(({ id }) => id);
        for (const { id, dependsOn } of list) for (const other of dependsOn) if (order.includes(other)) expect(order.indexOf(other)).toBeLessThan(order.indexOf(id));
      }),
    );
  });

  it('is that of the counter where nothing depends on anything', () => {
    const free = mutations.map((list) => list.map((one) => ({ ...one, dependsOn: [] })));
    fc.assert(fc.property(free, (list) => expect(inOrder(list).map(({ counter }) => counter)).toEqual(list.map(({ counter }) => counter).sort((a, b) => a - b))));
  });

  it('follows a chain as long as a push', () => {
    const chain = Array.from({ length: 500 }, (_, i) => ({ id: `m${i}`, counter: 500 - i, dependsOn: i === 0 ? [] : [`m${i - 1}`] }));
    expect(inOrder(chain).map(({ id }) => id)).toEqual(chain.map(({ id }) => id));
  });
});
