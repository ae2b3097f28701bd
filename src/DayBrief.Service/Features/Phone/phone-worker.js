// Keeps the brief on the phone. The network comes first, also when it is slow; a copy is only ever shown as one.
// The server puts VERSION and FILES before this text. What may be kept it marks with DayBrief-Choice; nothing else is.
"use strict";
const SHELL = `daybrief-shell-${VERSION}`, PAGES = "daybrief-pages-1", WRITING = "daybrief-writing-1", CHOICE = "/-/choice";
const PATIENCE = 4000, PATIENCE_FOR_FILES = 12000, HOUR = 3600e3, OLDEST = 14 * 24 * HOUR, MOST = 24;
const PAGE = /^\/(fields\/[^/]+|briefs\/(?!new$)[^/]+(\/revisions\/\d+)?)?$/;
const NOTES = /^\/fields\/[^/]+\/actuals$/;
const FILE = /^\/briefs\/[^/]+\/(sheet|technique)\.pdf$/;
const CHOICES = ["language", "units", "scheme", "glider", "instrument", "experience", "polar"];
const paths = new Set(FILES.map(file => file.split("?")[0]));
const pause = wait => new Promise(done => setTimeout(done, wait));

addEventListener("install", event => event.waitUntil((async () => {
  const cache = await caches.open(SHELL);
  await cache.addAll(FILES.map(file => new Request(file, { cache: "no-cache", credentials: "omit" })));
  await fresh(new URL("/", location)).catch(() => {});
  await skipWaiting();
})()));

addEventListener("activate", event => event.waitUntil((async () => {
  for (const name of await caches.keys())
    if (name.startsWith("daybrief-") && name !== SHELL && name !== PAGES && name !== WRITING) await caches.delete(name);
  await clients.claim();
})()));

addEventListener("fetch", event => {
  const { request } = event, url = new URL(request.url);
  if (url.origin !== location.origin || request.method !== "GET") return;
  const page = PAGE.test(url.pathname), file = FILE.test(url.pathname);
  if (file || (page && request.mode === "navigate")) event.respondWith(open(event, url, file));
  else if (NOTES.test(url.pathname) && request.mode === "navigate") event.respondWith(notes(request, url));
  else if (page && request.headers.has("X-Live")) event.respondWith(renew(event, url));
  else if (paths.has(url.pathname) && url.pathname !== "/offline") event.respondWith(shell(request));
});

async function open(event, url, file) {
  const network = renew(event, url);
  network.catch(() => {});
  const answer = await Promise.race([network.catch(() => null), pause(file ? PATIENCE_FOR_FILES : PATIENCE)]);
  if (answer && !(answer.status >= 502)) return answer;
  const copy = await copyOf(url);
  return copy ? shown(copy) : answer ?? network.catch(offline);
}

// The launch point's page: without a connection the last one, to write into; its script keeps what is written.
async function notes(request, url) {
  const cache = await caches.open(WRITING);
  const network = fetch(request).then(async answer => {
    if (answer.status === 200 && !url.search)
      await cache.put(url.pathname, new Response(anonymous(await answer.clone().text()).replace(/<input[^>]*__RequestVerificationToken[^>]*>/g, ""), { headers: answer.headers }));
    return answer;
  });
  network.catch(() => {});
  const answer = await Promise.race([network.catch(() => null), pause(PATIENCE)]);
  if (answer && !(answer.status >= 502)) return answer;
  return await cache.match(url.pathname) ?? answer ?? network.catch(offline);
}

async function renew(event, url) {
  const answer = await fresh(url);
  if (answer.headers.has("DayBrief-Choice")) event.waitUntil(also(url, answer.headers.get("DayBrief-State")).catch(() => {}));
  return answer;
}

// One request at a time for one address: who asks meanwhile gets the same answer.
const flying = new Map();
function fresh(url) {
  const address = url.pathname + url.search;
  if (!flying.has(address)) flying.set(address, fetch(address, { cache: "no-store", redirect: "manual" })
    .then(async answer => { await keep(url, answer).catch(() => {}); return answer; })
    .finally(() => flying.delete(address)));
  return flying.get(address).then(answer => answer.clone());
}

async function keep(url, answer) {
  const state = answer.headers.get("DayBrief-State");
  if (answer.status !== 200 || !state) return;
  const cache = await caches.open(PAGES);
  await drop(cache, url.pathname, state, (answer.headers.get("DayBrief-Instead") ?? "").split(" "));
  if (!answer.headers.has("DayBrief-Choice")) return;
  const choice = new URLSearchParams(answer.headers.get("DayBrief-Choice")), headers = new Headers({
    "Content-Type": answer.headers.get("Content-Type"), "Content-Security-Policy": answer.headers.get("Content-Security-Policy") ?? "default-src 'self'",
    "X-State": state, "X-Kept": Date.now() });
  const body = headers.get("Content-Type").startsWith("text/html") ? anonymous(await answer.clone().text()) : await answer.clone().blob();
  if (choice.has("units")) await cache.put(CHOICE, new Response(choice.toString()));
  choice.delete("scheme");
  await cache.put(`${url.pathname}?${choice}`, new Response(body, { headers }));
  await tidy(cache);
}

// Who has signed in does not stand in a copy.
function anonymous(html) {
  const without = html.replace(/<div class="account">.*?<\/div>/s, "");
  if (without.includes('action="/sign-out"')) throw new Error("A page that names its reader is not kept.");
  return without;
}

const copies = async cache => Promise.all((await cache.keys()).filter(key => !key.url.endsWith(CHOICE)).map(async key => {
  const copy = await cache.match(key), at = new URL(key.url);
  return { key, copy, at, state: copy.headers.get("X-State"), kept: Number(copy.headers.get("X-Kept")) };
}));

// What is no longer so goes, in every choice and on every page that shows it; so do the briefs whose place this one took.
async function drop(cache, path, state, instead) {
  const briefs = [state.split(".")[0], ...instead];
  for (const old of await copies(cache))
    if (old.state !== state && (old.at.pathname === path || briefs.includes(old.state.split(".")[0]))) await cache.delete(old.key);
}

async function tidy(cache) {
  const all = (await copies(cache)).sort((a, b) => (b.at.pathname === "/") - (a.at.pathname === "/") || b.kept - a.kept);
  for (const [i, old] of all.entries())
    if (i >= MOST || Date.now() - old.kept > OLDEST) await cache.delete(old.key);
}

// With a page also the sheet of its brief, and today's page when its copy is an hour old.
async function also(url, state) {
  const [brief, holding] = state.split(".");
  if (FILE.test(url.pathname)) return;
  const held = await copies(await caches.open(PAGES)), sheet = `/briefs/${brief}/sheet.pdf`;
  if (!holding.startsWith("d") && !held.some(copy => copy.at.pathname === sheet)) await fresh(new URL(sheet, location));
  if (!held.some(copy => copy.at.pathname === "/" && Date.now() - copy.kept < HOUR)) await fresh(new URL("/", location));
}

// The newest copy for the reader's choice, else the newest for another.
async function copyOf(url) {
  const cache = await caches.open(PAGES), wanted = new URLSearchParams(await (await cache.match(CHOICE))?.text());
  const asked = CHOICES.filter(name => url.searchParams.has(name));
  for (const name of asked) wanted.set(name, url.searchParams.get(name));
  if (asked.length) await cache.put(CHOICE, new Response(wanted.toString()));
  const found = (await copies(cache)).filter(copy => copy.at.pathname === url.pathname && Date.now() - copy.kept < OLDEST);
  for (const copy of found) copy.fits = [...copy.at.searchParams].every(([name, value]) => wanted.get(name) === value);
  const [best] = found.sort((a, b) => b.fits - a.fits || b.kept - a.kept);
  return best && { ...best, scheme: wanted.get("scheme") };
}

// A copy says on its root when it was kept; phone.js shows that.
async function shown({ copy, kept, fits, scheme }) {
  if (!copy.headers.get("Content-Type")?.startsWith("text/html")) return copy;
  const style = scheme && scheme !== "phone" && /^[a-z]+$/.test(scheme) ? ` class="${scheme}"` : "";
  const html = (await copy.text()).replace(/<html lang="([a-z]+)"[^>]*>/, `<html lang="$1"${style} data-copy="${kept}"${fits ? "" : ' data-other=""'}>`);
  return new Response(html, { headers: copy.headers });
}

async function shell(request) {
  const cache = await caches.open(SHELL);
  try {
    return await cache.match(request) ?? await fetch(request);
  } catch (failed) {
    const older = await cache.match(request, { ignoreSearch: true });
    if (older) return older;
    throw failed;
  }
}

async function offline() {
  const chosen = await (await (await caches.open(PAGES)).match(CHOICE))?.text();
  const language = new URLSearchParams(chosen).get("language");
  const cache = await caches.open(SHELL);
  return await cache.match(`/offline?language=${language}`) ?? await cache.match("/offline", { ignoreSearch: true }) ?? Response.error();
}
