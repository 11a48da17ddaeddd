// @ts-check
/**
 * What the first view needs, asked for at once: this module stands alone, so that it runs while all the others are
 * still on their way. Each answer is given out once.
 */

const EXAMPLE = '/api/demo/tern-island';

/** @type {Map<string, Promise<Response | null>>} */
const asked = new Map();
for (const address of ['/api/access', '/api/formats', '/api/demo', EXAMPLE]) asked.set(address, fetch(address).catch(() => null));

/** The answer that is under way already; where there is none, or a refusal, it is asked for anew. @param {string} address */
export async function early(address) {
  const answer = await asked.get(address);
  asked.delete(address);
  return answer?.ok ? answer : fetch(address);
}
