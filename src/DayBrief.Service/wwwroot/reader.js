// What a reader chooses shows at once, without a button; the hour that it is now is marked in the table of the day.
(() => {
  "use strict";
  document.documentElement.dataset.live = "";

  // By phone.js, so that focus and place stay. Without a connection the choice is taken back.
  document.addEventListener("change", async event => {
    const form = event.target.closest?.("form.pilot");
    if (!form || !window.look) return;
    const before = location.href, asked = new URLSearchParams(location.search);
    for (const [name, value] of new FormData(form)) value ? asked.set(name, value) : asked.delete(name);
    const wanted = `${location.pathname}?${asked}`;
    history.replaceState(null, "", wanted);
    for (let tries = 0; tries < 8; tries++) {
      if (await window.look()) return;
      if (location.pathname + location.search !== wanted) return;
      await new Promise(done => setTimeout(done, 250));
      if (!navigator.onLine) break;
    }
    history.replaceState(null, "", before);
    form.reset();
  });

  function hour() {
    for (const row of document.querySelectorAll("tr[data-at]")) {
      const since = Date.now() - row.dataset.at;
      if (since >= 0 && since < 36e5) row.setAttribute("aria-current", "time");
      else row.removeAttribute("aria-current");
    }
  }

  hour();
  setInterval(hour, 5000);
})();
