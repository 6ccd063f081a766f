/** What waits: the least distance is taken first, of equal ones the least place. */
interface Queued {
  readonly distance: number;
  readonly place: number;
}

interface Queue {
  readonly put: (one: Queued) => void;
  readonly take: () => Queued | null;
}

const isBefore = (one: Queued, other: Queued): boolean =>
  one.distance < other.distance || (one.distance === other.distance && one.place < other.place);

/** A binary heap (Williams 1964, "Heapsort"), which starts with what is given in rising order. */
export const queue = (rising: readonly Queued[]): Queue => {
  const heap = [...rising];
  const swap = (a: number, b: number): void => {
    const [one, other] = [heap[a], heap[b]];
    if (one === undefined || other === undefined) return;
    heap[a] = other;
    heap[b] = one;
  };
  const comesBefore = (a: number, b: number): boolean => {
    const [one, other] = [heap[a], heap[b]];
    return one !== undefined && (other === undefined || isBefore(one, other));
  };
  return {
    put: (one) => {
      heap.push(one);
      for (let at = heap.length - 1; at > 0;) {
        const parent = (at - 1) >> 1;
        if (!comesBefore(at, parent)) return;
        swap(at, parent);
        at = parent;
      }
    },
    take: () => {
      const [first] = heap;
      const last = heap.pop();
      if (first === undefined || last === undefined) return null;
      if (heap.length === 0) return first;
      heap[0] = last;
      for (let at = 0; ;) {
        const left = 2 * at + 1;
        const child = comesBefore(left + 1, left) ? left + 1 : left;
        if (!comesBefore(child, at)) return first;
        swap(at, child);
        at = child;
      }
    },
  };
};
