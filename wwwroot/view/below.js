// @ts-check
/** What stands below the first view, drawn right after it: formats, wishes, what is there, how one works, yields, and the plan's frame. */

import { mountChanges } from './changes.js';
import { lazily } from './dom.js';
import { mountGoods } from './goods.js';
import { mountProof } from './proof.js';
import { mountRack } from './rack.js';
import { mountShelf } from './shelf.js';
import { mountWishes } from './wishes.js';
import { settings } from './work.js';
import { mountYields } from './yields.js';

/** @param {ReturnType<typeof import('./ticket.js').layOut>} places @param {any} props what the whole page is told */
export function mountBelow(places, props) {
  const rack = props.rack.series.length > 0 ? mountRack(places.rack, props.rack) : null;
  const wishes = mountWishes(places.wishes, props.wishes);
  const shelf = mountShelf(places.shelf, props.shelf);
  const goods = mountGoods(places.goods, props.base);
  const work = lazily(/** @type {HTMLDetailsElement} */ (places.work.parentElement), settings, (part) => places.work.append(...part.elements));
  const yields = mountYields(places.yields, props.base);
  const proof = mountProof(places.proof, places.changes);
  const changes = mountChanges(places.changes);
  return {
    update(/** @type {any} */ next) {
      rack?.update(next.rack);
      wishes.update(next.wishes);
      shelf.update(next.shelf);
      places.goods.hidden = next.shelf.fromShelf;
      goods.update(next.base);
      if (next.base.problem?.errors) work.want();
      work.update(next.base);
      yields.update(next.base);
      changes.update(next.changes);
      proof.update(next.days);
    },
  };
}
