// What a device sees before it is let in. Stands alone: nothing else of the page is given out.

#include "server/page.h"

namespace toft::server {

namespace {

constexpr std::string_view view = R"(<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Pair with toft</title>
<style>
:root { color-scheme: light dark; }
body { font: 18px/1.5 system-ui, sans-serif; max-width: 24rem; margin: 2rem auto; padding: 0 1rem;
  background: #fbf8f2; color: #1c1a17; }
label { display: block; margin-top: 1rem; }
input, button { font: inherit; width: 100%; min-height: 48px; box-sizing: border-box;
  border: 1px solid #6b655b; background: #fff; color: #1c1a17; padding: 0 .75rem; }
#code { letter-spacing: .15em; text-transform: uppercase; font-variant-numeric: tabular-nums; }
button { margin-top: 1.5rem; background: #1c1a17; color: #fbf8f2; }
@media (prefers-color-scheme: dark) {
  body { background: #15171a; color: #ece7dc; }
  input { background: #1f2226; color: #ece7dc; border-color: #9a948a; }
  button { background: #ece7dc; color: #15171a; }
}
</style>
<main>
<h1>Pair this device</h1>
<p>The machine that runs toft shows a code of eight letters and digits on its screen.
Type it here.</p>
<form id="form" method="post">
<label for="code">Code</label>
<input id="code" name="code" autocomplete="off" autocapitalize="characters" spellcheck="false"
  required maxlength="12">
<label for="name">What this device is called</label>
<input id="name" name="name" autocomplete="off" maxlength="60" placeholder="Phone">
<button type="submit">Pair</button>
</form>
<p id="said" role="status"></p>
</main>
<script src="/pair.js" defer></script>
</html>
)";

constexpr std::string_view script = R"(const form = document.getElementById("form");
const code = document.getElementById("code");
const said = document.getElementById("said");
const given = new URLSearchParams(location.hash.slice(1)).get("pair");
if (given) code.value = given;

form.addEventListener("submit", async (event) => {
  event.preventDefault();
  said.textContent = "Asking…";
  const name = document.getElementById("name").value || "Phone";
  try {
    const answer = await fetch("/api/pair", {
      method: "POST",
      headers: { "content-type": "application/json", "toft-page": "1" },
      body: JSON.stringify({ code: code.value, name }),
    });
    if (answer.ok) {
      location.replace("/");
      return;
    }
    const problem = await answer.json();
    said.textContent = `${problem.title}: ${problem.detail}`;
  } catch {
    said.textContent = "toft does not answer: is it still running, and on this network?";
  }
});
)";

}  // namespace

Response pairing_view(const std::string& path) {
    Response response;
    response.headers.emplace_back("Cache-Control", "no-store");
    if (path == "/" || path == "/index.html") {
        response.type = "text/html; charset=utf-8";
        response.lasting = view;
    } else if (path == "/pair.js") {
        response.type = "text/javascript; charset=utf-8";
        response.lasting = script;
    }
    return response;
}

}  // namespace toft::server
