// Keeps what stands on the desk at every change and shows what comes of it. Without it, "Keep and show" does the same.
(() => {
  "use strict";
  const form = document.getElementById("desk");
  const result = document.getElementById("result");
  if (!form || !result) return;

  let timer = 0, busy = false, changed = false, picked = null;
  const copy = () => `daybrief-desk:${form.action}`;
  const say = text => { const state = document.getElementById("state"); if (state) state.textContent = text; };
  const field = name => form.elements.namedItem(name);

  const schedule = wait => { changed = true; clearTimeout(timer); timer = setTimeout(send, wait); };

  async function send() {
    if (busy) return;
    busy = true;
    changed = false;
    picked = null;
    say(form.dataset.working);
    try {
      const answer = await fetch(form.action, { method: "POST", body: new FormData(form), headers: { "X-Desk": "live" } });
      if (answer.redirected || !(answer.ok || answer.status === 409)) throw new Error(`${answer.status}`);
      show(await answer.text());
      localStorage.removeItem(copy());
      if (form.elements.file) form.elements.file.value = "";
    } catch {
      say(form.dataset.offline);
      remember();
      schedule(5000);
    }
    busy = false;
    if (changed) schedule(200);
  }

  // What could not be sent waits in the browser, also when the page is closed.
  function remember() {
    const entered = [...new FormData(form)].filter(([, value]) => typeof value === "string");
    try { localStorage.setItem(copy(), JSON.stringify(entered)); } catch { /* full or forbidden: the page itself still holds it */ }
  }

  function show(html) {
    const scroll = result.scrollTop;
    result.innerHTML = html;
    result.scrollTop = scroll;
    const outcome = document.getElementById("outcome");
    if (!outcome) return;
    const { id, version, usable } = outcome.dataset;
    if (!outcome.querySelector("[name=resolve]"))
      for (const seen of document.querySelectorAll("input[name=version]")) seen.value = version;
    if (id && !form.action.endsWith(`/desk/${id}`)) adopt(id);
    for (const button of document.querySelectorAll("[data-sign]")) button.disabled = usable !== "yes";
    fill(outcome);
    messages(outcome);
    values(outcome);
    awaitAdvice();
  }

  // The advice on flying is worked out apart; look until it is there, keeping nothing.
  function awaitAdvice() {
    if (!result.querySelector("[data-working]") || !location.pathname.startsWith("/desk/")) return;
    setTimeout(async () => {
      if (busy || changed || !result.querySelector("[data-working]")) return;
      const page = new DOMParser().parseFromString(await (await fetch(location.href)).text(), "text/html");
      const fresh = page.getElementById("result");
      if (!fresh || busy || changed || !result.querySelector("[data-working]")) return;
      result.innerHTML = fresh.innerHTML;
      awaitAdvice();
    }, 3000);
  }

  // Lists that the service keeps: which ascents are at hand, what is not used. What was picked meanwhile stays picked.
  function fill(outcome) {
    for (const list of outcome.querySelectorAll("template[data-fill]")) {
      const place = document.getElementById(list.dataset.fill);
      if (!place) continue;
      const focused = place.contains(document.activeElement) ? document.activeElement : null;
      place.replaceChildren(list.content.cloneNode(true));
      if (picked && place.id === "ascents") {
        const choice = [...place.querySelectorAll("input[type=radio]")].find(radio => radio.value === picked);
        if (choice) choice.checked = true;
      }
      if (focused) [...place.querySelectorAll("input, select")].find(field => field.name === focused.name && (field.type !== "radio" || field.value === focused.value))?.focus();
    }
    for (const shown of outcome.querySelectorAll("template[data-show]")) {
      const place = document.getElementById(shown.dataset.show);
      if (place) place.hidden = shown.dataset.value !== "yes";
    }
  }

  // A new brief gets its address with the first thing that is kept.
  function adopt(id) {
    form.action = `/desk/${id}`;
    history.replaceState(null, "", `/desk/${id}`);
    for (const other of document.querySelectorAll("form[data-action]")) other.action = `/desk/${id}/${other.dataset.action}`;
    document.getElementById("sign").hidden = false;
  }

  function messages(outcome) {
    const told = new Map();
    for (const error of outcome.querySelectorAll("li[data-field]"))
      told.set(error.dataset.field, `${told.get(error.dataset.field) ?? ""} ${error.querySelector("[data-said]").textContent.trim()}`.trim());
    for (const place of form.querySelectorAll("[data-message]")) {
      const text = told.get(place.dataset.message) ?? "";
      place.textContent = text;
      field(place.dataset.message)?.setAttribute?.("aria-invalid", text ? "true" : "false");
    }
  }

  function values(outcome) {
    for (const set of outcome.querySelectorAll("template[data-set]")) {
      const target = field(set.dataset.set);
      if (!target || target === document.activeElement || target.value === set.dataset.value) continue;
      target.value = set.dataset.value;
    }
    for (const computed of outcome.querySelectorAll("template[data-computed-of]"))
      for (const place of form.querySelectorAll(`[data-computed="${computed.dataset.computedOf}"]`)) place.textContent = computed.dataset.value;
  }

  function restore() {
    const kept = localStorage.getItem(copy());
    if (!kept) return;
    for (const [name, value] of JSON.parse(kept)) {
      const target = field(name);
      for (const radio of form.querySelectorAll(`input[type=radio][name="${name}"]`)) radio.checked = radio.value === value;
      if (target && name !== "__RequestVerificationToken" && target.type !== "radio" && "value" in target) target.value = value;
    }
    schedule(50);
  }

  // Somebody else keeps another version: the next thing kept here is merged with it; until then, say so.
  function follow() {
    const id = /\/desk\/([0-9a-z-]+)$/.exec(form.action)?.[1];
    if (!id || !window.EventSource) return;
    new EventSource(`/desk/${id}/events`).addEventListener("draft", event => {
      const news = JSON.parse(event.data);
      if (news.version > Number(field("version").value) && !busy && !changed) schedule(300);
    });
  }

  form.addEventListener("input", event => { if (event.target.type !== "file") schedule(250); });
  form.addEventListener("change", event => {
    if (event.target.name === "kept") picked = event.target.value;
    schedule(50);
  });
  addEventListener("pagehide", () => { if (changed || busy) remember(); });
  restore();
  follow();
  awaitAdvice();
})();
