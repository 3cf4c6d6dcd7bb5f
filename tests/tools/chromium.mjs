// The browser that looks at the pages: for the browser tests and for Lighthouse.

import { existsSync } from 'node:fs';

/** Where Chromium and Chrome are found on Linux, macOS and Windows. */
const USUAL_PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome-stable',
  '/usr/bin/google-chrome',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
];

/** Nothing shown, nothing asked for, nothing sent anywhere. */
export const CHROMIUM_FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** How to get a browser where there is none. */
export const HOW_TO_GET_CHROMIUM = 'Install Chromium or Chrome, or name one in CHROMIUM_PATH.';

/** The browser to use: the one that is named, or the first that is there. */
export const findChromium = () =>
  process.env.CHROMIUM_PATH ?? USUAL_PLACES.find((place) => existsSync(place));
