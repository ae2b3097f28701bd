// Keeps an open brief true: fetches it anew when changed, says how old it is when it cannot.
(() => {
  "use strict";
  const copy = document.getElementById("copy"), news = document.getElementById("news"), root = document.documentElement;
  if (!copy) return;
  const text = copy.dataset, put = (words, ...values) => words.replace(/\{(\d)\}/g, (_, i) => values[i]);
  let made = Number(root.dataset.copy) || Date.now(), connected = !root.dataset.copy, newer = false;
  let source = null, wait = 2000, heard = Date.now(), polled = 0, busy = false;

  const worker = navigator.serviceWorker;
  if (worker) {
    // The first visit comes before the worker: fetch once through it for a copy.
    if (!worker.controller) worker.addEventListener("controllerchange", () => refresh(), { once: true });
    worker.register("/phone-worker.js").catch(() => {});
  }

  function age() {
    const minutes = Math.floor((Date.now() - made) / 6e4);
    return minutes < 60 ? put(text.minutes, minutes)
      : minutes < 2880 ? put(text.hours, Math.floor(minutes / 60), minutes % 60)
      : put(text.days, Math.floor(minutes / 1440));
  }

  function tell() {
    const words = connected ? "" : [
      put(text.old, Date.now() - made < 12 * 36e5 ? text.time : text.day, age()),
      newer ? text.newer : "", "other" in root.dataset ? text.other : ""].join(" ").trim();
    if (copy.textContent !== words) copy.textContent = words;
  }

  function line(up) {
    const lost = connected && !up;
    connected = up;
    tell();
    if (lost) news.textContent = copy.textContent;
    else if (up && !news.querySelector("a")) news.textContent = "";
  }

  async function refresh() {
    if (busy) return;
    busy = true;
    try {
      const answer = await fetch(location.pathname + location.search, { headers: { "X-Live": "1" }, redirect: "manual", signal: AbortSignal.timeout(2e4) });
      if (answer.type === "opaqueredirect") return location.reload();
      if (!answer.ok) throw new Error(answer.status);
      show(new DOMParser().parseFromString(await answer.text(), "text/html"));
      line(true);
      return true;
    } catch {
      line(false);
    } finally {
      busy = false;
      working();
    }
  }

  const banners = page => [...page.querySelectorAll("#main .banner")].map(banner => banner.textContent.trim());

  function show(page) {
    const next = page.getElementById("main"), seen = page.getElementById("copy");
    if (!next || !seen) return location.reload();
    const changed = seen.dataset.state !== text.state, before = banners(document);
    replace(document.getElementById("main"), next);
    document.title = page.title;
    root.lang = page.documentElement.lang;
    root.className = page.documentElement.className;
    delete root.dataset.copy;
    delete root.dataset.other;
    Object.assign(text, seen.dataset);
    made = heard = Date.now();
    newer = false;
    if (changed) say(banners(document).find(banner => !before.includes(banner)) ?? text.anew);
  }

  // What the reader looks at stays where it is, and so do the focus and what was chosen in a form.
  function replace(main, next) {
    const heads = page => [...page.querySelectorAll("h1, h2, h3")], above = head => head.getBoundingClientRect().top;
    const at = heads(main).filter(head => above(head) < innerHeight / 3).pop(), nth = heads(main).indexOf(at), top = at && above(at);
    const focus = main.contains(document.activeElement) ? document.activeElement.id : "";
    const form = main.querySelector("form"), entered = field => field.selectedOptions ? !field.selectedOptions[0]?.defaultSelected : field.value !== field.defaultValue;
    if (form && [...form.elements].some(entered)) next.querySelector("form")?.replaceWith(form);
    main.replaceWith(next);
    const there = at && scrollY > 0 && (heads(next).find(head => head.textContent === at.textContent) ?? heads(next)[nth]);
    if (there) scrollBy({ top: above(there) - top, behavior: "instant" });
    if (focus) document.getElementById(focus)?.focus({ preventScroll: true });
  }

  function say(words) {
    const link = Object.assign(document.createElement("a"), { href: "#main", textContent: text.top, onclick: () => news.replaceChildren() });
    news.replaceChildren(`${words} `, link);
  }

  // The technique is being computed: look again, unless the reader is in its form.
  function working() {
    if (!document.querySelector("#main [data-working]") || !connected) return;
    setTimeout(() => document.activeElement?.closest("#main form") ? working() : refresh(), 2000);
  }

  function told(state) {
    heard = Date.now();
    newer = state !== text.state;
    if (newer || root.dataset.copy || heard - made > 18e5) refresh();
    else line(true);
  }

  async function poll() {
    polled = Date.now();
    try {
      const answer = await fetch(`${text.root}/state`, { cache: "no-cache", redirect: "manual", signal: AbortSignal.timeout(1e4) });
      if (answer.type === "opaqueredirect") return location.reload();
      if (!answer.ok) throw new Error(answer.status);
      told((await answer.json()).state);
    } catch {
      line(false);
    }
  }

  function drop() { source?.close(); source = null; }

  function follow() {
    if (source || document.hidden || !window.EventSource) return;
    source = new EventSource(`${text.root}/events`);
    source.addEventListener("state", event => { wait = 2000; told(event.data); });
    source.onerror = () => { drop(); setTimeout(follow, wait); wait = Math.min(2 * wait, 6e4); };
  }

  function look() { poll(); follow(); }

  setInterval(() => {
    tell();
    if (document.hidden) return;
    if (source && Date.now() - heard > 6e4) { drop(); follow(); }
    if (Date.now() - Math.max(polled, heard) > (source ? 6e4 : 15e3)) poll();
  }, 5000);
  document.addEventListener("visibilitychange", () => document.hidden ? drop() : look());
  addEventListener("pageshow", event => { if (event.persisted) look(); });
  addEventListener("online", look);
  addEventListener("offline", () => line(false));
  window.look = refresh;
  tell();
  if (root.dataset.copy) refresh();
  follow();
  working();
})();
