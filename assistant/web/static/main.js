// What scripts add to a page that works without them; each module looks for what it is for.
import { asks } from "./ask.js";
import { clocks } from "./clocks.js";
import { drops } from "./drop.js";
import { locates } from "./locate.js";
import { holds } from "./hold.js";

for (const button of document.querySelectorAll("[data-print]")) {
  button.hidden = false;
  button.addEventListener("click", () => window.print());
}
asks();
clocks();
drops();
locates();
holds();
