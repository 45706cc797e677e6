// The first line of a reply read aloud by the browser's own voice.
export function aloud(place) {
  const button = place.querySelector("[data-aloud]");
  if (!button || !("speechSynthesis" in window) || button.dataset.ready) return;
  button.dataset.ready = "yes";
  button.hidden = false;
  button.addEventListener("click", () => {
    speechSynthesis.cancel();
    const line = place.querySelector("[data-headline]").textContent;
    speechSynthesis.speak(new SpeechSynthesisUtterance(line));
  });
}
