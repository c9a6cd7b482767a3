import type { Locator } from 'playwright-core';

/** The words as a person sees them: what is hidden does not count. */
// biome-ignore lint/performance/useDomNodeTextContent: textContent would count what is hidden
export const seen = (at: Locator): Promise<string> => at.innerText();
