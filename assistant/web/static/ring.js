// A bell made of two tones, again and again until it is stopped.
const TONES_HZ = [1318, 1046];
const EVERY_MS = 1600;
let sound = null;
let ringing = null;

// a browser lets a page sound only after it was touched
for (const kind of ["pointerdown", "keydown"]) {
  document.addEventListener(kind, () => ready()?.resume(), { once: true, capture: true });
}

export function ring() {
  if (ringing) return;
  strike();
  ringing = setInterval(strike, EVERY_MS);
}

export function hush() {
  clearInterval(ringing);
  ringing = null;
}

function ready() {
  if (!sound && window.AudioContext) sound = new AudioContext();
  return sound;
}

function strike() {
  navigator.vibrate?.([300, 150, 300]);
  const context = ready();
  if (!context || context.state !== "running") return;
  TONES_HZ.forEach((tone, turn) => {
    const [begin, bell, loud] = [context.currentTime + turn * 0.45, context.createOscillator(), context.createGain()];
    bell.frequency.value = tone;
    loud.gain.setValueAtTime(0.5, begin);
    loud.gain.exponentialRampToValueAtTime(0.001, begin + 0.9);
    bell.connect(loud).connect(context.destination);
    bell.start(begin);
    bell.stop(begin + 0.9);
  });
}
