// Where the device is, told to the server when the cook asks for it; a form sends it, and nothing keeps it here.
const WAIT_MS = 20000;

export function locates() {
  const section = document.querySelector("[data-locate]");
  if (!section || !("geolocation" in navigator) || !window.isSecureContext) return;
  section.hidden = false;
  const [form, says] = [section.querySelector("form"), section.querySelector("[data-locate-says]")];
  section.querySelector("[data-locate-now]").addEventListener("click", (event) => {
    event.preventDefault();
    says.textContent = "Looking";
    navigator.geolocation.getCurrentPosition(
      ({ coords }) => {
        form.elements.latitude.value = coords.latitude;
        form.elements.longitude.value = coords.longitude;
        form.elements.altitude.value = coords.altitude ?? "";
        form.elements.accuracy.value = coords.altitudeAccuracy ?? "";
        form.submit();
      },
      (fault) => {
        says.textContent = fault.code === fault.PERMISSION_DENIED
          ? "The browser may not tell; say the elevation or a town."
          : "The device does not know where it is; say the elevation or a town.";
      },
      { enableHighAccuracy: true, timeout: WAIT_MS, maximumAge: 60000 },
    );
  });
}
