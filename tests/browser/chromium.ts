import { execFileSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';

const names = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'chrome',
  'microsoft-edge',
  'microsoft-edge-stable',
  'msedge',
];

const places = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ...['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((root) => [
    join(process.env[root] ?? '', 'Google/Chrome/Application/chrome.exe'),
    join(process.env[root] ?? '', 'Microsoft/Edge/Application/msedge.exe'),
  ]),
];

/**
 * Starts a headless Chromium, Chrome or Edge; says in one line what to install where there is none.
 *
 * @param more switches of its own
 */
export async function launch(...more: readonly string[]): Promise<Browser> {
  const executablePath = find() ?? install();
  if (executablePath === null) {
    throw new Error(
      'No browser found: install Chromium, Chrome or Edge (Debian: apt-get install chromium).',
    );
  }
  return chromium.launch({
    executablePath,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      ...more,
    ],
  });
}

function find(): string | null {
  const folders = (process.env.PATH ?? '').split(delimiter);
  const inPath = names.flatMap((name) => folders.map((folder) => join(folder, name)));
  return [process.env.CHROME_PATH ?? '', ...inPath, ...places].find(runs) ?? null;
}

function runs(path: string): boolean {
  if (path === '') return false;
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** On Debian and Ubuntu, where it may: the package `chromium`. */
function install(): string | null {
  const debian = existsSync('/etc/debian_version') && process.getuid?.() === 0;
  if (!debian) return null;
  try {
    const quiet = {
      stdio: 'ignore',
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    } as const;
    execFileSync('apt-get', ['update'], quiet);
    execFileSync('apt-get', ['install', '-y', 'chromium'], quiet);
  } catch {
    return null;
  }
  return find();
}
