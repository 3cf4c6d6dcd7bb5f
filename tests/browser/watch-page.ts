import type { Page } from 'playwright-core';

/** What a page should not do, collected while it is open. */
export type Watched = {
  /** Errors of the console and of scripts, refusals of the security policy among them. */
  readonly errors: string[];
  /** Requests that would have left the origin. */
  readonly strangers: string[];
};

/** Listens to a page from before its first request. */
export function watchPage(page: Page, origin: string): Watched {
  const watched: Watched = { errors: [], strangers: [] };
  page.on('console', (message) => {
    if (message.type() === 'error') watched.errors.push(`${page.url()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => watched.errors.push(`${page.url()}: ${error.message}`));
  page.on('request', (request) => {
    const { origin: asked, protocol } = new URL(request.url());
    if (asked !== origin && protocol !== 'data:' && protocol !== 'blob:') {
      watched.strangers.push(request.url());
    }
  });
  return watched;
}
