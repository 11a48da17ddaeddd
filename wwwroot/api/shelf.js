// @ts-check
/** What the browser keeps: the order, the last plan, ticks. Storage may be full or forbidden: then nothing is kept, and the page says so. */

import { whole } from '../model/plan.js';

const TICKET = 'panel-service.ticket.1';
const PLAN = 'panel-service.plan.1';

/** @type {unknown} */
let keptPlan = null;

/** @returns {any} */
export function recall() {
  try {
    const ticket = JSON.parse(localStorage.getItem(TICKET) ?? 'null');
    const plan = JSON.parse(localStorage.getItem(PLAN) ?? 'null');
    return ticket && { ...ticket, plan: plan && { ...plan, document: whole(plan.document) } };
  } catch (fault) {
    if (fault instanceof SyntaxError || fault instanceof DOMException) return null;
    throw fault;
  }
}

/** Nothing is kept any more, neither here nor by the worker that keeps the page. @returns {Promise<null>} */
export async function forget() {
  try {
    [TICKET, PLAN].forEach((key) => localStorage.removeItem(key));
    const shelves = globalThis.caches ? await caches.keys() : [];
    await Promise.all(shelves.map((name) => caches.delete(name)));
  } catch (fault) {
    if (!(fault instanceof DOMException)) throw fault;
  }
  keptPlan = null;
  return null;
}

/** The plan is written only when it is another. @param {any} state @returns {boolean} whether all of it is kept */
export function keep({ plan, ...ticket }) {
  try {
    localStorage.setItem(TICKET, JSON.stringify(ticket));
    if (plan !== keptPlan) localStorage.setItem(PLAN, JSON.stringify(plan));
    keptPlan = plan;
    return true;
  } catch (fault) {
    if (fault instanceof DOMException) return false;
    throw fault;
  }
}
