import { chromium } from 'playwright-core';

/** Headless Chromium that asks nothing of the network by itself; `CHROMIUM_PATH`, else Debian's. */
export function launchChromium() {
  return chromium.launch({
    executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}
