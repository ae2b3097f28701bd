// Keeps on the phone what cannot be sent, and sends it when there is a line. Without it, the page is a plain form.
(() => {
  "use strict";
  const page = document.getElementById("actuals"), line = document.getElementById("queue"), list = document.getElementById("unsent");
  if (!page) return;
  const text = page.dataset, KEY = `daybrief-actuals:${text.api}`, WHO = "daybrief-actuals-by";
  navigator.serviceWorker?.register("/phone-worker.js").catch(() => {});

  let queue = [], busy = false, sent = false;
  try { queue = JSON.parse(localStorage.getItem(KEY)) ?? []; } catch { /* what is not ours is not sent */ }

  // Date and time at the field, wherever the phone thinks it is.
  const at = (options) => new Intl.DateTimeFormat("sv-SE", { timeZone: text.zone, ...options }).format(new Date());
  const today = () => text.today ? at({ year: "numeric", month: "2-digit", day: "2-digit" }) : text.day;
  const now = () => at({ hour: "2-digit", minute: "2-digit" });

  function remember() {
    try { localStorage.setItem(KEY, JSON.stringify(queue)); return true; } catch { return false; }
  }

  function tell(words) {
    const refused = queue.filter(one => one.refused);
    line.hidden = !(words || queue.length || sent);
    line.textContent = words ?? (queue.length ? text.waiting.replace("{0}", queue.length) : text.sent);
    list.replaceChildren(...queue.map(one => {
      const item = document.createElement("li"), button = document.createElement("button");
      const { time, kind, photo, id, ...rest } = one.entry;
      item.className = "job";
      item.append(`${one.day} ${time} ${one.refused ? `${text.refused} ${one.refused}` : one.label}`);
      button.textContent = text.remove;
      button.addEventListener("click", () => { queue = queue.filter(other => other !== one); remember(); tell(); });
      if (refused.includes(one)) item.append(" ", button);
      return item;
    }));
  }

  async function send() {
    if (busy) return;
    busy = true;
    let words;
    for (const one of queue.filter(one => !one.refused)) {
      try {
        const answer = await fetch(`${text.api}${one.day}/actuals`, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(one.entry), redirect: "manual", signal: AbortSignal.timeout(6e4) });
        if (answer.ok) queue = queue.filter(other => other !== one);
        else if (answer.status === 401 || answer.status === 403 || answer.type === "opaqueredirect") { words = text.sign; break; }
        else if (answer.status >= 500 || answer.status === 429) break;
        else one.refused = (await answer.json()).errors?.map(error => error.detail).join(" ") ?? `${answer.status}`;
        sent = sent || answer.ok;
        remember();
      } catch { break; }
    }
    busy = false;
    tell(words);
    if (sent && !queue.length) await renew();
  }

  // What has been written down, as the service has it now.
  async function renew() {
    try {
      const answer = await fetch(text.today ? location.pathname : location.href, { headers: { Accept: "text/html" } });
      if (!answer.ok || answer.redirected) return;
      const fresh = new DOMParser().parseFromString(await answer.text(), "text/html").getElementById("kept");
      if (fresh) document.getElementById("kept").innerHTML = fresh.innerHTML;
    } catch { /* later */ }
  }

  function put(entry, label) {
    queue.push({ day: today(), label, entry: { id: crypto.randomUUID?.() ?? `${Date.now()}-${Math.random().toString(36).slice(2, 10)}`, ...entry } });
    sent = false;
    tell(remember() ? undefined : text.full);
    send();
  }

  for (const form of document.querySelectorAll("form[data-tap]")) form.addEventListener("submit", event => {
    event.preventDefault();
    put({ kind: form.dataset.tap, time: now(), by: document.getElementById("by").value || undefined }, form.innerText);
  });

  const form = document.getElementById("entry");
  form.elements.by.value ||= localStorage.getItem(WHO) ?? "";
  form.addEventListener("submit", async event => {
    const number = (name, factor = 1) => {
      const typed = form.elements[name].value.trim().replace(",", ".");
      return typed === "" ? undefined : Number.isFinite(Number(typed)) ? Number(typed) * Number(factor) : NaN;
    };
    const entry = {
      time: form.elements.time.value || now(), topM: number("top", text.height), climbMs: number("climb", text.climb), cloudBaseM: number("base", text.height),
      cloudOktas: number("cloud"), windFromDeg: number("from"), windKt: number("wind", text.wind), gustKt: number("gust", text.wind),
      by: form.elements.by.value || undefined, note: form.elements.note.value || undefined };
    // What is no number the service tells at its field.
    if (Object.values(entry).some(Number.isNaN)) return;
    event.preventDefault();
    try { localStorage.setItem(WHO, form.elements.by.value); } catch { /* typed again next time */ }
    const file = form.elements.photo.files[0];
    if (file) entry.photo = await small(file);
    put(entry, [...form.querySelectorAll("input[inputmode], #note")].filter(field => field.value).map(field => `${field.labels[0].firstChild.textContent.trim()} ${field.value}`).join(" · "));
    const by = form.elements.by.value;
    form.reset();
    form.elements.by.value = by;
  });

  // Small enough to wait on a phone, still to be read; drawing it anew leaves out what the camera wrote beside it.
  async function small(file) {
    const picture = await createImageBitmap(file), scale = Math.min(1, 1600 / Math.max(picture.width, picture.height));
    const sheet = document.createElement("canvas");
    [sheet.width, sheet.height] = [Math.round(picture.width * scale), Math.round(picture.height * scale)];
    sheet.getContext("2d").drawImage(picture, 0, 0, sheet.width, sheet.height);
    return sheet.toDataURL("image/jpeg", 0.7);
  }

  if (text.today && today() !== text.day) {
    document.getElementById("day").textContent = today();
    document.getElementById("kept").hidden = true;
  }
  addEventListener("online", send);
  setInterval(() => { if (queue.some(one => !one.refused)) send(); }, 30000);
  if (queue.length) { tell(); send(); }
})();
