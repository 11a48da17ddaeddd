// @ts-check
/**
 * What the page remembers: one state, changed only through here, kept in the browser after every change, with a
 * way back for edits of the order.
 *
 * @template S
 * @typedef {{ state: () => S, change: (label: string, edit: (state: S) => void) => void, undo: () => void, canUndo: () => boolean, listen: (f: (state: S) => void) => void }} Store
 */

const MOST_STEPS = 60;

/**
 * @template {{ order: unknown, plan: unknown }} S
 * @param {S} first the state to begin with
 * @param {(state: S) => void} keep stores it
 * @returns {Store<S>}
 */
export function createStore(first, keep) {
  let state = first;
  let last = '';
  /** @type {unknown[]} */
  const past = [];
  /** @type {((state: S) => void)[]} */
  const listeners = [];

  const tell = () => {
    keep(state);
    listeners.forEach((listener) => listener(state));
  };

  return {
    state: () => state,
    listen: (listener) => void listeners.push(listener),
    canUndo: () => past.length > 0,
    // Typing in one field is one step back: changes of the same label run together.
    change(label, edit) {
      // A plan is replaced, never edited: it need not be copied at every keystroke.
      const { plan, ...rest } = state;
      const next = /** @type {S} */ ({ ...structuredClone(rest), plan });
      edit(next);
      if (label !== last && JSON.stringify(next.order) !== JSON.stringify(state.order)) {
        past.push(state.order);
        past.splice(0, past.length - MOST_STEPS);
        last = label;
      }
      state = next;
      tell();
    },
    undo() {
      const before = past.pop();
      if (before === undefined) return;
      state = { ...state, order: /** @type {S['order']} */ (before) };
      last = '';
      tell();
    },
  };
}
