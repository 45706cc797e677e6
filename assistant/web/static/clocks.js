// Running timers: counted down, rung, and the screen kept awake as long as one runs.
import { ring, hush } from "./ring.js";
import { awake } from "./awake.js";

const EVERY_MS = 15000;
const bar = document.getElementById("clocks");
const announce = document.getElementById("announce");
const rung = new Set();
let timers = [];

export function clocks() {
  if (!bar) return;
  timers = [...bar.querySelectorAll("li")].map((row) => ({
    id: Number(row.dataset.id), name: row.querySelector(".name").textContent, ends: row.dataset.ends,
  }));
  bar.querySelector("[data-quiet]").addEventListener("click", quiet);
  setInterval(tick, 1000);
  setInterval(refresh, EVERY_MS);
  tick();
}

export async function refresh() {
  try {
    const response = await fetch("/timers/running");
    if (response.ok) timers = await response.json();
  } catch {
    // the server is away; what is known goes on running
  }
  tick();
}

function tick() {
  const now = Date.now();
  const list = bar.querySelector("ul");
  const rows = timers.map((timer) => row(timer, now));
  list.replaceChildren(...rows);
  bar.hidden = timers.length === 0;
  for (const place of document.querySelectorAll(".timers [data-ends]")) {
    const left = Date.parse(place.dataset.ends) - now;
    place.querySelector("[data-left]").textContent = told(left);
    place.classList.toggle("over", left <= 0);
  }
  const due = timers.filter((timer) => Date.parse(timer.ends) <= now && !rung.has(timer.id));
  if (due.length) begin(due);
  if (!timers.some((timer) => Date.parse(timer.ends) <= now)) quiet();
  awake(timers.some((timer) => Date.parse(timer.ends) > now));
}

function row(timer, now) {
  const left = Date.parse(timer.ends) - now;
  const item = document.createElement("li");
  item.classList.toggle("over", left <= 0);
  const link = Object.assign(document.createElement("a"), { href: "/timers" });
  link.append(cell("name", timer.name), " ", cell("left", told(left)));
  item.append(link);
  return item;
}

function cell(name, text) {
  return Object.assign(document.createElement("span"), { className: name, textContent: text });
}

function told(left) {
  const seconds = Math.abs(Math.round(left / 1000));
  const [hours, minutes, rest] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60];
  const two = (number) => String(number).padStart(2, "0");
  const clock = hours ? `${hours}:${two(minutes)}:${two(rest)}` : `${minutes}:${two(rest)}`;
  return left > 0 ? clock : `over ${clock}`;
}

function begin(due) {
  for (const timer of due) rung.add(timer.id);
  announce.textContent = due.map((timer) => `Time is up: ${timer.name}.`).join(" ");
  document.title = `Time is up: ${due[0].name}`;
  bar.querySelector("[data-quiet]").hidden = false;
  ring();
}

function quiet() {
  hush();
  bar.querySelector("[data-quiet]").hidden = true;
}
