/** Lets the browser keep the page; where it cannot (plain http from elsewhere), nothing changes. */
export async function keepPage(): Promise<void> {
  if (!import.meta.env.PROD || !isSecureContext || !("serviceWorker" in navigator)) return;
  if (location.protocol === "file:") return;
  try {
    await navigator.serviceWorker.register(new URL("sw.js", document.baseURI));
  } catch (error) {
    console.warn(error);
  }
}
