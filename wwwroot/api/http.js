// @ts-check
/**
 * One request to the service, and what goes wrong with it.
 *
 * @typedef {{ title: string, status?: number, detail?: string, type?: string, errors?: Record<string, string[]>, marks?: any, missing?: any }} Problem
 */

export const JSON_TYPE = { 'Content-Type': 'application/json' };

/** What went wrong, in the shape the page shows. */
export class Refused extends Error {
  /** @param {Problem} problem */
  constructor(problem) {
    super(problem.title);
    this.problem = problem;
  }
}

/** A heartbeat carries no JSON. @param {string} text */
export function parsed(text) {
  try {
    return JSON.parse(text);
  } catch (fault) {
    if (fault instanceof SyntaxError) return null;
    throw fault;
  }
}

/** @param {string} address @param {RequestInit} [request] */
export async function ask(address, request) {
  let response;
  try {
    response = await fetch(address, request);
  } catch (fault) {
    if (fault instanceof TypeError) throw new Refused({ title: 'unreachable' });
    throw fault;
  }
  if (response.ok) return response;
  // The stay is over: the page begins anew, at the door, where it forgets what it kept.
  if (response.status === 401) location.reload();
  const problem = parsed(await response.text()) ?? { title: response.statusText };
  throw new Refused({ status: response.status, ...problem });
}
