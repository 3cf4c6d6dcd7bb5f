/** The base path the site was built for. */
export declare function siteBase(): string;

/** Starts serving the built site; port 0 is any free one. */
export declare function serveSite(options?: {
  readonly root?: string;
  readonly port?: number;
  readonly base?: string;
}): Promise<{
  /** With its base path. */
  readonly address: string;
  readonly stop: () => Promise<void>;
}>;
