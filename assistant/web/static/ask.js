// Questions answered without leaving the page: the server words the conversation, here it is only put in its place.
import { aloud } from "./aloud.js";
import { refresh } from "./clocks.js";

const talk = document.querySelector("[data-talk]");

export function asks() {
  if (!talk) return;
  document.addEventListener("submit", (event) => {
    if (event.target.matches("[data-ask]")) send(event);
  });
  const field = document.getElementById("text");
  field.addEventListener("keydown", (event) => {
    // a line break in a recipe is typed with shift
    if (event.key === "Enter" && !event.shiftKey && !event.isComposing) {
      event.preventDefault();
      field.form.requestSubmit();
    }
  });
  window.addEventListener("pageshow", (event) => {
    // a page that comes back from the cache may be older than the conversation
    if (event.persisted) load("/");
  });
  document.addEventListener("visibilitychange", () => {
    // the other tab may have gone on
    if (document.visibilityState === "visible") load("/");
  });
  aloud(talk);
}

async function send(event) {
  const form = event.target;
  event.preventDefault();
  const button = form.querySelector("button");
  button.disabled = true;
  try {
    const arrived = await load("/ask", { method: "POST", body: new URLSearchParams(new FormData(form)) });
    if (!arrived) return form.submit();
    form.querySelector("textarea")?.form.reset();
    const reply = document.getElementById("reply");
    reply?.focus({ preventScroll: true });
    reply?.scrollIntoView({ block: "start" });
    refresh();
  } finally {
    button.disabled = false;
  }
}

async function load(address, options = {}) {
  try {
    const response = await fetch(address, { ...options, headers: { "x-part": "talk" } });
    if (!response.ok) return false;
    const text = await response.text();
    // what has not changed is left as it is, so that nobody's place in it is lost
    if (text !== load.last) talk.innerHTML = text;
    load.last = text;
    aloud(talk);
    return true;
  } catch {
    return false;
  }
}
