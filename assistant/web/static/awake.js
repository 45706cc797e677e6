// The screen kept awake while that is wanted; a page that was hidden asks again when it is seen.
let lock = null;
let wanted = false;

export async function awake(on) {
  wanted = on;
  if (!("wakeLock" in navigator)) return;
  if (!on) {
    lock?.release();
    lock = null;
  } else if (!lock && document.visibilityState === "visible") {
    try {
      lock = await navigator.wakeLock.request("screen");
      lock.addEventListener("release", () => { lock = null; });
    } catch {
      lock = null;
    }
  }
}

document.addEventListener("visibilitychange", () => awake(wanted));
