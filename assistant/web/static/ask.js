// Questions answered without leaving the page: the server words all of it, here what has changed is put in its place.
import { aloud } from "./aloud.js";
import { refresh } from "./clocks.js";

// a question may tell where the kitchen is, and the head and the side of the page show that
const PARTS = ["#talk", ".where", ".staff"];
const seen = new Map();

export function asks() {
  if (!document.querySelector("[data-talk]")) return;
  for (const part of PARTS) seen.set(part, document.querySelector(part).innerHTML);
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
  aloud(document.querySelector("[data-talk]"));
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
    const response = await fetch(address, options);
    if (!response.ok) return false;
    const page = new DOMParser().parseFromString(await response.text(), "text/html");
    for (const part of PARTS) put(part, page.querySelector(part));
    aloud(document.querySelector("[data-talk]"));
    return true;
  } catch {
    return false;
  }
}

// what has not changed is left as it is, so that nobody's place in it is lost
function put(part, fresh) {
  if (!fresh || fresh.innerHTML === seen.get(part)) return;
  seen.set(part, fresh.innerHTML);
  document.querySelector(part).replaceWith(document.adoptNode(fresh));
}
