const PATH = "/authority.crt";

/** What plain HTTP gets: a page that says how to trust the house's certificate, the certificate itself, and nothing more. */
export function plainAnswer(request, response, { certificate, fingerprint }) {
  const path = (request.url ?? "").split("?")[0];
  request.resume();
  if (request.method !== "GET" && request.method !== "HEAD") return answer(response, 405, "text/plain", "");
  if (path === PATH) return answer(response, 200, "application/x-x509-ca-cert", certificate);
  return answer(response, 200, "text/html", page(fingerprint));
}

function answer(response, status, type, text) {
  response.writeHead(status, {
    "content-type": type.startsWith("text/") ? `${type}; charset=utf-8` : type,
    "content-security-policy": "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'",
    "x-content-type-options": "nosniff",
    "referrer-policy": "no-referrer",
    connection: "close",
  });
  response.end(text);
}

const page = (fingerprint) => `<!doctype html>
<html lang="en-CA">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>Trust this house</title>
<style>body { font: 1.1rem/1.5 system-ui, sans-serif; max-width: 34rem; margin: 2rem auto; padding: 0 1rem } code { overflow-wrap: anywhere }</style>
<h1>Trust this house</h1>
<p>This program speaks over a secured connection, with a certificate of its own. Take it once on each device:</p>
<p><a href="${PATH}">The certificate</a></p>
<p>Before you trust it, compare its fingerprint with the one on the terminal the program was started from, or under Settings, People and devices:</p>
<p><code>${fingerprint}</code></p>
<h2>On iOS</h2>
<p>Open the certificate in the browser that came with the phone and allow it. Settings, General, VPN and Device Management: install it. Then Settings, General, About, Certificate Trust Settings: switch it on.</p>
<h2>On Android</h2>
<p>Settings, Security, More, Install a certificate, CA certificate: choose the file. The words differ between phones.</p>
<p>Then open the same address with https:// in front.</p>
</html>
`;
