/** How a browser is started that nobody sees. */
export declare const CHROMIUM_FLAGS: string[];

/** How to get a browser where there is none. */
export declare const HOW_TO_GET_CHROMIUM: string;

/** The browser to use: the one that is named, or the first that is there. */
export declare function findChromium(): string | undefined;
